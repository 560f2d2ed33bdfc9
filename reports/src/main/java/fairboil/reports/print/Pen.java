package fairboil.reports.print;

/**
 * A kind of line.
 *
 * @param width mm
 * @param ink colour
 * @param dash length of dashes and of the gaps between them, mm; 0 for a whole line
 */
record Pen(double width, Ink ink, double dash) {

  /** Ticks of a scale. */
  static final Pen TICK = new Pen(0.12, Ink.BLACK, 0);

  /** Fine lines of crosses and outlines. */
  static final Pen FINE = new Pen(0.18, Ink.BLACK, 0);

  /** The place of a division. */
  static final Pen MARK = new Pen(0.25, Ink.BLACK, 0);

  /** Bars and heavy rules. */
  static final Pen BOLD = new Pen(0.5, Ink.BLACK, 0);

  /** The place of a division that is skipped. */
  static final Pen SKIPPED = new Pen(0.18, Ink.GREY, 0.8);

  /** Where to cut. */
  static final Pen CUT = new Pen(0.15, Ink.BLACK, 0);

  /** Where two pieces meet. */
  static final Pen JOIN = new Pen(0.3, Ink.BLACK, 1.6);

  /** Help lines that must not compete with what is measured. */
  static final Pen GRID = new Pen(0.1, Ink.FAINT, 0);

  /** Lines to write on, frames of boxes. */
  static final Pen RULE = new Pen(0.15, Ink.GREY, 0);

  /** The rule under a title. */
  static final Pen TITLE = new Pen(0.7, Ink.ACCENT, 0);
}
