package fairboil.reports.table;

import fairboil.analysis.figure.Interval;
import java.util.Optional;
import java.util.OptionalDouble;

/** The ends of an interval that may be missing. */
final class Ends {

  private Ends() {}

  static OptionalDouble low(Optional<Interval> interval) {
    return interval.map(known -> OptionalDouble.of(known.low())).orElse(OptionalDouble.empty());
  }

  static OptionalDouble high(Optional<Interval> interval) {
    return interval.map(known -> OptionalDouble.of(known.high())).orElse(OptionalDouble.empty());
  }
}
