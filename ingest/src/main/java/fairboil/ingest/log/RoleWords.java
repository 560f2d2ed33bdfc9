package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import java.util.Collection;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Words in a header that say what a column of temperatures holds. */
final class RoleWords {

  private static final Pattern ENDING_NUMBER = Pattern.compile("\\d+$");

  private static final Set<String> FLAME = Set.of("flame", "fire", "flamme", "fiamma");
  private static final Set<String> WATER = Set.of("water", "h2o", "wasser", "eau", "agua", "acqua");
  private static final Set<String> AMBIENT =
      Set.of(
          "ambient",
          "amb",
          "air",
          "outdoor",
          "outdoors",
          "outside",
          "room",
          "tamb",
          "tair",
          "luft",
          "umgebung");
  private static final Set<String> COLD_JUNCTION = Set.of("cj", "cjc", "tcj", "tint");

  // Of the logger, unless the words name something else too.
  private static final Set<String> LOGGER = Set.of("internal", "board", "logger");

  // Made of readings, or what they are to be.
  private static final Set<String> DERIVED =
      Set.of(
          "set",
          "setpoint",
          "sp",
          "target",
          "error",
          "err",
          "deviation",
          "rate",
          "slope",
          "raw",
          "avg",
          "average",
          "mean",
          "max",
          "maximum",
          "min",
          "minimum",
          "std",
          "sd",
          "filtered",
          "smoothed",
          "delta",
          "diff",
          "difference",
          "dt",
          "primary",
          "secondary",
          "soll",
          "sollwert",
          "consigne",
          "consigna");

  private static final Set<String> OTHER_QUANTITIES =
      Set.of(
          "output",
          "duty",
          "adc",
          "counts",
          "color",
          "colour",
          "humidity",
          "rh",
          "pressure",
          "speed",
          "flow",
          "level",
          "quality",
          "valve",
          "status",
          "alarm",
          "count",
          "co",
          "co2",
          "o2",
          "feuchte",
          "feuchtigkeit",
          "luftfeuchte",
          "luftfeuchtigkeit",
          "humidit\u00e9",
          "humedad",
          "druck",
          "luftdruck",
          "pression",
          "presi\u00f3n",
          "presion");

  private RoleWords() {}

  /** Whether the words name something made of a reading, or no temperature at all. */
  static boolean sayNoReading(Collection<String> words) {
    return !Collections.disjoint(words, DERIVED) || sayOtherQuantity(words);
  }

  /** Whether the words name a quantity that is no temperature of a probe. */
  static boolean sayOtherQuantity(Collection<String> words) {
    return !Collections.disjoint(words, OTHER_QUANTITIES);
  }

  /** What the words say, if they say one thing. */
  static Optional<Role> of(Collection<String> words) {
    if (sayNoReading(words)) {
      return Optional.empty();
    }
    if (isColdJunction(words)) {
      return Optional.of(Role.COLD_JUNCTION);
    }
    boolean flame = says(words, FLAME);
    boolean water = says(words, WATER);
    boolean ambient = says(words, AMBIENT);
    if (ambient && !flame && !water && says(words, LOGGER)) {
      return Optional.of(Role.COLD_JUNCTION); // the ambient of a board is inside the logger
    }
    int named = (flame ? 1 : 0) + (water ? 1 : 0) + (ambient ? 1 : 0);
    if (named != 1) {
      return named == 0 && says(words, LOGGER) ? Optional.of(Role.COLD_JUNCTION) : Optional.empty();
    }
    return Optional.of(flame ? Role.FLAME : water ? Role.WATER : Role.AMBIENT);
  }

  /** Whether the words name that role, be it of a reading or of something made of it. */
  static boolean mention(Collection<String> words, Role role) {
    return switch (role) {
      case FLAME -> says(words, FLAME);
      case WATER -> says(words, WATER);
      case AMBIENT -> says(words, AMBIENT);
      case COLD_JUNCTION -> isColdJunction(words);
      case TIME, OTHER -> false;
    };
  }

  private static boolean isColdJunction(Collection<String> words) {
    return says(words, COLD_JUNCTION) || (words.contains("cold") && words.contains("junction"));
  }

  // flame, flame1 and tflame alike.
  private static boolean says(Collection<String> words, Set<String> known) {
    return words.stream()
        .map(word -> ENDING_NUMBER.matcher(word).replaceFirst(""))
        .anyMatch(word -> known.contains(word) || (word.startsWith("t") && isKnown(word, known)));
  }

  private static boolean isKnown(String word, Set<String> known) {
    return word.length() > 4 && known.contains(word.substring(1));
  }
}
