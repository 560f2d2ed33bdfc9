package fairboil.reports.table;

import static fairboil.reports.table.TableColumn.count;
import static fairboil.reports.table.TableColumn.number;
import static fairboil.reports.table.TableColumn.text;

import fairboil.analysis.effect.BuildPoint;
import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.HoleEffect;
import fairboil.ingest.dimension.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;

/** {@code hole_effect.csv}: how responses change with hole error, model by model. */
final class EffectTable {

  /** A term of a model; without one, an effect of which nothing could be estimated. */
  record Term(HoleEffect effect, Optional<EffectRow> row) {

    boolean isHeadline() {
      return row.filter(effect::isHeadline).isPresent();
    }

    String name() {
      return row.map(EffectRow::term).orElse(EffectRow.HOLE_ERROR);
    }

    /** A held estimate, or its standard error, in the unit of the table. */
    double inTable(double held) {
      Dimension response = effect.response().dimension();
      return switch (name()) {
        case EffectRow.HOLE_ERROR -> TableUnit.of(response.perLength()).of(held);
        case EffectRow.INTERCEPT -> TableUnit.of(response).of(held);
        default -> held;
      };
    }
  }

  static final TableSchema<Term> SCHEMA =
      new TableSchema<>(
          "hole_effect.csv",
          "a term of a model of a response",
          List.of(
              text("response", "measure that responds", t -> t.effect().response().label()),
              text("ring", "ring whose RMS hole error it is about", t -> t.effect().ring()),
              text("model", "how it was estimated", EffectTable::model),
              text("term", "hole error, intercept or a covariate", Term::name),
              estimate(
                  "estimate",
                  "°C or s per mm of hole error; the intercept in °C or s; a covariate per unit of"
                      + " its column",
                  EffectRow::estimate),
              estimate("std_error", "its standard error", EffectRow::standardError),
              value("df", "degrees of freedom of its interval", EffectRow::degreesOfFreedom),
              estimate("ci_low", "lower end of its interval", row -> row.interval().low()),
              estimate("ci_high", "upper end of its interval", row -> row.interval().high()),
              number(
                  "p_value",
                  TableUnit.NONE,
                  "two-sided p-value against no effect",
                  t -> t.row().map(EffectRow::pValue).orElse(OptionalDouble.empty())),
              whole("runs", "runs that it stands on", EffectRow::runs, EffectTable::burns),
              whole(
                  "builds",
                  "builds that it stands on",
                  EffectRow::builds,
                  effect -> effect.points().size()),
              text(
                  "headline",
                  "whether the answer stands on this row: yes or no",
                  t -> t.isHeadline() ? "yes" : "no"),
              text("verdict", "what the headline's interval says", EffectTable::verdict)));

  private EffectTable() {}

  static List<Term> terms(List<HoleEffect> effects) {
    return effects.stream().flatMap(EffectTable::terms).toList();
  }

  private static Stream<Term> terms(HoleEffect effect) {
    return effect.rows().isEmpty()
        ? Stream.of(new Term(effect, Optional.empty()))
        : effect.rows().stream().map(row -> new Term(effect, Optional.of(row)));
  }

  private static String model(Term term) {
    return term.row().map(row -> row.model().label()).orElse("");
  }

  private static String verdict(Term term) {
    return term.isHeadline() || term.row().isEmpty() ? term.effect().verdict().label() : "";
  }

  private static long burns(HoleEffect effect) {
    return effect.points().stream().map(BuildPoint::burns).mapToLong(burns -> burns.length).sum();
  }

  private static TableColumn<Term> estimate(
      String name, String meaning, ToDoubleFunction<EffectRow> get) {
    return number(
        name,
        TableUnit.NONE,
        meaning,
        term -> known(term.row(), row -> term.inTable(get.applyAsDouble(row))));
  }

  private static TableColumn<Term> value(
      String name, String meaning, ToDoubleFunction<EffectRow> get) {
    return number(name, TableUnit.NONE, meaning, term -> known(term.row(), get::applyAsDouble));
  }

  private static TableColumn<Term> whole(
      String name,
      String meaning,
      ToLongFunction<EffectRow> get,
      ToLongFunction<HoleEffect> otherwise) {
    return count(
        name,
        meaning,
        term ->
            OptionalLong.of(
                term.row()
                    .map(get::applyAsLong)
                    .orElseGet(() -> otherwise.applyAsLong(term.effect()))));
  }

  private static OptionalDouble known(Optional<EffectRow> row, Function<EffectRow, Double> get) {
    return row.map(get).map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
