package fairboil.reports.print;

import java.util.List;

/**
 * A ruled table of short cells, to read or to fill in.
 *
 * @param columns its columns from the left; unmodifiable
 * @param rowHeight height of a row, mm
 * @param rows the cells of each row; an empty cell is to be filled in; unmodifiable
 */
record Table(List<Column> columns, double rowHeight, List<List<String>> rows) {

  private static final double PAD = 1.2;
  static final double HEAD = 8.5;

  /**
   * One column.
   *
   * @param head what stands above it
   * @param below a second line of the head, such as a unit; may be empty
   * @param width mm
   */
  record Column(String head, String below, double width) {}

  /** Copies the lists. */
  Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
  }

  double headHeight() {
    return HEAD;
  }

  void drawHead(Canvas page, double left, double top) {
    page.fill(left, top, width(), HEAD, Ink.PALE);
    double x = left;
    for (Column column : columns) {
      double inside = column.width - 2 * PAD;
      page.text(
          page.lettering().shortened(column.head, inside, Type.SMALL_STRONG),
          x + PAD,
          top + 3.2,
          Type.SMALL_STRONG,
          Canvas.Side.LEFT);
      page.text(
          page.lettering().shortened(column.below, inside, Type.NOTE),
          x + PAD,
          top + 6.7,
          Type.NOTE,
          Canvas.Side.LEFT);
      x += column.width;
    }
    page.line(left, top, left + width(), top, Pen.RULE);
    rules(page, left, top, HEAD);
  }

  void drawRow(List<String> cells, Canvas page, double left, double top) {
    double x = left;
    double base = top + (rowHeight + Type.BODY.capital()) / 2;
    for (int i = 0; i < columns.size(); i++) {
      double inside = columns.get(i).width - 2 * PAD;
      String shown = page.lettering().shortened(cells.get(i), inside, Type.BODY);
      page.text(shown, x + PAD, base, Type.BODY, Canvas.Side.LEFT);
      x += columns.get(i).width;
    }
    rules(page, left, top, rowHeight);
  }

  private void rules(Canvas page, double left, double top, double height) {
    double x = left;
    page.line(x, top, x, top + height, Pen.RULE);
    for (Column column : columns) {
      x += column.width;
      page.line(x, top, x, top + height, Pen.RULE);
    }
    page.line(left, top + height, left + width(), top + height, Pen.RULE);
  }

  private double width() {
    return columns.stream().mapToDouble(Column::width).sum();
  }
}
