package fairboil.ingest.quantity;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import java.util.List;
import java.util.Locale;
import java.util.Map;

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

  private static final Map<Dimension, Template> EXAMPLES =
      Map.of(
          Dimension.TEMPERATURE, Template.of("20 °C or 68 °F"),
          Dimension.TEMPERATURE_DIFFERENCE, Template.of("0.5 °C or 1 °F"),
          Dimension.MASS, Template.of("500 g or 1 lb 2 oz"),
          Dimension.VOLUME, Template.of("500 mL or 17 fl oz"),
          Dimension.DURATION, Template.of("5:43 or 343 s"),
          Dimension.LENGTH, Template.of("15 mm or 5/8 in"));

  private static final Template EXAMPLE = Template.of("1.6 {word}");
  private static final Template NUMBER_WITH_UNIT = Template.of("{name} {word}");

  private static final Template TIME_OR_UNIT =
      Template.of("type minutes and seconds as 5:43, or add the unit: {list}");
  private static final Template AS_PERCENTAGE = Template.of("type it as a percentage, such as 8 %");
  private static final Template ADD_UNIT =
      Template.of("add the unit, such as {list}, or put it into the header in brackets");
  private static final Template UNKNOWN_UNIT = Template.of("I don't know the unit {cell}");
  private static final Template USE_UNIT =
      Template.of("use {list}, and put words into a column of notes");
  private static final Template WHICH_DEGREE = Template.of("{cell} does not say °C or °F");
  private static final Template TYPE_DEGREE =
      Template.of("type {name}C or {name}F, whichever it is");
  private static final Template WRONG_KIND = Template.of("{cell} is {word}, not {list}");
  private static final Template TYPE_KIND = Template.of("type {list}, such as {clause}");
  private static final Template AMBIGUOUS = Template.of("{cell} could be {list}");

  private static final Template MINUTES_OR_MILLIMETRES =
      Template.of("type {name} min, or the length in mm");
  private static final Template CELSIUS_OR_CUPS = Template.of("type {name} °C or {name} cups");
  private static final Template MINUTES_OR_FEET = Template.of("type {name} min or {name} ft");
  private static final Template SECONDS_OR_INCHES = Template.of("type {name} s or {name} in");
  private static final Template WEIGHT_OR_VOLUME =
      Template.of("type {name} oz wt for a weight or {name} fl oz for a volume");

  private Suggestions() {}

  /** What to type for a number that lacks its unit. */
  static Message forBare(String tidy, List<Dimension> wanted) {
    if (wanted.contains(Dimension.DURATION)) {
      return TIME_OR_UNIT.with(choices(tidy, List.of("min", "s")));
    }
    if (wanted.equals(List.of(Dimension.RATIO))) {
      return AS_PERCENTAGE.with();
    }
    return ADD_UNIT.with(choices(tidy, units(wanted)));
  }

  static <T> Reading<T> unknownUnit(String words, List<Dimension> wanted) {
    return new Reading.Refused<>(
        UNKNOWN_UNIT.with(Argument.cell(words)), USE_UNIT.with(Argument.words(units(wanted))));
  }

  static <T> Reading<T> wrongKind(String tidy, Dimension is, List<Dimension> wanted) {
    if (is == Dimension.ANGLE && wanted.contains(Dimension.TEMPERATURE)) {
      return new Reading.Refused<>(
          WHICH_DEGREE.with(Argument.cell(tidy)),
          TYPE_DEGREE.with(Argument.name(tidy), Argument.name(tidy)));
    }
    return new Reading.Refused<>(
        WRONG_KIND.with(Argument.cell(tidy), Argument.word(name(is)), names(wanted)),
        TYPE_KIND.with(names(wanted), Argument.clause(example(wanted.get(0)))));
  }

  static <T> Reading<T> ambiguous(String tidy, String words, List<Dimension> possible) {
    String number = tidy.substring(0, Math.max(0, tidy.lastIndexOf(words))).strip();
    return new Reading.Refused<>(
        AMBIGUOUS.with(Argument.cell(tidy), names(possible)),
        clearer(Argument.name(number), words));
  }

  private static Message clearer(Argument number, String words) {
    return switch (words.toLowerCase(Locale.ROOT)) {
      case "m" -> MINUTES_OR_MILLIMETRES.with(number);
      case "c" -> CELSIUS_OR_CUPS.with(number, number);
      case "'" -> MINUTES_OR_FEET.with(number, number);
      case "\"" -> SECONDS_OR_INCHES.with(number, number);
      default -> WEIGHT_OR_VOLUME.with(number, number);
    };
  }

  /** A value of that dimension as one may type it. */
  static Message example(Dimension dimension) {
    if (EXAMPLES.containsKey(dimension)) {
      return EXAMPLES.get(dimension).with();
    }
    String unit =
        KINDS.getOrDefault(dimension, OTHER).units().stream()
            .findFirst()
            .orElse(dimension.heldIn());
    return EXAMPLE.with(Argument.word(unit));
  }

  private static Argument choices(String tidy, List<String> units) {
    Argument number = Argument.name(tidy);
    return Argument.anyOf(
        units.stream()
            .map(unit -> Argument.clause(NUMBER_WITH_UNIT.with(number, Argument.word(unit))))
            .toList());
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

  private static Argument names(List<Dimension> dimensions) {
    return Argument.words(
        dimensions.size() > 3
            ? List.of("a quantity that is used here")
            : dimensions.stream().map(Suggestions::name).toList());
  }

  private static String name(Dimension dimension) {
    return KINDS.getOrDefault(dimension, OTHER).name();
  }
}
