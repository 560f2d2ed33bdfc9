package fairboil.reports.print;

/** The millimetre scale and the inch scale along one edge of a strip. */
final class StripScales {

  /** Height of the ticks of whole centimetres and inches, mm. */
  static final double LONG = 4.2;

  private static final double SIXTEENTH = 25.4 / 16;

  /** Distance of the line that the inches stand on from the millimetre edge. */
  private static final double INCH_LINE = 7;

  private StripScales() {}

  /**
   * Draws both scales of a piece.
   *
   * @param edge the y of the millimetre edge
   * @param inwards 1 if the strip lies below that edge, −1 if above
   */
  static void draw(Canvas page, Piece piece, double edge, int inwards) {
    for (int mm = (int) Math.ceil(piece.from()); mm <= Math.floor(piece.to()); mm++) {
      double tick = mm % 10 == 0 ? LONG : mm % 5 == 0 ? 3 : 2;
      tick(page, piece.x(mm), edge, edge + inwards * tick);
      if (mm % 10 == 0 && clear(piece, mm, 3)) {
        number(page, signed(mm), piece.x(mm), edge + inwards * 4.7, inwards);
      }
    }
    double line = edge + inwards * INCH_LINE;
    page.line(piece.x(), line, piece.x(piece.to()), line, Pen.TICK);
    int last = (int) Math.floor(piece.to() / SIXTEENTH);
    for (int n = (int) Math.ceil(piece.from() / SIXTEENTH); n <= last; n++) {
      double tick = n % 16 == 0 ? LONG : n % 8 == 0 ? 3 : n % 4 == 0 ? 2.4 : n % 2 == 0 ? 1.8 : 1.2;
      tick(page, piece.x(n * SIXTEENTH), line, line + inwards * tick);
      if (n % 16 == 0 && clear(piece, n * SIXTEENTH, 4)) {
        String inches = n == 0 ? "0 in" : signed(n / 16);
        number(page, inches, piece.x(n * SIXTEENTH), line + inwards * 4.7, inwards);
      }
    }
  }

  private static String signed(int number) {
    return number < 0 ? "−" + -number : String.valueOf(number);
  }

  /** Whether a number there would keep clear of the ends of the piece. */
  private static boolean clear(Piece piece, double along, double room) {
    return along - piece.from() >= room && piece.to() - along >= room;
  }

  private static void tick(Canvas page, double x, double from, double to) {
    page.line(x, from, x, to, Pen.TICK);
  }

  private static void number(Canvas page, String text, double x, double near, int inwards) {
    double base = inwards > 0 ? near + Type.SCALE.capital() : near;
    page.text(text, x, base, Type.SCALE, Canvas.Side.MIDDLE);
  }
}
