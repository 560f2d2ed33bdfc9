package fairboil.reports.page.view;

/**
 * A cell of a table.
 *
 * @param text what it says; empty where nothing is known
 * @param detail a second line in smaller type; empty for none
 * @param sortKey a number to sort by; empty to sort by the text
 * @param link where the text leads; empty for nowhere
 * @param tone how the text is set off
 */
public record CellView(String text, String detail, String sortKey, String link, Tone tone) {

  /** A cell that says something and no more. */
  public static CellView of(String text) {
    return new CellView(text, "", "", "", Tone.PLAIN);
  }

  /** A word that is set off. */
  public static CellView badge(String text, Tone tone) {
    return new CellView(text, "", "", "", tone);
  }

  /** A cell that leads somewhere. */
  public static CellView link(String text, String link) {
    return new CellView(text, "", "", link, Tone.PLAIN);
  }

  /** A number, sorted by its size. */
  public static CellView number(String text, double size) {
    return new CellView(text, "", Double.toString(size), "", Tone.PLAIN);
  }

  /** The same cell with a second line. */
  public CellView with(String secondLine) {
    return new CellView(text, secondLine, sortKey, link, tone);
  }
}
