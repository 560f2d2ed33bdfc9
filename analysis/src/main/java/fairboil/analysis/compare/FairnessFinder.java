package fairboil.analysis.compare;

import fairboil.analysis.compare.Fairness.Condition;
import fairboil.analysis.compare.Fairness.Group;
import fairboil.analysis.compare.Fairness.Inseparable;
import fairboil.analysis.compare.Fairness.Tied;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.group.RunColumn;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Finds under what conditions the things that are compared were burnt. */
public final class FairnessFinder {

  /** Conditions in words, as runs.csv calls them. */
  private static final List<Column<?>> KINDS =
      List.of(
          RunsSheet.WIND,
          RunsSheet.SCREEN,
          RunsSheet.POT,
          RunsSheet.LID,
          RunsSheet.FUEL,
          RunsSheet.FUEL_BATCH,
          RunsSheet.FEED,
          RunsSheet.STOVE_START,
          RunsSheet.TESTER,
          RunsSheet.SITE);

  /** More builds than this are not compared pair by pair. */
  private static final int FEW = 2;

  private final Study study;
  private final RunGroup runs;
  private final List<Group> groups = new ArrayList<>();
  private final List<Inseparable> inseparable = new ArrayList<>();
  private final List<Tied> tied = new ArrayList<>();

  private FairnessFinder(Study study, List<RunResult> runs) {
    this.study = study;
    this.runs = RunGroup.of(runs);
  }

  /** The conditions of builds, of designs and of what the setting {@code compare by} names. */
  public static Fairness of(Study study, List<RunResult> runs) {
    FairnessFinder finder = new FairnessFinder(study, runs);
    finder.level(Comparison.BUILD, run -> Optional.of(run.build().key().name()));
    finder.level(Comparison.DESIGN, run -> run.build().design());
    for (String name : study.settings().value(Settings.COMPARE_BY).orElse(List.<String>of())) {
      RunColumn.named(study, name)
          .filter(column -> !column.name().equals(Comparison.BUILD))
          .filter(column -> !column.name().equals(Comparison.DESIGN))
          .ifPresent(column -> finder.level(column.name(), column::text));
    }
    return new Fairness(finder.groups, finder.inseparable, finder.tied);
  }

  /** The conditions of all runs that count together. */
  public static Group everyRun(Study study, List<RunResult> runs) {
    FairnessFinder finder = new FairnessFinder(study, runs);
    return finder.group("study", study.name(), finder.runs);
  }

  private void level(String level, Function<RunResult, Optional<String>> name) {
    Map<String, List<RunResult>> byName = new LinkedHashMap<>();
    for (RunResult run : runs.runs()) {
      name.apply(run)
          .ifPresent(each -> byName.computeIfAbsent(each, key -> new ArrayList<>()).add(run));
    }
    List<Group> own = new ArrayList<>();
    byName.forEach((each, some) -> own.add(group(level, each, RunGroup.of(some))));
    groups.addAll(own);
    boolean compared = !level.equals(Comparison.BUILD) || own.size() <= FEW;
    if (compared) {
      apart(level, own);
    } else {
      tie(level, own);
    }
  }

  private Group group(String level, String name, RunGroup some) {
    List<Condition> conditions = new ArrayList<>();
    range("ambient", Dimension.TEMPERATURE, some, run -> run.conditions().ambient())
        .ifPresent(conditions::add);
    range("water", Dimension.MASS, some, run -> run.conditions().water())
        .ifPresent(conditions::add);
    numbers(RunsSheet.MOISTURE_WET_BASIS, Quantity::value, some).ifPresent(conditions::add);
    numbers(RunsSheet.BURN_NUMBER, Integer::doubleValue, some).ifPresent(conditions::add);
    days(some).ifPresent(conditions::add);
    for (Column<?> column : KINDS) {
      kinds(column, some).ifPresent(conditions::add);
    }
    return new Group(level, name, some.size(), some.boils(), conditions);
  }

  private static Optional<Condition> range(
      String name, Dimension dimension, RunGroup some, Function<RunResult, Figure> figure) {
    double[] known =
        some.runs().stream()
            .map(figure)
            .filter(Figure::isKnown)
            .mapToDouble(Figure::orNaN)
            .toArray();
    return range(name, dimension, known);
  }

  private static <T> Optional<Condition> numbers(
      Column<T> column, ToDoubleFunction<T> number, RunGroup some) {
    double[] known =
        some.runs().stream()
            .flatMap(run -> run.run().row().cell(column).stream())
            .mapToDouble(given -> number.applyAsDouble(given.value()))
            .toArray();
    return range(column.name(), Dimension.RATIO, known);
  }

  private static Optional<Condition> range(String name, Dimension dimension, double[] known) {
    return known.length == 0
        ? Optional.empty()
        : Optional.of(
            new Condition.Range(
                name,
                known.length,
                dimension,
                Arrays.stream(known).min().orElseThrow(),
                Arrays.stream(known).max().orElseThrow()));
  }

  private static Optional<Condition> days(RunGroup some) {
    List<LocalDate> known =
        some.runs().stream()
            .flatMap(run -> run.run().row().value(RunsSheet.DATE).stream())
            .sorted()
            .toList();
    return known.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Condition.Days(
                RunsSheet.DATE.name(), known.size(), known.get(0), known.get(known.size() - 1)));
  }

  private Optional<Condition> kinds(Column<?> column, RunGroup some) {
    RunColumn read = RunColumn.named(study, column.name()).orElseThrow();
    List<String> known = some.runs().stream().flatMap(run -> read.text(run).stream()).toList();
    return known.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Condition.Kinds(
                column.name(), known.size(), known.stream().distinct().sorted().toList()));
  }

  /** Conditions in which no two groups have anything in common. */
  private void tie(String level, List<Group> own) {
    List<String> columns =
        new ArrayList<>(own.get(0).conditions().stream().map(Condition::column).toList());
    for (int i = 0; i < own.size(); i++) {
      for (int j = i + 1; j < own.size() && !columns.isEmpty(); j++) {
        columns.retainAll(
            apart(level, own.get(i), own.get(j)).map(pair -> pair.ofA().column()).toList());
      }
    }
    columns.forEach(column -> tied.add(new Tied(level, column)));
  }

  private void apart(String level, List<Group> own) {
    for (int i = 0; i < own.size(); i++) {
      for (int j = i + 1; j < own.size(); j++) {
        apart(level, own.get(i), own.get(j)).forEach(inseparable::add);
      }
    }
  }

  /** Conditions known of every run of both that have no value in common. */
  private static Stream<Inseparable> apart(String level, Group a, Group b) {
    return a.conditions().stream()
        .filter(ofA -> !ofA.column().equals(level))
        .filter(ofA -> ofA.known() == a.runs())
        .flatMap(
            ofA ->
                b.conditions().stream()
                    .filter(ofB -> ofB.column().equals(ofA.column()))
                    .filter(ofB -> ofB.known() == b.runs())
                    .filter(ofA::isApartFrom)
                    .map(ofB -> new Inseparable(level, a.name(), b.name(), ofA, ofB)));
  }
}
