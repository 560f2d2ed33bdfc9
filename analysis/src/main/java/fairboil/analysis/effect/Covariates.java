package fairboil.analysis.effect;

import fairboil.analysis.group.RunColumn;
import fairboil.analysis.model.LinearFit;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.BuildsSheet;
import fairboil.ingest.sheet.Settings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * What a hole effect allows for: design, where there are several, and the numbers that the setting
 * {@code covariates} names, by the mean of each build. Ambient is not among them: it has a row of
 * its own, from differences within builds.
 *
 * @param study the sheets
 * @param columns the columns named
 */
record Covariates(Study study, List<RunColumn> columns) {

  /** The columns that the setting names; that a name is none was said when it was read. */
  static Covariates of(Study study) {
    List<RunColumn> columns = new ArrayList<>();
    for (String name : study.settings().value(Settings.COVARIATES).orElse(List.<String>of())) {
      RunColumn.named(study, name)
          .filter(column -> !column.name().equals(EffectRow.AMBIENT))
          .filter(column -> !column.name().equals(BuildsSheet.DESIGN.name()))
          .ifPresent(columns::add);
    }
    return new Covariates(study, columns);
  }

  /** The values of each column in some runs; columns that are not known of all are left out. */
  Map<String, double[]> values(List<RunResult> runs) {
    Map<String, double[]> values = new LinkedHashMap<>();
    for (RunColumn column : columns) {
      List<Double> known = new ArrayList<>();
      runs.forEach(run -> column.cell(run).ifPresent(cell -> number(cell).ifPresent(known::add)));
      if (known.size() == runs.size()) {
        values.put(column.name(), known.stream().mapToDouble(each -> each).toArray());
      }
    }
    return values;
  }

  private static OptionalDouble numberOf(Given<?> given) {
    if (given.value() instanceof Quantity quantity) {
      return OptionalDouble.of(quantity.value());
    }
    if (given.value() instanceof Integer whole) {
      return OptionalDouble.of(whole);
    }
    if (given.value() instanceof LocalDate day) {
      return OptionalDouble.of((double) day.toEpochDay());
    }
    try {
      double number = Double.parseDouble(given.written().strip().replace(',', '.'));
      return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
    } catch (NumberFormatException notANumber) {
      return OptionalDouble.empty();
    }
  }

  private static Optional<Double> number(RunColumn.Cell cell) {
    OptionalDouble number = numberOf(cell.given());
    return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
  }

  /**
   * The builds with their designs, and with those covariates that they all have, as far as they can
   * be told apart.
   */
  List<Burns> usable(List<Burns> builds, Consumer<Finding> findings) {
    List<Burns> kept = byDesign(builds, findings);
    for (RunColumn column : columns) {
      boolean known = builds.stream().allMatch(b -> b.covariates().containsKey(column.name()));
      List<Burns> more = known ? with(kept, builds, column.name()) : kept;
      if (known && canBeTold(more)) {
        kept = more;
      } else if (builds.size() > 2) {
        findings.accept(notAllowedFor(column.name(), known));
      }
    }
    return kept;
  }

  /** The builds with a term for each design but the first. */
  private List<Burns> byDesign(List<Burns> builds, Consumer<Finding> findings) {
    List<String> designs = builds.stream().map(Covariates::design).distinct().toList();
    List<Burns> plain = builds.stream().map(build -> build.allowingFor(Map.of())).toList();
    List<Burns> kept = plain;
    for (String design : designs.subList(Math.min(1, designs.size()), designs.size())) {
      kept =
          kept.stream()
              .map(b -> b.and(EffectRow.DESIGN + design, design(b).equals(design) ? 1 : 0))
              .toList();
    }
    if (designs.size() < 2 || canBeTold(kept)) {
      return kept;
    }
    if (builds.size() > 2) {
      findings.accept(designNotAllowedFor(designs.size()));
    }
    return plain;
  }

  private static String design(Burns build) {
    return build.point().design().orElse("not told");
  }

  static boolean canBeTold(List<Burns> builds) {
    return builds.size() > 2
        && LinearFit.of(Line.regressors(builds), new double[builds.size()]).isPresent();
  }

  private Finding designNotAllowedFor(int designs) {
    return Finding.warning(
        Place.of(study.builds().get(0).row().place().file()),
        EffectSays.DESIGN_NOT_ALLOWED_FOR.with(Argument.count(designs)),
        EffectSays.BUILD_MORE_OF_EACH.with());
  }

  private Finding notAllowedFor(String name, boolean known) {
    return Finding.warning(
        study.settings().place(Settings.COVARIATES),
        (known ? EffectSays.CANNOT_BE_TOLD_APART : EffectSays.NOT_A_NUMBER)
            .with(Argument.name(name)),
        known
            ? EffectSays.LEAVE_OUT.with(
                Argument.word(Settings.COVARIATES.name()), Argument.sheet(Settings.SCHEMA.file()))
            : EffectSays.FILL_IN.with());
  }

  private static List<Burns> with(List<Burns> builds, List<Burns> known, String name) {
    List<Burns> more = new ArrayList<>();
    for (int i = 0; i < builds.size(); i++) {
      Map<String, double[]> own = new LinkedHashMap<>(builds.get(i).covariates());
      own.put(name, known.get(i).covariates().get(name));
      more.add(builds.get(i).allowingFor(own));
    }
    return more;
  }
}
