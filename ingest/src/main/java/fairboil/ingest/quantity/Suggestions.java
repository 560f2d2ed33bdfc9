package fairboil.ingest.quantity;

import fairboil.ingest.dimension.Dimension;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What to type instead, by dimension. */
final class Suggestions {

  private record Kind(String name, List<String> units) {}

  private static final Map<Dimension, Kind> KINDS =
      Map.ofEntries(
          Map.entry(Dimension.TEMPERATURE, new Kind("a temperature", List.of("°C", "°F"))),
          Map.entry(
              Dimension.TEMPERATURE_DIFFERENCE,
              new Kind("a difference of temperatures", List.of("°C", "°F"))),
          Map.entry(Dimension.MASS, new Kind("a mass", List.of("g", "oz"))),
          Map.entry(Dimension.VOLUME, new Kind("a volume", List.of("mL", "fl oz"))),
          Map.entry(Dimension.LENGTH, new Kind("a length", List.of("mm", "in"))),
          Map.entry(Dimension.AREA, new Kind("an area", List.of("mm²", "in²"))),
          Map.entry(Dimension.DURATION, new Kind("a time", List.of("s", "min"))),
          Map.entry(Dimension.PRESSURE, new Kind("a pressure", List.of("kPa", "inHg"))),
          Map.entry(Dimension.ANGLE, new Kind("an angle", List.of("°"))),
          Map.entry(Dimension.SPEED, new Kind("a speed", List.of("m/s", "mph"))),
          Map.entry(Dimension.POWER, new Kind("a power", List.of("W"))),
          Map.entry(Dimension.ENERGY, new Kind("an energy", List.of("kJ"))),
          Map.entry(Dimension.SPECIFIC_ENERGY, new Kind("a heating value", List.of("MJ/kg"))),
          Map.entry(Dimension.CONDUCTANCE, new Kind("a loss coefficient", List.of("W/K"))),
          Map.entry(Dimension.MASS_RATE, new Kind("a burning rate", List.of("g/min"))),
          Map.entry(Dimension.VOLTAGE, new Kind("a voltage", List.of("mV"))),
          Map.entry(Dimension.RATIO, new Kind("a share", List.of("%"))));

  private static final Kind OTHER = new Kind("another quantity", List.of());

  private Suggestions() {}

  /** What to type for a number that lacks its unit. */
  static String forBare(String tidy, List<Dimension> wanted) {
    if (wanted.contains(Dimension.DURATION)) {
      return "type minutes and seconds as 5:43, or add the unit: "
          + choices(tidy, List.of("min", "s"));
    }
    if (wanted.equals(List.of(Dimension.RATIO))) {
      return "type it as a percentage, such as 8 %";
    }
    return "add the unit, such as "
        + choices(tidy, units(wanted))
        + ", or put it into the header in brackets";
  }

  static <T> Reading<T> unknownUnit(String words, List<Dimension> wanted) {
    return new Reading.Refused<>(
        Tidy.quoted(words) + " is not a unit that is known here",
        "use " + listed(units(wanted)) + ", and put words into a column of notes");
  }

  static <T> Reading<T> wrongKind(String tidy, Dimension is, List<Dimension> wanted) {
    if (is == Dimension.ANGLE && wanted.contains(Dimension.TEMPERATURE)) {
      return new Reading.Refused<>(
          Tidy.quoted(tidy) + " does not say °C or °F",
          "type " + tidy + "C or " + tidy + "F, whichever it is");
    }
    return new Reading.Refused<>(
        Tidy.quoted(tidy) + " is " + name(is) + ", not " + names(wanted),
        "type " + names(wanted) + ", such as " + example(wanted.get(0)));
  }

  static <T> Reading<T> ambiguous(String tidy, String words, List<Dimension> possible) {
    String number = tidy.substring(0, Math.max(0, tidy.lastIndexOf(words))).strip();
    return new Reading.Refused<>(
        Tidy.quoted(tidy) + " could be " + names(possible), "type " + clearer(number, words));
  }

  private static String clearer(String number, String words) {
    return switch (words.toLowerCase(Locale.ROOT)) {
      case "m" -> number + " min, or the length in mm";
      case "c" -> number + " °C or " + number + " cups";
      case "'" -> number + " min or " + number + " ft";
      case "\"" -> number + " s or " + number + " in";
      default -> number + " oz wt for a weight or " + number + " fl oz for a volume";
    };
  }

  /** A value of that dimension as one may type it. */
  static String example(Dimension dimension) {
    return switch (dimension) {
      case TEMPERATURE -> "20 °C or 68 °F";
      case TEMPERATURE_DIFFERENCE -> "0.5 °C or 1 °F";
      case MASS -> "500 g or 1 lb 2 oz";
      case VOLUME -> "500 mL or 17 fl oz";
      case DURATION -> "5:43 or 343 s";
      case LENGTH -> "15 mm or 5/8 in";
      default ->
          "1.6 "
              + KINDS.getOrDefault(dimension, OTHER).units().stream()
                  .findFirst()
                  .orElse(dimension.heldIn());
    };
  }

  private static String choices(String tidy, List<String> units) {
    return units.stream().map(unit -> tidy + " " + unit).collect(Collectors.joining(" or "));
  }

  private static List<String> units(List<Dimension> wanted) {
    if (wanted.contains(Dimension.MASS) && wanted.contains(Dimension.VOLUME)) {
      return List.of("g", "oz wt", "mL", "fl oz"); // oz alone could be either
    }
    return wanted.size() > 3
        ? List.of("°C", "s", "min", "g", "mm", "%")
        : wanted.stream()
            .flatMap(dimension -> KINDS.getOrDefault(dimension, OTHER).units().stream())
            .distinct()
            .toList();
  }

  private static String listed(List<String> units) {
    return String.join(" or ", units);
  }

  private static String names(List<Dimension> dimensions) {
    return dimensions.size() > 3
        ? "a quantity that is used here"
        : dimensions.stream().map(Suggestions::name).collect(Collectors.joining(" or "));
  }

  private static String name(Dimension dimension) {
    return KINDS.getOrDefault(dimension, OTHER).name();
  }
}
