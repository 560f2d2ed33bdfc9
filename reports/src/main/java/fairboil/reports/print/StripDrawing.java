package fairboil.reports.print;

import fairboil.ingest.choice.Datum;
import java.util.List;

/** Draws the pieces of a strip. */
final class StripDrawing {

  /** How far the arms of a cross reach beyond its hole, mm. */
  private static final double ARM = 1.5;

  /** Half the cross of a hole whose diameter was not told, mm. */
  private static final double PLAIN_ARM = 2.5;

  /** The longest arm, as a part of the distance between divisions. */
  private static final double CLEAR = 0.45;

  /** The least distance between divisions at which each carries words, mm. */
  private static final double ROOM_FOR_WORDS = 20;

  /** The same for the words that a division has no hole; they may touch the end of a piece. */
  private static final double ROOM_FOR_NO_HOLE = 11;

  /** How often it is said which edge lies along the rim, mm. */
  private static final double EVERY = 120;

  /** Distance that the number of a division needs, mm. */
  private static final double ROOM_FOR_NUMBER = 5;

  private final Canvas page;
  private final StripLayout strip;
  private final List<RingMark> marks;

  StripDrawing(Canvas page, StripLayout strip) {
    this.page = page;
    this.strip = strip;
    this.marks = strip.marks();
  }

  void draw(int index) {
    Piece piece = strip.pieces().get(index);
    outline(piece, index);
    strip.row().ifPresent(row -> rowLine(piece, row));
    marks.stream().filter(mark -> piece.has(mark.along())).forEach(mark -> mark(piece, mark));
    StripScales.draw(page, piece, y(piece, strip.width()), isRimAbove() ? -1 : 1);
    rimWords(piece);
  }

  private void outline(Piece piece, int index) {
    double right = piece.x(piece.to());
    double width = strip.width();
    page.fill(right, piece.y(), StripLayout.TAB, width, Ink.PALE);
    page.box(piece.x(), piece.y(), piece.length() + StripLayout.TAB, width, Pen.CUT);
    page.line(right, piece.y(), right, piece.y() + width, Pen.JOIN);
    boolean last = index + 1 == strip.pieces().size();
    String meets = last ? "piece 1 meets this line" : "piece " + (index + 2) + " meets this line";
    String glue = last ? "when wrapped" : "glue under it";
    double middle = piece.y() + width / 2;
    page.textUp(meets, right + 5, middle, Type.NOTE, Canvas.Side.MIDDLE);
    page.textUp(glue, right + 8, middle, Type.NOTE, Canvas.Side.MIDDLE);
    page.text(
        "Piece " + (index + 1) + " of " + strip.pieces().size(),
        piece.x(),
        piece.y() - 1.4,
        Type.SMALL_STRONG,
        Canvas.Side.LEFT);
  }

  private void rowLine(Piece piece, double row) {
    double y = y(piece, row);
    page.line(piece.x(), y, piece.x(piece.to()), y, Pen.GRID);
  }

  private void mark(Piece piece, RingMark mark) {
    double x = piece.x(mark.along());
    boolean skipped = mark.hole().isEmpty();
    Pen pen = skipped ? Pen.SKIPPED : Pen.MARK;
    double width = strip.width();
    page.line(x, y(piece, 0), x, y(piece, width - StripLayout.SCALES), pen);
    page.line(x, y(piece, width - StripScales.LONG), x, y(piece, width), pen);
    if (!skipped) {
      strip.row().ifPresent(row -> hole(x, y(piece, row)));
    }
    words(piece, mark, x);
  }

  private void hole(double x, double y) {
    double radius = strip.plan().diameter().orElse(0) / 2;
    double arm = Math.min(radius > 0 ? radius + ARM : PLAIN_ARM, CLEAR * strip.spacing());
    page.line(x - arm, y, x + arm, y, Pen.MARK);
    if (radius > 0) {
      page.circle(x, y, radius, Pen.FINE);
    }
  }

  private void words(Piece piece, RingMark mark, double x) {
    int every = (int) Math.ceil(ROOM_FOR_NUMBER / strip.spacing());
    if ((mark.division() - 1) % every != 0) {
      return;
    }
    double top = numbersTop(piece);
    double base = top + 0.8 + Type.STRONG.capital();
    page.text(String.valueOf(mark.division()), x + 0.8, base, Type.STRONG, Canvas.Side.LEFT);
    String note = note(mark);
    double room = mark.hole().isEmpty() ? ROOM_FOR_NO_HOLE : ROOM_FOR_WORDS;
    if (!note.isEmpty() && strip.spacing() * every >= room) {
      page.text(note, x + 0.8, base + 2.6, Type.NOTE, Canvas.Side.LEFT);
    }
  }

  /** What is said beside the number of a division. */
  private static String note(RingMark mark) {
    if (mark.hole().isEmpty()) {
      return "no hole";
    }
    int hole = mark.hole().getAsInt();
    return hole == mark.division() ? "" : "hole " + hole;
  }

  /** The upper edge of the room for numbers: beside the scales. */
  private double numbersTop(Piece piece) {
    double inner = strip.width() - StripLayout.SCALES;
    return isRimAbove() ? y(piece, inner - StripLayout.NUMBERS) : y(piece, inner);
  }

  /** Says which edge lies along the rim, where there is room beside the holes. */
  private void rimWords(Piece piece) {
    double free = strip.row().orElse(8) - strip.plan().diameter().orElse(0) / 2;
    if (free < 4) {
      return;
    }
    String words =
        strip.row().isPresent()
            ? "this edge along the " + strip.plan().rim()
            : "this edge along the line of the holes";
    double y = isRimAbove() ? y(piece, 0) + 1 + Type.NOTE.capital() : y(piece, 0) - 1;
    double wide = page.lettering().width(words, Type.NOTE);
    for (double x = piece.x() + 2; x + wide < piece.x(piece.to()); x += EVERY) {
      page.fill(x - 0.6, y - Type.NOTE.capital() - 0.4, wide + 1.2, 2.6, Ink.WHITE);
      page.text(words, x, y, Type.NOTE, Canvas.Side.LEFT);
    }
  }

  private boolean isRimAbove() {
    return strip.row().isEmpty() || strip.plan().datum() == Datum.TOP_RIM;
  }

  /** The y on the page of a distance from the edge along the rim. */
  private double y(Piece piece, double fromRim) {
    return isRimAbove() ? piece.y() + fromRim : piece.y() + strip.width() - fromRim;
  }
}
