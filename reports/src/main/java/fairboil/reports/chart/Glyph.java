package fairboil.reports.chart;

/** The shapes of point markers. */
public enum Glyph {
  /** A disc. */
  CIRCLE,
  /** A triangle that points up. */
  TRIANGLE,
  /** A square. */
  SQUARE,
  /** A square on its corner. */
  DIAMOND,
  /** A triangle that points down. */
  TRIANGLE_DOWN,
  /** A cross of two thick bars. */
  CROSS,
  /** An upright bar. */
  BAR
}
