package fairboil.ingest.log;

import fairboil.ingest.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a column's header says, word by word: {@code K-Type flame, °C (S/N 1)} is a flame
 * temperature in degrees Celsius, and neither kelvin nor newtons.
 *
 * @param written the header as written
 * @param bare the header without its unit
 * @param words its words in small letters, without the unit; unmodifiable
 * @param unit the unit of a temperature or voltage, if it says one
 * @param time how it tells time, if it says so
 * @param other whether it says a unit of anything else
 */
record HeaderName(
    String written,
    String bare,
    List<String> words,
    Optional<Unit> unit,
    Optional<TimeWord> time,
    boolean other) {

  private static final Pattern BRACKETS = Pattern.compile("[(\\[{]([^)\\]}]*)[)\\]}]");
  private static final Pattern WORD_END =
      Pattern.compile("(?<=[a-z])(?=[A-Z])|[^\\p{L}\\p{N}\u00b0\u00ba*%\u00b5\u03bc\ufffd#]+");
  private static final Pattern LAST =
      Pattern.compile(
          "(?i)^(.*?)(?:[\\s_,;:/-]+(?:in[\\s_]+)?|(?<=[\\p{L}\\d])(?=[\u00b0\u00ba\u00c2*\ufffd]))"
              + "((?:(?:deg(?:rees?)?|grad|[\u00b0\u00ba*\ufffd]|\u00c2\u00b0)[\\s_.]*)?"
              + "[\\p{L}\u00b5%]+)$");
  private static final Pattern ENDING_NUMBER = Pattern.compile("\\d+$");
  private static final Pattern JOINTS = Pattern.compile("[\\s_\u00a0-]+");
  private static final Pattern CAMEL = Pattern.compile("^(.*[a-z])([CF])$");

  private static final Set<String> TEMPERATURE_WORDS =
      Set.of(
          "t",
          "temp",
          "temps",
          "temperature",
          "temperatures",
          "temperatur",
          "temp\u00e9rature",
          "temperatura",
          "tc",
          "thermocouple",
          "probe");

  HeaderName {
    words = List.copyOf(words);
  }

  /** A header, with the unit that stands under it; either may be empty. */
  static HeaderName of(String written, String unitBelow) {
    HeaderName inBrackets = inBrackets(written);
    HeaderName atEnd = atEnd(written);
    boolean other = inBrackets.other && (atEnd.unit.isPresent() || atEnd.time.isPresent());
    boolean typeK = inBrackets.isKelvin() && atEnd.unit.isPresent(); // (K) beside °C
    boolean weak = other || typeK;
    HeaderName said = inBrackets.saysUnit() && !weak ? inBrackets : atEnd;
    String below = UnitWords.withoutBrackets(unitBelow);
    return said.saysUnit() || below.isEmpty() ? said : withUnit(written, written, below);
  }

  private boolean isKelvin() {
    return unit.equals(Optional.of(Unit.KELVIN));
  }

  private boolean saysUnit() {
    return unit.isPresent() || time.isPresent() || other;
  }

  private static HeaderName inBrackets(String written) {
    Matcher matcher = BRACKETS.matcher(written);
    while (matcher.find()) {
      for (String part : matcher.group(1).split("[,;]", -1)) {
        if (UnitWords.isUnit(part) && !isLabel(part)) {
          String bare = written.substring(0, matcher.start()) + written.substring(matcher.end());
          return withUnit(written, bare.strip(), part);
        }
      }
    }
    return unitless(written);
  }

  // (A) is the first of two probes rather than amperes.
  private static boolean isLabel(String part) {
    return part.strip().matches("[A-Z0-9]") && UnitWords.isOther(part);
  }

  private static HeaderName unitless(String written) {
    return new HeaderName(
        written, written, words(written), Optional.empty(), Optional.empty(), false);
  }

  private static HeaderName withUnit(String written, String bare, String unit) {
    return new HeaderName(
        written,
        bare,
        words(bare),
        UnitWords.ofReading(unit),
        TimeWord.of(unit),
        UnitWords.isOther(unit));
  }

  private static HeaderName atEnd(String written) {
    String text = BRACKETS.matcher(written).replaceAll(" ").strip();
    if (TimeWord.of(text).isPresent()) {
      return new HeaderName(
          written, written, words(written), Optional.empty(), TimeWord.of(text), false);
    }
    Matcher last = LAST.matcher(text);
    if (last.matches() && mayEnd(last.group(2), words(last.group(1)))) {
      return withUnit(written, last.group(1).strip(), last.group(2));
    }
    Matcher camel = CAMEL.matcher(text);
    if (camel.matches() && isTemperature(words(camel.group(1)))) {
      return withUnit(written, camel.group(1), camel.group(2));
    }
    return unitless(written);
  }

  // A letter alone is a unit only behind a word that says what is measured; K never (type K).
  private static boolean mayEnd(String unit, List<String> before) {
    if (UnitWords.hasDegree(unit)) {
      return true;
    }
    if (TimeWord.of(unit).isPresent()) {
      return isTime(before);
    }
    boolean letter = unit.length() == 1;
    boolean kelvin = unit.equalsIgnoreCase("k") || unit.equalsIgnoreCase("v");
    return UnitWords.isUnit(unit) && (!letter || (!kelvin && isTemperature(before)));
  }

  private static boolean isTemperature(List<String> words) {
    return words.stream()
        .anyMatch(
            word ->
                TEMPERATURE_WORDS.contains(ENDING_NUMBER.matcher(word).replaceFirst(""))
                    || hasRole(word));
  }

  private static boolean hasRole(String word) {
    return RoleWords.of(List.of(word)).isPresent();
  }

  private static boolean isTime(List<String> words) {
    return words.stream().anyMatch(TimeWords::contains);
  }

  /** The words of a text in small letters, also of {@code flameTemp} and {@code flame_temp}. */
  static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    Arrays.stream(WORD_END.split(text))
        .map(word -> word.toLowerCase(Locale.ROOT))
        .filter(word -> !word.isEmpty())
        .forEach(words::add);
    return words;
  }

  /** The header for comparison: small letters, no blanks, hyphens or underscores. */
  static String plain(String name) {
    return JOINTS.matcher(name.toLowerCase(Locale.ROOT)).replaceAll("");
  }

  /** Whether the words say a temperature, or the unit does. */
  boolean saysTemperature() {
    return unit.isPresent() || (!other && time.isEmpty() && isTemperature(words));
  }
}
