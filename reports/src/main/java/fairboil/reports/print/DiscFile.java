package fairboil.reports.print;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The file of one base: its disc, then how to use it and a table of places. */
final class DiscFile {

  /** Room beside the disc for the upright bar, mm. */
  private static final double BAR = 10;

  private static final double TOP = Booklet.MARGIN + 24;

  private final Booklet booklet;
  private final FormHead head;
  private final Disc disc;
  private final Undrawn undrawn;
  private final String owners;

  private DiscFile(Booklet booklet, FormHead head, Disc disc, Undrawn undrawn, String owners) {
    this.booklet = booklet;
    this.head = head;
    this.disc = disc;
    this.undrawn = undrawn;
    this.owners = owners;
  }

  /**
   * Draws the file.
   *
   * @param undrawn rings of the base that are not on the disc
   * @param owners for which builds it is, in words
   */
  static byte[] of(FormHead head, Disc disc, Undrawn undrawn, String owners, Typefaces typefaces) {
    return Booklet.of(
        head,
        typefaces,
        booklet -> {
          DiscFile file = new DiscFile(booklet, head, disc, undrawn, owners);
          file.disc();
          file.guide();
        });
  }

  /** How a disc is cut up for a paper. */
  static DiscTiles tiles(Disc disc, Paper paper) {
    return DiscTiles.of(
        disc,
        paper.shortSide() - 2 * Booklet.MARGIN - BAR,
        paper.longSide() - TOP - Booklet.MARGIN - Booklet.FOOT - CheckBars.HEIGHT);
  }

  /** Where the left edge of a piece lies on its page. */
  static double left(DiscTiles tiles, Paper paper) {
    double room = paper.shortSide() - 2 * Booklet.MARGIN - BAR;
    return Booklet.MARGIN + BAR + (tiles.isWhole() ? (room - tiles.width()) / 2 : 0);
  }

  /** Where the upper edge of a piece lies on its page. */
  static double top() {
    return TOP;
  }

  private void disc() {
    DiscTiles tiles = tiles(disc, head.paper());
    for (DiscTiles.Tile tile : tiles.tiles()) {
      Canvas page = booklet.page(Booklet.Lie.UPRIGHT);
      head.draw(page, aside(), summary(), 4);
      double left = left(tiles, head.paper());
      DiscDrawing drawing =
          new DiscDrawing(page, disc, left + tiles.centreX(tile), TOP + tiles.centreY(tile));
      double tabRight = tiles.tabRight(tile);
      double tabBelow = tiles.tabBelow(tile);
      page.fill(left + tiles.width(), TOP, tabRight, tiles.height() + tabBelow, Ink.PALE);
      page.fill(left, TOP + tiles.height(), tiles.width(), tabBelow, Ink.PALE);
      // The tabs carry the drawing on, so that a hole on a join is whole on the first piece.
      page.within(left, TOP, tiles.width() + tabRight, tiles.height() + tabBelow, drawing::draw);
      if (!tiles.isWhole()) {
        frame(page, tiles, tile, left);
      }
      CheckBars.upright(page, Booklet.MARGIN + 6, TOP);
      double bars = page.height() - Booklet.MARGIN - Booklet.FOOT - CheckBars.HEIGHT;
      CheckBars.metric(page, Booklet.MARGIN, bars + 3);
      CheckBars.words(page, Booklet.MARGIN, bars + 9.5, page.width() - 2 * Booklet.MARGIN);
    }
  }

  private static void frame(Canvas page, DiscTiles tiles, DiscTiles.Tile tile, double left) {
    double right = left + tiles.width();
    double bottom = TOP + tiles.height();
    String piece = "Piece " + (tile.row() + 1) + "-" + (tile.column() + 1);
    double tabRight = tiles.tabRight(tile);
    double tabBelow = tiles.tabBelow(tile);
    page.text(piece + " (row-column)", left, TOP - 1.2, Type.SMALL_STRONG, Canvas.Side.LEFT);
    if (tabRight > 0) {
      page.line(right, TOP, right, bottom, Pen.JOIN);
      page.textUp(
          "edge of the next piece meets the line: glue under",
          right + 6,
          TOP + tiles.height() / 2,
          Type.NOTE,
          Canvas.Side.MIDDLE);
    }
    if (tabBelow > 0) {
      page.line(left, bottom, right, bottom, Pen.JOIN);
      page.text(
          "edge of the piece below meets the line: glue under",
          left + tiles.width() / 2,
          bottom + 6,
          Type.NOTE,
          Canvas.Side.MIDDLE);
    }
    page.box(left, TOP, tiles.width() + tabRight, tiles.height() + tabBelow, Pen.CUT);
  }

  private String aside() {
    return head.paper().label() + " · " + PrintWords.ASIDE;
  }

  private String summary() {
    String circles =
        disc.circles().size() > 3
            ? disc.circles().size() + " circles: see the table"
            : disc.circles().stream().map(DiscFile::words).collect(Collectors.joining("; "));
    String missing =
        undrawn.isEmpty() ? "" : "NOT DRAWN: " + undrawn.names() + ", which could not be read. ";
    return missing + "For " + owners + ", seen from outside: " + circles + ".";
  }

  private static String words(Disc.Circle circle) {
    String letter = circle.letter().isEmpty() ? "" : circle.letter() + ": ";
    String where =
        circle.radius() > 0 ? ", radius " + Lengths.both(circle.radius()) : " in the centre";
    return letter + "ring " + circle.plan().name() + ", " + RingWords.holes(circle.plan()) + where;
  }

  private void guide() {
    Flow flow = new Flow(booklet, head, aside(), summary());
    if (!undrawn.isEmpty()) {
      flow.heading("Not drawn");
      undrawn.sentences(owners).forEach(text -> flow.paragraph(text, Type.BODY));
    }
    flow.heading("Is the printer true?");
    PrintWords.PRINTER.forEach(text -> flow.paragraph(text, Type.BODY));
    flow.paragraph(PrintWords.BOTH_WAYS, Type.BODY);
    RingWords.corrections(flow);
    flow.heading("Marking the holes");
    if (!tiles(disc, head.paper()).isWhole()) {
      flow.paragraph(PrintWords.DISC_IN_PIECES, Type.BODY);
    }
    PrintWords.DISC.forEach(text -> flow.paragraph(text, Type.BODY));
    if (disc.rim().isEmpty()) {
      flow.paragraph(PrintWords.NO_RIM, Type.BODY);
    }
    Safety.drilling().forEach(text -> flow.paragraph(text, Type.BODY));
    flow.heading("Reading the holes after drilling");
    PrintWords.READING_BASE.forEach(text -> flow.paragraph(text, Type.BODY));
    flow.heading("Intended places");
    for (Disc.Circle circle : disc.circles()) {
      flow.keep(28);
      flow.paragraph(words(circle) + chord(circle) + ".", Type.SMALL_STRONG);
      flow.table(places(circle));
    }
  }

  private static String chord(Disc.Circle circle) {
    return circle.radius() > 0 && circle.plan().divisions() > 1
        ? "; from one division straight to the next " + Lengths.both(circle.chord())
        : "";
  }

  private static Table places(Disc.Circle circle) {
    List<List<String>> rows = new ArrayList<>();
    for (Disc.Spot spot : circle.spots()) {
      rows.add(
          List.of(
              circle.letter() + spot.division(),
              StripFile.hole(spot.hole()),
              Lengths.angle(spot.angle()),
              Lengths.mm(spot.radius()),
              Lengths.mm(spot.x()),
              Lengths.mm(spot.y())));
    }
    return new Table(
        List.of(
            new Table.Column("division", "", 24),
            new Table.Column("hole", "", 24),
            new Table.Column("angle", "against the clock", 32),
            new Table.Column("radius", "mm", 26),
            new Table.Column("x", "mm, to the right", 30),
            new Table.Column("y", "mm, upwards", 30)),
        5,
        rows);
  }
}
