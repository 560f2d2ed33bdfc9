package fairboil.ingest.sheet;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Words as they are compared and shown. */
final class Words {

  private static final Pattern SEPARATORS =
      Pattern.compile("[\\s_\\u00A0\\u2000-\\u200B\\u202F\\uFEFF\\u2010-\\u2014-]+");

  private Words() {}

  /** What is compared: capital letters, blanks, hyphens and underscores do not matter. */
  static String key(String text) {
    return SEPARATORS.matcher(text.toLowerCase(Locale.ROOT)).replaceAll("");
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
