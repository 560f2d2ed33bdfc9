package fairboil.reports.print;

/** The few kinds of lettering of a printed sheet. */
enum Type {
  TITLE(Face.BOLD, 14, Ink.BLACK),
  HEADING(Face.BOLD, 9.5, Ink.ACCENT),
  BODY(Face.PLAIN, 8.5, Ink.BLACK),
  STRONG(Face.BOLD, 8.5, Ink.BLACK),
  SMALL(Face.PLAIN, 7, Ink.BLACK),
  SMALL_STRONG(Face.BOLD, 7, Ink.BLACK),
  NOTE(Face.PLAIN, 6.5, Ink.GREY),
  SCALE(Face.PLAIN, 6, Ink.BLACK);

  /** How far lines of text are apart, as a multiple of their size. */
  private static final double LEADING = 1.32;

  /** Height of a capital letter as a part of the size, in DejaVu Sans. */
  private static final double CAPITAL = 0.729;

  private static final double MM_PER_POINT = 25.4 / 72;

  /** The faces at hand. */
  enum Face {
    PLAIN("DejaVuSans.ttf"),
    BOLD("DejaVuSans-Bold.ttf");

    final String file;

    Face(String file) {
      this.file = file;
    }
  }

  final Face face;
  final double points;
  final Ink ink;

  Type(Face face, double points, Ink ink) {
    this.face = face;
    this.points = points;
    this.ink = ink;
  }

  /** Distance between lines of text, mm. */
  double lineHeight() {
    return points * LEADING * MM_PER_POINT;
  }

  /** Height of a capital letter, mm. */
  double capital() {
    return points * CAPITAL * MM_PER_POINT;
  }
}
