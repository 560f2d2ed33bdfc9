package fairboil.reports.page.view;

import java.util.List;

/**
 * A table; the first cell of each row is its heading.
 *
 * @param id its name in the page, unique
 * @param caption what it holds
 * @param columns its columns; unmodifiable
 * @param rows its rows, each as long as there are columns; unmodifiable
 */
public record TableView(
    String id, String caption, List<ColumnView> columns, List<List<CellView>> rows) {

  /** Copies the lists and checks that rows are as long as there are columns. */
  public TableView {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    for (List<CellView> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            caption + ": " + row.size() + " cells in " + columns.size() + " columns");
      }
    }
  }
}
