package fairboil.ingest.quantity;

import fairboil.ingest.finding.Argument;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Brings the many characters that spreadsheets and phones write for one thing to one: blanks,
 * dashes, quotation marks, degree signs, vulgar fractions.
 */
final class Tidy {

  private static final Pattern BLANKS =
      Pattern.compile("[\\s\\u00A0\\u2000-\\u200B\\u202F\\u205F\\u3000\\uFEFF]+");

  /** A degree sign in UTF-8 that was once read as something else. */
  private static final Pattern BROKEN_DEGREE = Pattern.compile("\u00C2\u00B0|\uFFFD(?=[CFcf])");

  private static final Map<Character, String> CHARACTERS =
      Map.ofEntries(
          Map.entry('\u2212', "-"),
          Map.entry('\u2010', "-"),
          Map.entry('\u2011', "-"),
          Map.entry('\u2012', "-"),
          Map.entry('\u2013', "-"),
          Map.entry('\u2014', "-"),
          Map.entry('\u2018', "'"),
          Map.entry('\u2019', "'"),
          Map.entry('\u2032', "'"),
          Map.entry('\u00B4', "'"),
          Map.entry('\u201C', "\""),
          Map.entry('\u201D', "\""),
          Map.entry('\u2033', "\""),
          Map.entry('\u00BA', "°"),
          Map.entry('\u02DA', "°"),
          Map.entry('\u2103', "°C"),
          Map.entry('\u2109', "°F"),
          Map.entry('\u212A', "K"),
          Map.entry('\u03BC', "µ"),
          Map.entry('\u2044', "/"),
          Map.entry('\u2215', "/"),
          Map.entry('\u2236', ":"),
          Map.entry('\u2248', "~"),
          Map.entry('\u00BD', " 1/2"),
          Map.entry('\u00BC', " 1/4"),
          Map.entry('\u00BE', " 3/4"),
          Map.entry('\u2153', " 1/3"),
          Map.entry('\u2154', " 2/3"),
          Map.entry('\u215B', " 1/8"),
          Map.entry('\u215C', " 3/8"),
          Map.entry('\u215D', " 5/8"),
          Map.entry('\u215E', " 7/8"));

  private static final Set<String> NOTHING =
      Set.of(
          "-", "--", "---", "--:--", "-:-", "n/a", "na", "n.a.", "nan", "none", "null", "nil", "?");

  /** No value takes more characters; longer ones would cost the patterns much time. */
  private static final int LONGEST = 200;

  private Tidy() {}

  /** The text with one character for each thing, single blanks and none at its ends. */
  static String text(String written) {
    if (isTidy(written)) {
      return written;
    }
    String whole = BROKEN_DEGREE.matcher(written).replaceAll("°");
    StringBuilder tidy = new StringBuilder(whole.length() + 8);
    for (int i = 0; i < whole.length(); i++) {
      char c = whole.charAt(i);
      String one = c < 0x80 ? null : CHARACTERS.get(c);
      tidy.append(one == null ? String.valueOf(c) : one);
    }
    String blanked = BLANKS.matcher(tidy).replaceAll(" ").strip().replace("''", "\"");
    return isApostropheForText(blanked) ? blanked.substring(1) : blanked;
  }

  // Most cells are: a few digits, or a word or two.
  private static boolean isTidy(String text) {
    char before = ' ';
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= 0x7F || c < ' ' || c == '\'' || (c == ' ' && before == ' ')) {
        return false;
      }
      before = c;
    }
    return before != ' ';
  }

  // Spreadsheets keep a number as text if an apostrophe stands before it; some write it out.
  private static boolean isApostropheForText(String text) {
    return text.length() > 1 && text.charAt(0) == '\'';
  }

  /** Refuses a text that is too long to be a value. */
  static <T> Optional<Reading<T>> tooLong(String text) {
    return text.length() <= LONGEST
        ? Optional.empty()
        : Optional.of(
            new Reading.Refused<>(
                ReadingSays.TOO_LONG.with(Argument.cell(text)), ReadingSays.INTO_NOTES));
  }

  /** Whether a tidy text says that there is no value. */
  static boolean isNothing(String tidy) {
    return tidy.isEmpty() || NOTHING.contains(tidy.toLowerCase(Locale.ROOT));
  }
}
