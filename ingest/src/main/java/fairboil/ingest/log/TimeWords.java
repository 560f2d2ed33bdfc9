package fairboil.ingest.log;

import java.util.List;
import java.util.Set;

/** Words in a header that say that a column tells time. */
final class TimeWords {

  private static final Set<String> WORDS =
      Set.of(
          "time",
          "times",
          "timestamp",
          "stamp",
          "datetime",
          "date",
          "clock",
          "elapsed",
          "duration",
          "uptime",
          "epoch",
          "unix",
          "posix",
          "t",
          "utc",
          "since",
          "runtime",
          "timer");

  private static final Set<String> ELAPSED =
      Set.of("elapsed", "duration", "uptime", "runtime", "since", "timer", "stopwatch", "run");

  private static final Set<String> CLOCK = Set.of("clock", "day", "local", "utc", "datetime");

  private TimeWords() {}

  static boolean contains(String word) {
    return WORDS.contains(word);
  }

  /** Whether some of the words say so. */
  static boolean someOf(List<String> words) {
    return words.stream().anyMatch(WORDS::contains);
  }

  /** Whether a word says that time is counted from a start. */
  static boolean isElapsed(String word) {
    return ELAPSED.contains(word);
  }

  /** Whether a word says that time is that of a clock. */
  static boolean isClock(String word) {
    return CLOCK.contains(word);
  }
}
