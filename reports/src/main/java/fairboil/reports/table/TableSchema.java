package fairboil.reports.table;

import java.util.ArrayList;
import java.util.List;
import tech.tablesaw.columns.Column;

/**
 * What a result table is: its file, what a row stands for and its columns. Header, rows and
 * description of the table are all made from it.
 *
 * @param <R> what a row is made from
 * @param file the file's name, such as {@code runs.csv}
 * @param oneRowIs what one row stands for, such as "a run"
 * @param columns its columns in order; unmodifiable
 */
public record TableSchema<R>(String file, String oneRowIs, List<TableColumn<R>> columns) {

  /** Copies the columns. */
  public TableSchema {
    columns = List.copyOf(columns);
  }

  /** The table of the given rows, in their order. */
  ResultTable of(Iterable<R> rows) {
    List<Column<?>> filled = new ArrayList<>();
    columns.forEach(column -> filled.add(column.of(rows)));
    return new ResultTable(this, filled);
  }
}
