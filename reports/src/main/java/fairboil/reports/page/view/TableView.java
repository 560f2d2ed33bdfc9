package fairboil.reports.page.view;

import java.util.List;

/**
 * A table; the first cell of each row is its heading.
 *
 * @param id its name in the page, unique
 * @param caption what it holds
 * @param shape how it may be read
 * @param columns its columns; unmodifiable
 * @param rows its rows, each as long as there are columns; unmodifiable
 */
public record TableView(
    String id, String caption, Shape shape, List<ColumnView> columns, List<List<CellView>> rows) {

  /** How a table may be read. */
  public enum Shape {
    /** A row is as good as the next: rows may be sorted and filtered. */
    LIST("data list"),
    /** Rows stand in an order of their own. */
    GRID("data");

    private final String css;

    Shape(String css) {
      this.css = css;
    }

    /** The classes of the style sheet. */
    public String css() {
      return css;
    }
  }

  /** A table of which a row is as good as the next. */
  public static TableView list(
      String id, String caption, List<ColumnView> columns, List<List<CellView>> rows) {
    return new TableView(id, caption, Shape.LIST, columns, rows);
  }

  /** A table of which the rows stand in an order of their own. */
  public static TableView grid(
      String id, String caption, List<ColumnView> columns, List<List<CellView>> rows) {
    return new TableView(id, caption, Shape.GRID, columns, rows);
  }

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
