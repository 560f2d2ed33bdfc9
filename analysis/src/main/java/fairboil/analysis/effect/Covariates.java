package fairboil.analysis.effect;

import fairboil.analysis.group.RunColumn;
import fairboil.analysis.model.LinearFit;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
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
 * The numbers that the setting {@code covariates} asks to be allowed for, by the mean of each
 * build. Ambient is not among them: it has a row of its own, from differences within builds.
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
          .ifPresent(columns::add);
    }
    return new Covariates(study, columns);
  }

  /** The mean of each column over some runs; columns that are not known of all are left out. */
  Map<String, Double> means(List<RunResult> runs) {
    Map<String, Double> means = new LinkedHashMap<>();
    for (RunColumn column : columns) {
      List<Double> known = new ArrayList<>();
      runs.forEach(run -> column.cell(run).ifPresent(cell -> number(cell).ifPresent(known::add)));
      if (known.size() == runs.size()) {
        means.put(column.name(), known.stream().mapToDouble(each -> each).average().orElseThrow());
      }
    }
    return means;
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

  /** The builds with only those covariates that they all have and that can be told apart. */
  List<Burns> usable(List<Burns> builds, Consumer<Finding> findings) {
    List<String> kept = new ArrayList<>();
    for (RunColumn column : columns) {
      kept.add(column.name());
      boolean known = builds.stream().allMatch(b -> b.covariates().containsKey(column.name()));
      if (!known || !canBeTold(with(builds, kept))) {
        kept.remove(column.name());
        if (builds.size() > 2) {
          findings.accept(notAllowedFor(column.name(), known));
        }
      }
    }
    return with(builds, kept);
  }

  private static boolean canBeTold(List<Burns> builds) {
    return builds.size() > 2
        && LinearFit.of(Line.regressors(builds), new double[builds.size()]).isPresent();
  }

  private Finding notAllowedFor(String name, boolean known) {
    return Finding.warning(
        study.settings().place(Settings.COVARIATES),
        known
            ? name
                + " could not be allowed for: it does not differ, goes exactly with something else,"
                + " or there are too few builds"
            : name + " could not be allowed for: it is not a number in every run",
        known ? "leave it out of covariates, or test more builds" : "fill in the column");
  }

  private static List<Burns> with(List<Burns> builds, List<String> kept) {
    List<Burns> some = new ArrayList<>();
    for (Burns build : builds) {
      Map<String, Double> own = new LinkedHashMap<>();
      kept.forEach(name -> own.put(name, build.covariates().get(name)));
      some.add(new Burns(build.point(), build.ambients(), own));
    }
    return some;
  }
}
