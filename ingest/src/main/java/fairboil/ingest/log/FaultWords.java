package fairboil.ingest.log;

import java.util.Locale;
import java.util.Set;

/** What loggers and spreadsheets write in a cell where there was no reading. */
final class FaultWords {

  private static final Set<String> WORDS =
      Set.of(
          "nan",
          "na",
          "n/a",
          "n.a.",
          "null",
          "none",
          "nil",
          "missing",
          "invalid",
          "bad",
          "fail",
          "failed",
          "err",
          "err.",
          "error",
          "fault",
          "ol",
          "o.l",
          "o.l.",
          "+ol",
          "-ol",
          "ovl",
          "ovr",
          "over",
          "over range",
          "overrange",
          "over-range",
          "overflow",
          "under",
          "under range",
          "underrange",
          "open",
          "open tc",
          "opentc",
          "open circuit",
          "*oc*",
          "oc",
          "short",
          "disconnected",
          "nc",
          "n.c.",
          "no probe",
          "inf",
          "+inf",
          "-inf",
          "infinity",
          "+infinity",
          "-infinity",
          "-nan",
          "+nan",
          "1.#inf",
          "1.#qnan",
          "-1.#ind",
          "#n/a",
          "#value!",
          "#div/0!",
          "#ref!",
          "#num!",
          "#name?",
          "#null!",
          "x",
          "empty",
          "no data");

  private FaultWords() {}

  /** Whether a cell's text, trimmed, says that there was no reading. */
  static boolean contains(String text) {
    return isStrokes(text) || WORDS.contains(text.toLowerCase(Locale.ROOT));
  }

  // -, --, ---.-, *, ????: nothing but strokes, stars, question marks and dots.
  private static boolean isStrokes(String text) {
    for (int i = 0; i < text.length(); i++) {
      if ("-\u2013\u2014*?._".indexOf(text.charAt(i)) < 0) {
        return false;
      }
    }
    return !text.isEmpty();
  }
}
