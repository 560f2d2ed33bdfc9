package fairboil.reports.print;

/** The papers that forms and strips are laid out for. */
public enum Paper {
  /** ISO 216 A4: 210 mm by 297 mm. */
  A4("A4", "a4", 210, 297),
  /** US Letter: 8½ in by 11 in. */
  LETTER("Letter", "letter", 215.9, 279.4);

  private final String label;
  private final String slug;
  private final double width;
  private final double height;

  Paper(String label, String slug, double width, double height) {
    this.label = label;
    this.slug = slug;
    this.width = width;
    this.height = height;
  }

  /** The name that people know it by. */
  public String label() {
    return label;
  }

  /** The name as part of a file name. */
  public String slug() {
    return slug;
  }

  /** The short side, mm. */
  double shortSide() {
    return width;
  }

  /** The long side, mm. */
  double longSide() {
    return height;
  }
}
