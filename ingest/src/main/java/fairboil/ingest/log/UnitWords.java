package fairboil.ingest.log;

import fairboil.ingest.quantity.Unit;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Units of a log's columns as loggers and people write them. Whole words only, never parts. */
final class UnitWords {

  // The degree sign, what stands for it, and what is left of it after a wrong decoding.
  private static final Pattern DEGREE =
      Pattern.compile(
          "(?:[\u00c2\u00e2]?[\u00b0\u00ba\u02da]|\ufffd|\\*|deg(?:rees?)?[ ._]*|grad[ ._]*|\u00a1|\u221e)"
              + "[ ]*(?=[cfk])");

  private static final Map<String, Unit> TEMPERATURES =
      Map.ofEntries(
          Map.entry("c", Unit.CELSIUS),
          Map.entry("celsius", Unit.CELSIUS),
          Map.entry("centigrade", Unit.CELSIUS),
          Map.entry("\u2103", Unit.CELSIUS),
          Map.entry("f", Unit.FAHRENHEIT),
          Map.entry("fahrenheit", Unit.FAHRENHEIT),
          Map.entry("\u2109", Unit.FAHRENHEIT),
          Map.entry("k", Unit.KELVIN),
          Map.entry("kelvin", Unit.KELVIN),
          Map.entry("kelvins", Unit.KELVIN),
          Map.entry("\u212a", Unit.KELVIN));

  private static final Map<String, Unit> VOLTAGES =
      Map.ofEntries(
          Map.entry("v", Unit.VOLT),
          Map.entry("volt", Unit.VOLT),
          Map.entry("volts", Unit.VOLT),
          Map.entry("mv", Unit.MILLIVOLT),
          Map.entry("millivolt", Unit.MILLIVOLT),
          Map.entry("millivolts", Unit.MILLIVOLT),
          Map.entry("uv", Unit.MICROVOLT),
          Map.entry("\u00b5v", Unit.MICROVOLT),
          Map.entry("\u03bcv", Unit.MICROVOLT),
          Map.entry("microvolt", Unit.MICROVOLT),
          Map.entry("microvolts", Unit.MICROVOLT));

  private static final Set<String> OTHERS =
      Set.of(
          "%",
          "%rh",
          "rh",
          "hpa",
          "pa",
          "kpa",
          "mbar",
          "bar",
          "psi",
          "mm",
          "cm",
          "m",
          "a",
          "ma",
          "w",
          "kw",
          "ohm",
          "ohms",
          "\u03c9",
          "kohm",
          "ppm",
          "g",
          "kg",
          "m/s",
          "km/h",
          "mph",
          "hz",
          "db",
          "lux",
          "adc",
          "counts",
          "l/min",
          "rpm",
          "c/s",
          "k/s",
          "c/min",
          "k/min",
          "\u00b0c/s",
          "\u00b0c/min",
          "\u00b0f/min",
          "-",
          "1");

  private UnitWords() {}

  /** The temperature unit that a text is, if it is one: {@code C}, {@code deg F}, {@code °C}. */
  static Optional<Unit> ofTemperature(String text) {
    return Optional.ofNullable(TEMPERATURES.get(plain(text)));
  }

  /** The unit of temperature or voltage that a text is, if it is one. */
  static Optional<Unit> ofReading(String text) {
    String plain = plain(text);
    return Optional.ofNullable(TEMPERATURES.getOrDefault(plain, VOLTAGES.get(plain)));
  }

  /** Whether a text is a unit of something that is neither temperature, voltage nor time. */
  static boolean isOther(String text) {
    return OTHERS.contains(text.strip().toLowerCase(Locale.ROOT));
  }

  /** Whether a text is a unit of anything, brackets or not. */
  static boolean isUnit(String text) {
    String bare = withoutBrackets(text);
    return ofReading(bare).isPresent() || TimeWord.of(bare).isPresent() || isOther(bare);
  }

  /** Whether a text has a degree sign, or what stands for one, before a letter of a unit. */
  static boolean hasDegree(String text) {
    return DEGREE.matcher(text.toLowerCase(Locale.ROOT)).find();
  }

  /** A unit without brackets, and without a mark that was left behind it: {@code v;}. */
  static String withoutBrackets(String text) {
    String bare = text.strip().replaceFirst("(?<=[^;:,])[;:,]$", "").strip();
    boolean bracketed =
        bare.length() > 2
            && "([{".indexOf(bare.charAt(0)) >= 0
            && ")]}".indexOf(bare.charAt(bare.length() - 1)) >= 0;
    return bracketed ? bare.substring(1, bare.length() - 1).strip() : bare;
  }

  private static String plain(String text) {
    String lower = text.strip().toLowerCase(Locale.ROOT);
    return DEGREE.matcher(lower).replaceFirst("").strip();
  }
}
