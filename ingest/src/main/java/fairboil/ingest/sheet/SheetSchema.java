package fairboil.ingest.sheet;

import java.util.List;

/**
 * One sheet: its file, what a row is and its columns.
 *
 * @param file the file's name, such as {@code runs.csv}; as a tab of a workbook, without the ending
 * @param oneRowIs what one row stands for, such as "a burn"
 * @param columns its columns in the order in which a new sheet has them; unmodifiable
 */
public record SheetSchema(String file, String oneRowIs, List<Column<?>> columns) {

  /** Copies the columns. */
  public SheetSchema {
    columns = List.copyOf(columns);
  }
}
