package fairboil.reports.print;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** The file of one ring in the wall: its strip, then how to use it and a table of places. */
final class StripFile {

  private static final double ROW = 5;
  private static final double LEAST_ROW = 3.6;
  private static final double SPARE = 0.1;

  private final Booklet booklet;
  private final FormHead head;
  private final RingPlan plan;
  private final double wrap;
  private final String owners;

  private StripFile(Booklet booklet, FormHead head, RingPlan plan, double wrap, String owners) {
    this.booklet = booklet;
    this.head = head;
    this.plan = plan;
    this.wrap = wrap;
    this.owners = owners;
  }

  /**
   * Draws the file.
   *
   * @param plan a ring with a wrap
   * @param owners for which builds it is, in words
   */
  static byte[] of(FormHead head, RingPlan plan, String owners, Typefaces typefaces) {
    double wrap = plan.wrap().orElseThrow();
    return Booklet.of(
        head,
        typefaces,
        booklet -> {
          StripFile file = new StripFile(booklet, head, plan, wrap, owners);
          file.strip();
          file.guide();
        });
  }

  /** Where pieces lie on a page, for any ring. */
  static StripLayout.Area area(Paper paper) {
    double top = Booklet.MARGIN + 20;
    double below = Booklet.MARGIN + Booklet.FOOT + CheckBars.HEIGHT;
    return new StripLayout.Area(
        Booklet.MARGIN,
        top,
        paper.longSide() - 2 * Booklet.MARGIN,
        paper.shortSide() - top - below);
  }

  private void strip() {
    StripLayout layout = StripLayout.of(plan, wrap, area(head.paper()));
    for (int number = 0; number < layout.pages(); number++) {
      Canvas page = booklet.page(Booklet.Lie.ACROSS);
      head.draw(page, aside(), summary(layout), 3);
      StripDrawing drawing = new StripDrawing(page, layout);
      for (int i = 0; i < layout.pieces().size(); i++) {
        if (layout.pieces().get(i).page() == number) {
          drawing.draw(i);
        }
      }
      double bars = page.height() - Booklet.MARGIN - Booklet.FOOT - CheckBars.HEIGHT;
      CheckBars.across(page, Booklet.MARGIN, bars + 3);
      CheckBars.words(page, Booklet.MARGIN, bars + 10.5, page.width() - 2 * Booklet.MARGIN);
    }
  }

  private String aside() {
    return head.paper().label() + " · " + PrintWords.ASIDE;
  }

  private String summary(StripLayout layout) {
    return "For "
        + owners
        + ". Wrap "
        + Lengths.both(wrap)
        + "; "
        + RingWords.holes(plan)
        + ", "
        + Lengths.both(layout.spacing())
        + " from one division to the next. "
        + RingWords.height(plan);
  }

  private void guide() {
    StripLayout layout = StripLayout.of(plan, wrap, area(head.paper()));
    Flow flow = new Flow(booklet, head, aside(), summary(layout));
    flow.heading("Is the printer true?");
    PrintWords.PRINTER.forEach(text -> flow.paragraph(text, Type.BODY));
    RingWords.corrections(flow);
    flow.heading("Marking the holes");
    PrintWords.LAYING.forEach(text -> flow.paragraph(text, Type.BODY));
    List<String> marking = layout.row().isPresent() ? PrintWords.CROSSES : PrintWords.TICKS;
    marking.forEach(text -> flow.paragraph(text, Type.BODY));
    Safety.drilling().forEach(text -> flow.paragraph(text, Type.BODY));
    flow.heading("Reading the holes after drilling");
    PrintWords.READING_WALL.forEach(text -> flow.paragraph(text, Type.BODY));
    flow.heading("Intended places");
    flow.table(places(layout, rowHeight(flow.room(), layout.marks().size())));
  }

  /** A little lower than usual where that keeps the table on its page. */
  private static double rowHeight(double room, int rows) {
    double fitting = (room - Table.HEAD - SPARE) / rows;
    return fitting < LEAST_ROW ? ROW : Math.min(ROW, fitting);
  }

  private static Table places(StripLayout layout, double rowHeight) {
    List<List<String>> rows = new ArrayList<>();
    for (RingMark mark : layout.marks()) {
      rows.add(
          List.of(
              String.valueOf(mark.division()),
              hole(mark.hole()),
              Lengths.mm(mark.along()),
              Lengths.inches(mark.along())));
    }
    return new Table(
        List.of(
            new Table.Column("division", "", 26),
            new Table.Column("hole", "", 26),
            new Table.Column("along", "mm", 30),
            new Table.Column("along", "in", 30)),
        rowHeight,
        rows);
  }

  static String hole(OptionalInt hole) {
    return hole.isPresent() ? String.valueOf(hole.getAsInt()) : "no hole";
  }
}
