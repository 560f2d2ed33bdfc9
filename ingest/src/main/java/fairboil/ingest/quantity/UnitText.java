package fairboil.ingest.quantity;

import fairboil.ingest.dimension.Dimension;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Recognises units by the many ways in which people spell them. A whole text is a unit or it is
 * none: units are never sought inside words.
 */
public final class UnitText {

  private static final Map<Unit, List<String>> SPELLINGS = spellings();

  private static final Map<String, List<Unit>> UNITS = units();

  private static final String IGNORED = " .·()[]";

  private UnitText() {}

  /**
   * The units that a text may mean; none if it is not a unit. {@code m} may be a metre or a minute,
   * {@code oz} an ounce or a fluid ounce, {@code "} an inch or a second.
   */
  public static List<Unit> meanings(String text) {
    String key = key(Tidy.text(text));
    List<Unit> units = UNITS.get(key);
    if (units == null && key.length() > 2 && key.endsWith("s")) {
      units = UNITS.get(key.substring(0, key.length() - 1));
    }
    return units == null ? List.of() : units;
  }

  /** The one unit that a text means of those that measure one of the wanted dimensions. */
  public static Optional<Unit> find(String text, Collection<Dimension> wanted) {
    List<Unit> found =
        meanings(text).stream().filter(unit -> wanted.stream().anyMatch(unit::measures)).toList();
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }

  // K stays: a small k is a thousand.
  private static String key(String tidy) {
    if (tidy.equals("K") || tidy.equals("k")) {
      return tidy.equals("K") ? "kelvin" : "";
    }
    StringBuilder key = new StringBuilder(tidy.length());
    for (int i = 0; i < tidy.length(); i++) {
      char c = tidy.charAt(i);
      if (IGNORED.indexOf(c) < 0) {
        key.append(c == '*' ? '°' : Character.toLowerCase(c));
      }
    }
    return key.toString();
  }

  private static Map<String, List<Unit>> units() {
    Map<String, List<Unit>> units = new HashMap<>();
    for (Unit unit : Unit.values()) {
      add(units, unit.symbol(), unit);
      SPELLINGS.getOrDefault(unit, List.of()).forEach(spelling -> add(units, spelling, unit));
    }
    units.remove("");
    return units;
  }

  private static void add(Map<String, List<Unit>> units, String spelling, Unit unit) {
    String key = spelling.equals("1") ? "" : key(spelling);
    units.merge(key, List.of(unit), UnitText::both);
  }

  private static List<Unit> both(List<Unit> some, List<Unit> other) {
    return some.containsAll(other)
        ? some
        : java.util.stream.Stream.concat(some.stream(), other.stream()).toList();
  }

  // Without blanks, points and brackets, which are taken out of what people write; plurals with s
  // are understood.
  private static Map<Unit, List<String>> spellings() {
    Map<Unit, List<String>> spellings = new EnumMap<>(Unit.class);
    spellings.put(
        Unit.CELSIUS,
        List.of(
            "c",
            "degc",
            "degreec",
            "degreesc",
            "celsius",
            "degreecelsius",
            "degreescelsius",
            "degcelsius",
            "°celsius",
            "centigrade",
            "gradc",
            "grad-c",
            "deg-c"));
    spellings.put(
        Unit.FAHRENHEIT,
        List.of(
            "f",
            "degf",
            "degreef",
            "degreesf",
            "fahrenheit",
            "degreefahrenheit",
            "degreesfahrenheit",
            "degfahrenheit",
            "°fahrenheit",
            "gradf",
            "deg-f"));
    spellings.put(Unit.KELVIN, List.of("kelvin", "degk", "°k"));
    spellings.put(Unit.KILOGRAM, List.of("kilo", "kilogram", "kilogramme", "kgs"));
    spellings.put(Unit.GRAM, List.of("gm", "gram", "gramme"));
    spellings.put(Unit.MILLIGRAM, List.of("milligram", "milligramme"));
    spellings.put(Unit.POUND, List.of("lbs", "pound", "lbm"));
    spellings.put(
        Unit.OUNCE,
        List.of(
            "ounce",
            "ozs",
            "ozwt",
            "ozweight",
            "weightoz",
            "wtoz",
            "ozav",
            "ozavdp",
            "ounceweight",
            "ouncesweight"));
    spellings.put(Unit.LITRE, List.of("litre", "liter", "ltr", "lt"));
    spellings.put(
        Unit.MILLILITRE, List.of("millilitre", "milliliter", "cc", "cm3", "cm³", "cm^3", "ccm"));
    spellings.put(Unit.CUBIC_METRE, List.of("m3", "m^3", "cum"));
    spellings.put(Unit.US_GALLON, List.of("gallon", "usgal", "usgallon"));
    spellings.put(Unit.US_QUART, List.of("quart", "usqt", "usquart"));
    spellings.put(Unit.US_PINT, List.of("pint", "uspt", "uspint"));
    spellings.put(Unit.US_CUP, List.of("cups", "c", "uscup"));
    spellings.put(
        Unit.US_FLUID_OUNCE,
        List.of(
            "floz",
            "flozs",
            "ozfl",
            "fluidounce",
            "fluidoz",
            "flounce",
            "usfloz",
            "flozus",
            "ozvol",
            "oz",
            "ounce",
            "ozs"));
    spellings.put(Unit.TABLESPOON, List.of("tablespoon", "tbs", "tbl"));
    spellings.put(Unit.TEASPOON, List.of("teaspoon"));
    spellings.put(Unit.METRE, List.of("metre", "meter", "mtr"));
    spellings.put(Unit.CENTIMETRE, List.of("centimetre", "centimeter"));
    spellings.put(Unit.MILLIMETRE, List.of("millimetre", "millimeter"));
    spellings.put(Unit.KILOMETRE, List.of("kilometre", "kilometer"));
    spellings.put(Unit.INCH, List.of("\"", "inch", "inches", "ins"));
    spellings.put(Unit.FOOT, List.of("'", "foot", "feet"));
    spellings.put(Unit.YARD, List.of("yard"));
    spellings.put(Unit.MILE, List.of("mile"));
    spellings.put(Unit.SQUARE_METRE, List.of("m2", "m^2", "sqm"));
    spellings.put(Unit.SQUARE_CENTIMETRE, List.of("cm2", "cm^2", "sqcm"));
    spellings.put(Unit.SQUARE_MILLIMETRE, List.of("mm2", "mm^2", "sqmm"));
    spellings.put(Unit.SQUARE_INCH, List.of("in2", "in^2", "sqin"));
    spellings.put(Unit.SECOND, List.of("\"", "sec", "secs", "second", "sek"));
    spellings.put(Unit.MILLISECOND, List.of("msec", "millisecond", "millis"));
    spellings.put(Unit.MICROSECOND, List.of("us", "usec", "microsecond", "micros"));
    spellings.put(Unit.MINUTE, List.of("'", "m", "mins", "minute"));
    spellings.put(Unit.HOUR, List.of("hr", "hour"));
    spellings.put(Unit.DAY, List.of("day"));
    spellings.put(Unit.PASCAL, List.of("pascal"));
    spellings.put(Unit.HECTOPASCAL, List.of("hectopascal"));
    spellings.put(Unit.KILOPASCAL, List.of("kilopascal"));
    spellings.put(Unit.MILLIBAR, List.of("mb", "millibar"));
    spellings.put(Unit.ATMOSPHERE, List.of("atmosphere"));
    spellings.put(
        Unit.INCH_OF_MERCURY,
        List.of("\"hg", "inchhg", "incheshg", "inchofmercury", "inchesofmercury"));
    spellings.put(Unit.MILLIMETRE_OF_MERCURY, List.of("torr"));
    spellings.put(Unit.POUND_PER_SQUARE_INCH, List.of("psia", "lb/in2", "lbf/in2"));
    spellings.put(Unit.RADIAN, List.of("radian"));
    spellings.put(Unit.DEGREE, List.of("deg", "degree"));
    spellings.put(
        Unit.METRE_PER_SECOND,
        List.of("mps", "m/sec", "ms-1", "metrespersecond", "meterspersecond"));
    spellings.put(Unit.KILOMETRE_PER_HOUR, List.of("kph", "kmh", "km/hr", "kmph"));
    spellings.put(
        Unit.MILE_PER_HOUR, List.of("mi/h", "mile/h", "miles/h", "mi/hr", "milesperhour"));
    spellings.put(Unit.KNOT, List.of("kt", "knot"));
    spellings.put(Unit.FOOT_PER_SECOND, List.of("fps", "ft/sec"));
    spellings.put(Unit.WATT, List.of("watt"));
    spellings.put(Unit.KILOWATT, List.of("kilowatt"));
    spellings.put(Unit.BTU_PER_HOUR, List.of("btu/hr", "btuh"));
    spellings.put(Unit.JOULE, List.of("joule"));
    spellings.put(Unit.KILOJOULE, List.of("kilojoule"));
    spellings.put(Unit.MEGAJOULE, List.of("megajoule"));
    spellings.put(Unit.KILOWATT_HOUR, List.of("kilowatthour"));
    spellings.put(Unit.JOULE_PER_KILOGRAM, List.of("jkg-1"));
    spellings.put(Unit.KILOJOULE_PER_KILOGRAM, List.of("kjkg-1", "j/g"));
    spellings.put(Unit.MEGAJOULE_PER_KILOGRAM, List.of("mjkg-1", "kj/g"));
    spellings.put(Unit.WATT_PER_KELVIN, List.of("w/°c", "w/c", "wk-1", "w/degc"));
    spellings.put(
        Unit.BTU_PER_HOUR_FAHRENHEIT,
        List.of("btu/h°f", "btu/hr°f", "btu/hrf", "btu/hf", "btu/h/°f"));
    spellings.put(Unit.GRAM_PER_MINUTE, List.of("gpm"));
    spellings.put(Unit.VOLT, List.of("volt"));
    spellings.put(Unit.MILLIVOLT, List.of("millivolt"));
    spellings.put(Unit.MICROVOLT, List.of("uv", "microvolt"));
    spellings.put(Unit.FRACTION, List.of("fraction", "ratio", "share"));
    spellings.put(Unit.PERCENT, List.of("percent", "pct", "percentage"));
    return spellings;
  }
}
