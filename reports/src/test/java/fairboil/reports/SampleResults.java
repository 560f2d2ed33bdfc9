package fairboil.reports;

import fairboil.analysis.Results;
import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.claim.ClaimResult.Estimate;
import fairboil.analysis.claim.ClaimResult.Verdict;
import fairboil.analysis.compare.Comparisons;
import fairboil.analysis.compare.FairnessFinder;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.group.Summary;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.precision.Repeatabilities;
import fairboil.analysis.run.References;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.BuildsSheet;
import fairboil.ingest.sheet.Claim;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.SampleRun.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Results to try reports on, made without a study folder: an invented scenario with formulas of its
 * own, from a fixed seed. Nothing here was measured.
 */
public final class SampleResults {

  private static final String STUDY = "sample";
  private static final double CONFIDENCE = 0.95;

  private final List<Build> builds;
  private final int runsPerBuild;
  private final DisplayUnits units;
  private final Random random = new Random(20_250_101);

  private SampleResults(List<Build> builds, int runsPerBuild, DisplayUnits units) {
    this.builds = builds;
    this.runsPerBuild = runsPerBuild;
    this.units = units;
  }

  /**
   * 10 builds of 2 designs with 4 runs each, one of them with 3: one left out, one that went out.
   */
  public static Results typical(DisplayUnits units) {
    List<Build> builds =
        Stream.concat(
                Stream.of("T1", "T2", "T3", "T4", "T5").map(name -> build(name, "two-wall")),
                Stream.of("S1", "S2", "S3", "S4", "S5").map(name -> build(name, "one-wall")))
            .toList();
    return new SampleResults(builds, 4, units).results();
  }

  /** As many builds and runs as asked for, to try how much a report bears. */
  public static Results of(int builds, int runsPerBuild) {
    List<Build> many = new ArrayList<>();
    for (int i = 1; i <= builds; i++) {
      many.add(build("B" + i, "design " + (i % 3 + 1)));
    }
    return new SampleResults(many, runsPerBuild, DisplayUnits.METRIC).results();
  }

  /** 2 builds: no line through 2 points can be tested. */
  public static Results twoBuilds() {
    return of(2, 3);
  }

  /** Builds of the given names, all of the given design, with 2 runs each. */
  public static Results named(String design, String... names) {
    return new SampleResults(
            Arrays.stream(names).map(name -> build(name, design)).toList(), 2, DisplayUnits.METRIC)
        .results();
  }

  /** A study in which nothing was found. */
  public static Results empty() {
    return new SampleResults(List.of(), 0, DisplayUnits.METRIC).results();
  }

  private static Build build(String name, String design) {
    Row row =
        Row.at(Place.of("builds.csv", 2))
            .put(BuildsSheet.BUILD, name)
            .put(BuildsSheet.DESIGN, design)
            .build();
    return new Build(new Key(STUDY, name), row);
  }

  private Results results() {
    List<RingResult> rings = new ArrayList<>();
    List<RunResult> runs = new ArrayList<>();
    for (int i = 0; i < builds.size(); i++) {
      addBuild(i, rings, runs);
    }
    List<ClaimResult> claims = claims();
    List<Finding> findings =
        Stream.concat(
                Stream.of(
                    Finding.error(
                        Place.of("holes.csv", 41, "along"),
                        "412 mm lies beyond the wrap of 330 mm",
                        "measure hole 7 of S2 again"),
                    Finding.note(Place.of("runs.csv", 1), "unknown column mood", "")),
                runs.stream().flatMap(run -> run.findings().stream()))
            .sorted()
            .toList();
    Study study = study(runs, claims, findings);
    Comparisons.Outcome compared = Comparisons.of(study, runs, CONFIDENCE);
    return new Results(
        study,
        new References(0.8, 20, 20, 99.97, 0, NormaliseBy.ENERGY_SCALING),
        CONFIDENCE,
        runs,
        builds.stream().map(build -> together(build, runs)).toList(),
        rings,
        SampleEffects.of(runs, rings),
        List.of(),
        compared.differences(),
        compared.ranks(),
        FairnessFinder.of(study, runs),
        Repeatabilities.of(runs, CONFIDENCE).scatter(),
        builds.isEmpty() ? List.of() : claims,
        builds.isEmpty() ? List.of() : findings);
  }

  private void addBuild(int index, List<RingResult> rings, List<RunResult> runs) {
    Build build = builds.get(index);
    double sigma = (0.25 + 0.17 * index * 7 % 1.6) / 1000;
    RingResult upper = SampleRings.upper(build.key(), sigma, random);
    rings.add(upper);
    rings.add(SampleRings.lower(build.key(), sigma * 0.7, random));
    if (index != 3) {
      rings.add(SampleRings.base(build.key(), 0.0006, random));
    }
    double better = build.design().filter("two-wall"::equals).isPresent() ? 1 : 0;
    double rms = upper.rms().orNaN();
    double peak = 748 + 12 * better - 26_000 * rms + 5 * random.nextGaussian();
    double boil = 470 - 45 * better + 22_000 * rms + 7 * random.nextGaussian();
    int count = builds.size() == 10 && index == 6 ? runsPerBuild - 1 : runsPerBuild;
    for (int run = 1; run <= count; run++) {
      runs.add(
          new SampleRun(
                  build,
                  build.key().name() + "-" + run,
                  runs.size() + 2,
                  kind(index, run),
                  peak + 8 * random.nextGaussian(),
                  boil + 13 * random.nextGaussian(),
                  random)
              .result());
    }
  }

  private Kind kind(int build, int run) {
    if (builds.size() < 10) {
      return Kind.ORDINARY;
    }
    return switch (10 * build + run) {
      case 2 -> Kind.EXCLUDED;
      case 23 -> Kind.STOPWATCH_ONLY;
      case 51 -> Kind.TOO_WEAK;
      case 84 -> Kind.WENT_OUT;
      default -> Kind.ORDINARY;
    };
  }

  private BuildResult together(Build build, List<RunResult> runs) {
    List<RunResult> included =
        runs.stream()
            .filter(run -> run.build().key().equals(build.key()))
            .filter(run -> run.inclusion().included())
            .toList();
    RunGroup group = RunGroup.of(included);
    Map<Measure, Summary> summaries = new EnumMap<>(Measure.class);
    for (Measure measure : Measure.values()) {
      double[] values =
          included.stream()
              .flatMap(run -> measure.counted(run).stream())
              .mapToDouble(known -> known.measured().value())
              .toArray();
      if (values.length > 0 && !group.hidesFailures(measure)) {
        summaries.put(measure, summary(values));
      }
    }
    return new BuildResult(build, included.size(), group.boils(), summaries);
  }

  private static Summary summary(double[] values) {
    int n = values.length;
    double mean = Arrays.stream(values).average().orElseThrow();
    if (n == 1) {
      return new Summary(1, mean, OptionalDouble.empty(), Optional.empty());
    }
    double squares = Arrays.stream(values).map(value -> (value - mean) * (value - mean)).sum();
    double sd = Math.sqrt(squares / (n - 1));
    double t = TDistribution.of(n - 1).inverseCumulativeProbability((1 + CONFIDENCE) / 2);
    return new Summary(
        n, mean, OptionalDouble.of(sd), Optional.of(Interval.around(mean, t * sd / Math.sqrt(n))));
  }

  private Study study(List<RunResult> runs, List<ClaimResult> claims, List<Finding> findings) {
    Row settings =
        Row.at(Place.of("study.csv"))
            .put(Settings.TITLE, "How true must the holes be?")
            .put(Settings.QUESTION, "Does hole position matter for flame temperature?")
            .put(Settings.HOLE_RING, "upper")
            .put(Settings.SHOW_UNITS, units)
            .build();
    return new Study(
        STUDY,
        settings,
        builds,
        List.of(),
        List.of(),
        List.of(),
        runs.stream().map(RunResult::run).toList(),
        List.of(),
        List.of(),
        claims.stream().map(ClaimResult::claim).toList(),
        List.of(),
        List.of(
            new SourceFile("runs.csv", 4_120, "01".repeat(32)),
            new SourceFile("holes.csv", 9_877, "9f".repeat(32))),
        findings);
  }

  private static List<ClaimResult> claims() {
    return List.of(
        claim("C1", "A two-wall stove peaks above 700 °C.", Verdict.SUPPORTED, 738, 6),
        claim("C2", "A one-wall stove peaks above 760 °C.", Verdict.CONTRADICTED, 722, 9),
        claim("C3", "A one-wall stove peaks above 720 °C.", Verdict.NOT_SETTLED, 722, 9),
        new ClaimResult(
            claim("C4", "It gives off no carbon monoxide.", Relation.AT_MOST, "carbon monoxide", 0),
            Optional.empty(),
            Verdict.NOT_TESTABLE,
            Optional.of(Template.of("nothing in these data measures carbon monoxide").with()),
            Optional.empty(),
            Optional.empty(),
            CONFIDENCE,
            0,
            0));
  }

  private static ClaimResult claim(
      String name, String text, Verdict verdict, double estimate, double half) {
    double value = verdict == Verdict.CONTRADICTED ? 760 : estimate - 2 * half;
    return new ClaimResult(
        claim(name, text, Relation.AT_LEAST, Measure.NORMALISED_PEAK.label(), value),
        Optional.of(Measure.NORMALISED_PEAK),
        verdict,
        Optional.empty(),
        Optional.of(new Estimate(estimate, Interval.around(estimate, half))),
        Optional.of(new Interval(value, Double.POSITIVE_INFINITY)),
        0.9875,
        19,
        5);
  }

  private static Claim claim(
      String name, String text, Relation relation, String measure, double value) {
    Row row =
        Row.at(Place.of("claims.csv", 2))
            .put(ClaimsSheet.CLAIM, name)
            .put(ClaimsSheet.TEXT, text)
            .put(ClaimsSheet.MEASURE, measure)
            .put(ClaimsSheet.RELATION, relation)
            .put(ClaimsSheet.VALUE, new Amount(value, 1, Optional.of(Unit.CELSIUS)))
            .build();
    return new Claim(new Key(STUDY, name), row);
  }
}
