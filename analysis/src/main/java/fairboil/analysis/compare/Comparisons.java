package fairboil.analysis.compare;

import fairboil.analysis.compare.Comparison.Method;
import fairboil.analysis.compare.RankComparison.Unit;
import fairboil.analysis.fault.Fault;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.group.RunColumn;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.StudentizedRange;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Selection;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Compares builds, designs, and what the setting {@code compare by} names. */
public final class Comparisons {

  /** The measures that are compared. */
  private static final List<Measure> COMPARED =
      List.of(
          Measure.NORMALISED_BOIL_TIME,
          Measure.BOIL_TIME,
          Measure.NORMALISED_PEAK,
          Measure.STEADY_FLAME,
          Measure.NET_POWER,
          Measure.EFFICIENCY,
          Measure.FUEL_PER_BOIL);

  /** More builds than this make more pairs than anyone reads. */
  private static final int MOST_BUILDS = 30;

  /** Up to so many builds are also compared without pooling their scatter. */
  private static final int MOST_CHECKED = 12;

  private static final Template COMPARISON = Template.of("the comparison by {name} of {word}");
  private static final Template TOO_MANY_PAIRS =
      Template.of("{count|build} would make more pairs than anyone reads");
  private static final Template DESIGNS_ARE_COMPARED =
      Template.of("you need do nothing: designs are compared, builds pair by pair are not");

  private final Study study;
  private final RunGroup runs;
  private final double confidence;

  /** The builds and designs that a claim compares others with. */
  private final Set<String> references;

  private final Map<Integer, StudentizedRange> ranges = new HashMap<>();
  private final List<Comparison> differences = new ArrayList<>();
  private final List<RankComparison> ranks = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final Faults faults = new Faults();

  private Comparisons(Study study, List<RunResult> runs, double confidence) {
    this.study = study;
    this.runs = RunGroup.of(runs);
    this.confidence = confidence;
    this.references =
        study.claims().stream()
            .flatMap(claim -> claim.row().value(ClaimsSheet.AGAINST).stream())
            .flatMap(
                against ->
                    against instanceof Selection.Named named
                        ? Stream.of(named.name())
                        : Stream.empty())
            .collect(Collectors.toUnmodifiableSet());
  }

  /**
   * Comparisons and findings.
   *
   * @param differences by measure, then level, then pair; unmodifiable
   * @param ranks pairs of which some runs did not boil; unmodifiable
   * @param findings what a reader should know; unmodifiable
   * @param faults comparisons at which the program failed; unmodifiable
   */
  public record Outcome(
      List<Comparison> differences,
      List<RankComparison> ranks,
      List<Finding> findings,
      List<Fault> faults) {

    /** Of a study whose comparisons are lost, as their own fault tells. */
    public static final Outcome NONE = new Outcome(List.of(), List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Outcome {
      differences = List.copyOf(differences);
      ranks = List.copyOf(ranks);
      findings = List.copyOf(findings);
      faults = List.copyOf(faults);
    }
  }

  /**
   * Compares whatever a study has of several.
   *
   * @param study the sheets
   * @param runs the results of all runs
   * @param confidence of the intervals of each family of pairs together, between 0 and 1
   */
  public static Outcome of(Study study, List<RunResult> runs, double confidence) {
    Comparisons comparisons = new Comparisons(study, runs, confidence);
    List<RunColumn> columns = comparisons.columns();
    for (Measure measure : COMPARED) {
      comparisons.contain(measure, Comparison.BUILD, () -> comparisons.builds(measure));
      comparisons.contain(measure, Comparison.DESIGN, () -> comparisons.designs(measure));
      columns.forEach(
          column ->
              comparisons.contain(
                  measure, column.name(), () -> comparisons.column(measure, column)));
    }
    return new Outcome(
        comparisons.differences, comparisons.ranks, comparisons.findings, comparisons.faults.all());
  }

  /** Half a comparison is none. */
  private void contain(Measure measure, String level, Runnable work) {
    int differencesBefore = differences.size();
    int ranksBefore = ranks.size();
    Place place = Place.of(RunsSheet.SCHEMA.file());
    Message part = COMPARISON.with(Argument.name(level), Argument.word(measure.label()));
    if (!faults.isDone(part, place, work)) {
      differences.subList(differencesBefore, differences.size()).clear();
      ranks.subList(ranksBefore, ranks.size()).clear();
    }
  }

  private List<RunColumn> columns() {
    List<RunColumn> columns = new ArrayList<>();
    for (String name : study.settings().value(Settings.COMPARE_BY).orElse(List.<String>of())) {
      boolean already =
          name.equalsIgnoreCase(Comparison.BUILD) || name.equalsIgnoreCase(Comparison.DESIGN);
      // that a name is no column has been said when the sheets were read
      RunColumn.named(study, name).filter(column -> !already).ifPresent(columns::add);
    }
    return columns;
  }

  private StudentizedRange range(int means) {
    return ranges.computeIfAbsent(means, StudentizedRange::new);
  }

  private void builds(Measure measure) {
    Map<String, RunGroup> groups = new LinkedHashMap<>();
    runs.byBuild().forEach((build, own) -> groups.put(build.name(), own));
    if (groups.size() > MOST_BUILDS) {
      findings.add(
          Finding.note(
              Place.of(study.runs().get(0).row().place().file()),
              TOO_MANY_PAIRS.with(Argument.count(groups.size())),
              DESIGNS_ARE_COMPARED.with()));
      return;
    }
    ranks.addAll(new Ranks(measure, Comparison.BUILD, Unit.RUNS).pairs(groups));
    List<Sample> samples = new ArrayList<>();
    groups.forEach((build, own) -> sample(build, own.values(measure), samples));
    if (samples.size() > 1) {
      Pairs pairs = new Pairs(measure, Comparison.BUILD, range(samples.size()), confidence);
      differences.addAll(pairs.pooled(samples, Method.TUKEY_KRAMER));
      if (samples.size() <= MOST_CHECKED) {
        differences.addAll(pairs.unpooled(samples, Method.GAMES_HOWELL));
      }
      differences.addAll(againstReferences(pairs, samples));
    }
  }

  /** With only two there is nothing to allow for beyond the pair itself. */
  private List<Comparison> againstReferences(Pairs pairs, List<Sample> samples) {
    return samples.size() < 3
        ? List.of()
        : samples.stream()
            .filter(sample -> references.contains(sample.name()))
            .flatMap(
                reference ->
                    pairs
                        .against(
                            reference,
                            samples.stream().filter(it -> !it.equals(reference)).toList())
                        .stream())
            .toList();
  }

  private static void sample(String name, double[] units, List<Sample> samples) {
    if (units.length > 0) {
      samples.add(Sample.of(name, units));
    }
  }

  private void designs(Measure measure) {
    Map<String, List<RunResult>> byDesign = new LinkedHashMap<>();
    for (RunResult run : runs.runs()) {
      run.build()
          .design()
          .ifPresent(design -> byDesign.computeIfAbsent(design, key -> new ArrayList<>()).add(run));
    }
    Map<String, RunGroup> groups = new LinkedHashMap<>();
    byDesign.forEach((design, own) -> groups.put(design, RunGroup.of(own)));
    ranks.addAll(new Ranks(measure, Comparison.DESIGN, Unit.BUILDS).pairs(groups));
    compareBuildMeans(measure, Comparison.DESIGN, groups);
  }

  private void compareBuildMeans(Measure measure, String level, Map<String, RunGroup> groups) {
    List<Sample> samples = new ArrayList<>();
    groups.forEach((name, own) -> sample(name, buildMeans(own, measure), samples));
    if (samples.size() > 1) {
      Pairs pairs = new Pairs(measure, level, range(samples.size()), confidence);
      differences.addAll(pairs.pooled(samples, Method.POOLED_BUILD_MEANS));
      differences.addAll(pairs.unpooled(samples, Method.WELCH_BUILD_MEANS));
      if (level.equals(Comparison.DESIGN)) {
        differences.addAll(againstReferences(pairs, samples));
      }
    }
  }

  /** The mean of each build; none where a mean would hide failures. */
  private static double[] buildMeans(RunGroup runs, Measure measure) {
    return runs.hidesFailures(measure)
        ? new double[0]
        : runs.byBuild().values().stream()
            .map(own -> own.values(measure))
            .filter(values -> values.length > 0)
            .mapToDouble(values -> Arrays.stream(values).average().orElseThrow())
            .toArray();
  }

  private void column(Measure measure, RunColumn column) {
    Map<String, RunGroup> groups = new LinkedHashMap<>();
    runs.runs().stream()
        .flatMap(run -> column.text(run).stream())
        .distinct()
        .forEach(
            text ->
                groups.put(
                    text, runs.where(run -> column.text(run).filter(text::equals).isPresent())));
    WithinBuilds within = new WithinBuilds(measure, column.name(), groups, confidence);
    Unit unit = Ranks.anyBuildHasTwo(groups) ? Unit.WITHIN_BUILDS : Unit.BUILDS;
    ranks.addAll(new Ranks(measure, column.name(), unit).pairs(groups));
    if (within.isPossible()) {
      differences.addAll(within.pairs());
    } else {
      compareBuildMeans(measure, column.name(), groups);
    }
  }
}
