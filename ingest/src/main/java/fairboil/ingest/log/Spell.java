package fairboil.ingest.log;

import java.util.Locale;

/** Times of day as one types them: the same in every system of units. */
final class Spell {

  private Spell() {}

  /** {@code 0:12:05} or {@code 0:12:05.5}. */
  static String elapsed(double seconds) {
    long millis = Math.round(Math.abs(seconds) * 1000);
    long whole = millis / 1000;
    String text =
        String.format(Locale.ROOT, "%d:%02d:%02d", whole / 3600, whole / 60 % 60, whole % 60);
    return (seconds < 0 ? "-" : "") + text + fraction(millis % 1000);
  }

  private static String fraction(long millis) {
    return millis == 0 ? "" : String.format(Locale.ROOT, ".%03d", millis).replaceFirst("0+$", "");
  }
}
