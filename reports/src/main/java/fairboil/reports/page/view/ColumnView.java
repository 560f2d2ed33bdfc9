package fairboil.reports.page.view;

/**
 * A column of a table.
 *
 * @param label its heading, with the unit where there is one
 * @param kind what stands in it
 */
public record ColumnView(String label, Kind kind) {

  /** What stands in a column. */
  public enum Kind {
    /** Words, to the left. */
    WORDS,
    /** Numbers, to the right. */
    NUMBERS
  }

  /** A column of words. */
  public static ColumnView words(String label) {
    return new ColumnView(label, Kind.WORDS);
  }

  /** A column of numbers. */
  public static ColumnView numbers(String label) {
    return new ColumnView(label, Kind.NUMBERS);
  }

  /** The class of the style sheet. */
  public String css() {
    return kind == Kind.NUMBERS ? "num" : "txt";
  }
}
