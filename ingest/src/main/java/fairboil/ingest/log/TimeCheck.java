package fairboil.ingest.log;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Template;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Compares the column of times that is used with others that the log has. */
final class TimeCheck {

  private static final Template DIFFERENT =
      Template.of(
          "two columns tell different times: by {name} the first rows last {value}, by {name}"
              + " {value}; {name} was used");
  private static final Template USE_OTHER =
      Template.of("to use {name}, type in {sheet} that it has the role time");

  private static final double TOLERANCE = 0.01;
  private static final double SECONDS = 2;

  private TimeCheck() {}

  /** Warns where another column of elapsed times tells a clearly different duration. */
  static void compare(
      TableShape shape,
      List<LogColumn> chosen,
      List<LogColumn> candidates,
      Function<LogColumn, OptionalDouble> unit,
      Remarks remarks) {
    OptionalDouble used = duration(shape, chosen.get(0), unit);
    if (used.isEmpty() || chosen.size() > 1) {
      return;
    }
    for (LogColumn other : candidates) {
      OptionalDouble told = chosen.contains(other) ? used : duration(shape, other, unit);
      if (told.isPresent() && differ(used.getAsDouble(), told.getAsDouble())) {
        remarks.warning(
            remarks.file().column(other.name()),
            DIFFERENT.with(
                Argument.name(chosen.get(0).name()),
                Arguments.seconds(used.getAsDouble()),
                Argument.name(other.name()),
                Arguments.seconds(told.getAsDouble()),
                Argument.name(chosen.get(0).name())),
            USE_OTHER.with(Argument.name(other.name()), Arguments.SENSORS),
            TimeAsking.answer(other, Optional.empty(), ""));
      }
    }
  }

  private static boolean differ(double a, double b) {
    return Math.abs(a - b) > SECONDS + TOLERANCE * Math.abs(a);
  }

  private static OptionalDouble duration(
      TableShape shape, LogColumn column, Function<LogColumn, OptionalDouble> unit) {
    OptionalDouble seconds = unit.apply(column);
    NumberRange range = new NumberRange(shape, column);
    return column.looks() != LogColumn.Looks.NUMBERS || seconds.isEmpty() || range.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of((range.last() - range.first()) * seconds.getAsDouble());
  }
}
