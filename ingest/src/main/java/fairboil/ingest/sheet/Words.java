package fairboil.ingest.sheet;

/** Words as they are compared. */
final class Words {

  private Words() {}

  /** What is compared: capital letters, blanks, hyphens and underscores do not matter. */
  static String key(String text) {
    StringBuilder key = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (!isSeparator(c)) {
        key.append(Character.toLowerCase(c));
      }
    }
    return key.toString();
  }

  // Blanks of any width, hyphens and dashes, underscores.
  private static boolean isSeparator(char c) {
    return c == '_'
        || c == '-'
        || Character.isWhitespace(c)
        || Character.isSpaceChar(c)
        || (c >= '\u2010' && c <= '\u2015')
        || c == '\u200B'
        || c == '\uFEFF';
  }
}
