package fairboil.reports.table;

import static fairboil.reports.table.TableColumn.number;
import static fairboil.reports.table.TableColumn.text;

import fairboil.analysis.compare.Comparison;
import fairboil.analysis.compare.RankComparison;
import fairboil.analysis.measure.Measure;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** {@code comparisons.csv}: builds, designs and conditions beside each other. */
final class ComparisonTable {

  /** A pair, compared by its means or else by rank. */
  record Pair(
      Measure measure,
      String level,
      String a,
      String b,
      Optional<Comparison> means,
      OptionalDouble pValue,
      String method) {

    static Pair of(Comparison means) {
      return new Pair(
          means.measure(),
          means.level(),
          means.a(),
          means.b(),
          Optional.of(means),
          OptionalDouble.of(means.pValue()),
          means.method().label());
    }

    static Pair of(RankComparison ranks) {
      return new Pair(
          ranks.measure(),
          ranks.level(),
          ranks.a(),
          ranks.b(),
          Optional.empty(),
          OptionalDouble.of(ranks.test().pValue()),
          "ranks, " + ranks.unit().label() + ", a run that did not boil counted as longest");
    }

    private OptionalDouble held(ToDoubleFunction<Comparison> get) {
      TableUnit unit = TableUnit.of(measure.dimension());
      return means
          .map(known -> OptionalDouble.of(unit.of(get.applyAsDouble(known))))
          .orElse(OptionalDouble.empty());
    }

    private OptionalDouble plain(ToDoubleFunction<Comparison> get) {
      return means
          .map(known -> OptionalDouble.of(get.applyAsDouble(known)))
          .orElse(OptionalDouble.empty());
    }
  }

  static final TableSchema<Pair> SCHEMA =
      new TableSchema<>(
          "comparisons.csv",
          "a comparison of two builds or groups in one measure",
          List.of(
              text("measure", "measure that is compared", pair -> pair.measure().label()),
              text("level", "what is compared: build, design or a column", Pair::level),
              text("a", "the one", Pair::a),
              text("b", "the other", Pair::b),
              difference(
                  "difference", "a less b, in °C, s, W, kg or a share", Comparison::difference),
              difference("std_error", "its standard error", Comparison::standardError),
              number(
                  "df",
                  TableUnit.NONE,
                  "its degrees of freedom",
                  pair -> pair.plain(Comparison::degreesOfFreedom)),
              difference(
                  "ci_low",
                  "lower end of its interval, which allows for all pairs of its kind",
                  means -> means.interval().low()),
              difference("ci_high", "upper end of its interval", means -> means.interval().high()),
              number(
                  "p_value",
                  TableUnit.NONE,
                  "two-sided p-value of this pair alone against no difference",
                  Pair::pValue),
              number(
                  "p_adjusted",
                  TableUnit.NONE,
                  "the same, allowing for how many were compared",
                  pair -> pair.plain(Comparison::adjustedPValue)),
              text("method", "how it was worked out", Pair::method),
              text(
                  "verdict",
                  "what the interval says: lower, higher or not settled",
                  ComparisonTable::verdict)));

  private ComparisonTable() {}

  static List<Pair> pairs(List<Comparison> means, List<RankComparison> ranks) {
    return Stream.concat(means.stream().map(Pair::of), ranks.stream().map(Pair::of)).toList();
  }

  private static String verdict(Pair pair) {
    return pair.means().map(means -> means.verdict().label()).orElse("");
  }

  private static TableColumn<Pair> difference(
      String name, String meaning, ToDoubleFunction<Comparison> get) {
    return number(name, TableUnit.NONE, meaning, pair -> pair.held(get));
  }
}
