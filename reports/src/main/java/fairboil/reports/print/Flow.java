package fairboil.reports.print;

import java.util.List;

/** Text, tables and boxes set one below the other, over as many upright pages as they need. */
final class Flow {

  private static final double INDENT = 11;

  /** Lines below the title, on each page: names may be of any length. */
  private static final int MOST_LINES = 8;

  private final Booklet booklet;
  private final FormHead head;
  private final String aside;
  private final String line;
  private Canvas page;
  private double y;

  Flow(Booklet booklet, FormHead head, String aside, String line) {
    this.booklet = booklet;
    this.head = head;
    this.aside = aside;
    this.line = line;
    turn();
  }

  /** Starts a new page. */
  void turn() {
    page = booklet.page(Booklet.Lie.UPRIGHT);
    y = head.draw(page, aside, line, MOST_LINES);
  }

  /** Takes that much height, on a new page if this one is full; gives where it begins. */
  double take(double height) {
    keep(height);
    double top = y;
    y += height;
    return top;
  }

  /** Makes sure that so much can follow on this page. */
  void keep(double height) {
    if (y + height > bottom()) {
      turn();
    }
  }

  /** The page that the height last taken is on. */
  Canvas page() {
    return page;
  }

  double left() {
    return Booklet.MARGIN;
  }

  double width() {
    return page.width() - 2 * Booklet.MARGIN;
  }

  /** Height left on this page. */
  double room() {
    return bottom() - y;
  }

  private double bottom() {
    return page.height() - Booklet.MARGIN - Booklet.FOOT;
  }

  void gap(double height) {
    y += height;
  }

  /** A heading, never the last on its page. */
  void heading(String text) {
    keep(Type.HEADING.lineHeight() + 14);
    gap(2);
    double top = take(Type.HEADING.lineHeight() + 0.6);
    page.text(text, left(), top + Type.HEADING.capital(), Type.HEADING, Canvas.Side.LEFT);
  }

  void paragraph(String text, Type type) {
    lines(text, left(), width(), type);
    gap(1.2);
  }

  private void lines(String text, double x, double width, Type type) {
    for (String part : booklet.lettering().lines(text, width, type)) {
      double top = take(type.lineHeight());
      page.text(part, x, top + type.capital(), type, Canvas.Side.LEFT);
    }
  }

  /** Numbered steps, each with a box to tick. */
  void steps(List<String> steps) {
    for (int i = 0; i < steps.size(); i++) {
      keep(
          Type.BODY.lineHeight()
              * booklet.lettering().lines(steps.get(i), width(), Type.BODY).size());
      double size = Type.BODY.capital() + 0.6;
      page.box(left(), y - 0.3, size, size, Pen.RULE);
      page.text(
          (i + 1) + ".",
          left() + INDENT - 1.2,
          y + Type.BODY.capital(),
          Type.STRONG,
          Canvas.Side.RIGHT);
      lines(steps.get(i), left() + INDENT, width() - INDENT, Type.BODY);
      gap(0.9);
    }
  }

  /** Points, each with the word or two that it is about. */
  void points(List<String> topics, List<String> texts, double topicWidth, Type strong, Type plain) {
    for (int i = 0; i < topics.size(); i++) {
      double width = width() - topicWidth;
      keep(plain.lineHeight() * booklet.lettering().lines(texts.get(i), width, plain).size());
      page.text(topics.get(i), left(), y + strong.capital(), strong, Canvas.Side.LEFT);
      lines(texts.get(i), left() + topicWidth, width, plain);
      gap(0.5);
    }
  }

  /** A table, its head again on each page. */
  void table(Table table) {
    keep(table.headHeight() + 3 * table.rowHeight());
    table.drawHead(page, left(), take(table.headHeight()));
    for (List<String> row : table.rows()) {
      if (room() < table.rowHeight()) {
        turn();
        table.drawHead(page, left(), take(table.headHeight()));
      }
      table.drawRow(row, page, left(), take(table.rowHeight()));
    }
    gap(2);
  }
}
