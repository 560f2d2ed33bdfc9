package fairboil.reports.print;

/**
 * The few colours of a printed sheet. Everything that is measured is black; the one colour, the
 * blue of the palette of Okabe and Ito, says nothing that is not also said in black.
 */
enum Ink {
  BLACK(0, 0, 0),
  GREY(0.36f, 0.36f, 0.36f),
  FAINT(0.72f, 0.72f, 0.72f),
  PALE(0.92f, 0.92f, 0.92f),
  WHITE(1, 1, 1),
  ACCENT(0, 114 / 255f, 178 / 255f);

  final float red;
  final float green;
  final float blue;

  Ink(float red, float green, float blue) {
    this.red = red;
    this.green = green;
    this.blue = blue;
  }
}
