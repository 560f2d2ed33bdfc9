package fairboil.reports.page.view;

/** How templates show text that people wrote. */
public final class Texts {

  private static final int LONGEST_IN_THE_OPEN = 280;
  private static final int LENGTH_OF_START = 90;

  private Texts() {}

  /** Whether a text is so long that it should be folded. */
  public static boolean isLong(String text) {
    return text.length() > LONGEST_IN_THE_OPEN;
  }

  /** The start of a long text, not cut within a character. */
  public static String start(String text) {
    int end = LENGTH_OF_START;
    return text.substring(0, Character.isHighSurrogate(text.charAt(end - 1)) ? end - 1 : end);
  }
}
