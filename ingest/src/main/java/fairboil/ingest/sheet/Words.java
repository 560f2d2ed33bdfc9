package fairboil.ingest.sheet;

import java.util.List;

/** Words as they are compared and shown. */
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

  /** The text in quotation marks, cut where it is long. */
  static String quoted(String text) {
    String shown = text.length() > 60 ? text.substring(0, 57) + "..." : text;
    return "\u201c" + shown.replaceAll("[\\r\\n]+", " ") + "\u201d";
  }

  /** {@code a, b or c}. */
  static String anyOf(List<String> items) {
    int last = items.size() - 1;
    return last < 1
        ? String.join("", items)
        : String.join(", ", items.subList(0, last)) + " or " + items.get(last);
  }

  /** {@code 1 row} or {@code 3 rows}. */
  static String count(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
