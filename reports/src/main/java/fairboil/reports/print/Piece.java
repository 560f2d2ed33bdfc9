package fairboil.reports.print;

/**
 * A piece of a strip, to be cut out and glued to the next one. Millimetres.
 *
 * @param from where it begins, along the wrap from division 1
 * @param to where the next piece, or the beginning of the first, meets it
 * @param page the page that it lies on, from 0
 * @param x the place of {@code from} on the page
 * @param y the upper edge of the piece on the page
 */
record Piece(double from, double to, int page, double x, double y) {

  double length() {
    return to - from;
  }

  /** Whether that place along the wrap is on this piece. */
  boolean has(double along) {
    return along >= from && along < to;
  }

  /** Where a place along the wrap is on the page. */
  double x(double along) {
    return x + along - from;
  }
}
