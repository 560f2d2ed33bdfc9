package fairboil.reports.words;

import java.util.List;

/** Numbers of things, and lists of things, as sentences have them. */
public final class Plural {

  private Plural() {}

  /** A count with its noun, such as {@code 1 run} or {@code 3 runs}; adds an s. */
  public static String of(long count, String noun) {
    return of(count, noun, noun + "s");
  }

  /** A count with its noun, such as {@code 3 batches}. */
  public static String of(long count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }

  /** The words joined as in {@code a, b and c}. */
  public static String list(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** The text with its first letter as a capital. */
  public static String sentence(String clause) {
    if (clause.isEmpty()) {
      return "";
    }
    int first = clause.codePointAt(0);
    return new StringBuilder()
        .appendCodePoint(Character.toUpperCase(first))
        .append(clause.substring(Character.charCount(first)))
        .toString();
  }
}
