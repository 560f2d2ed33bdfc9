package fairboil.reports.table;

import static fairboil.reports.table.TableColumn.number;
import static fairboil.reports.table.TableColumn.text;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.precision.Repeatability;
import fairboil.reports.words.ScatterWords;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** {@code variation.csv}: scatter as a share of the mean, and what two runs may differ by. */
final class VariationTable {

  static final TableSchema<Repeatability> SCHEMA =
      new TableSchema<>(
          "variation.csv",
          "a source of scatter of one measure, as in repeatability.csv",
          List.of(
              text("measure", "measure that scatters", scatter -> scatter.measure().label()),
              text("level", "where the scatter comes from", ScatterWords::level),
              plain("cv", "standard deviation over the mean", Repeatability::relative),
              plain(
                  "cv_ci_low",
                  "lower end of its interval",
                  scatter -> end(scatter.relativeInterval(), Interval::low)),
              plain(
                  "cv_ci_high",
                  "upper end of its interval",
                  scatter -> end(scatter.relativeInterval(), Interval::high)),
              plain(
                  "limit",
                  "what two runs differ by at most 19 times in 20, in °C, s, W, kg or a share",
                  scatter -> held(scatter, scatter.limit())),
              plain(
                  "limit_ci_low",
                  "lower end of its interval",
                  scatter -> held(scatter, end(scatter.limitInterval(), Interval::low))),
              plain(
                  "limit_ci_high",
                  "upper end of its interval",
                  scatter -> held(scatter, end(scatter.limitInterval(), Interval::high)))));

  private VariationTable() {}

  private static OptionalDouble end(Optional<Interval> interval, ToDoubleFunction<Interval> end) {
    return interval.stream().mapToDouble(end).findFirst();
  }

  private static OptionalDouble held(Repeatability scatter, OptionalDouble value) {
    return value.isPresent()
        ? OptionalDouble.of(
            TableUnit.of(scatter.measure().dimension().ofDifference()).of(value.getAsDouble()))
        : value;
  }

  private static TableColumn<Repeatability> plain(
      String name, String meaning, Function<Repeatability, OptionalDouble> get) {
    return number(name, TableUnit.NONE, meaning, get);
  }
}
