package fairboil.reports.print;

/**
 * What all pages of a file have in common: the title above, the study and the page number below.
 *
 * @param paper the paper
 * @param title what the file is
 * @param study the name of the study
 */
record FormHead(Paper paper, String title, String study) {

  /**
   * Draws the title and what stands beside and below it; gives the y below which the page is free.
   *
   * @param most how many lines the text below may have; what is more is cut off with an ellipsis
   */
  double draw(Canvas page, String aside, String text, int most) {
    double left = Booklet.MARGIN;
    double right = page.width() - Booklet.MARGIN;
    Lettering lettering = page.lettering();
    double y = Booklet.MARGIN + Type.TITLE.capital();
    double asideWidth = lettering.width(aside, Type.SMALL_STRONG);
    String shown = lettering.shortened(title, right - left - asideWidth - 6, Type.TITLE);
    page.text(shown, left, y, Type.TITLE, Canvas.Side.LEFT);
    page.text(aside, right, y, Type.SMALL_STRONG, Canvas.Side.RIGHT);
    page.line(left, y + 2, right, y + 2, Pen.TITLE);
    y += 2 + 1.8;
    for (String part : lettering.lines(text, right - left, Type.BODY, most)) {
      page.text(part, left, y + Type.BODY.capital(), Type.BODY, Canvas.Side.LEFT);
      y += Type.BODY.lineHeight();
    }
    return y + 2;
  }

  void foot(Canvas page, int number, int of) {
    double left = Booklet.MARGIN;
    double right = page.width() - Booklet.MARGIN;
    double y = page.height() - Booklet.MARGIN;
    String pageNumber = "page " + number + " of " + of;
    page.line(left, y - 3.6, right, y - 3.6, Pen.RULE);
    String what =
        page.lettering()
            .shortened("fairboil · " + study + " · " + title, right - left - 30, Type.NOTE);
    page.text(what, left, y, Type.NOTE, Canvas.Side.LEFT);
    page.text(pageNumber, right, y, Type.NOTE, Canvas.Side.RIGHT);
  }
}
