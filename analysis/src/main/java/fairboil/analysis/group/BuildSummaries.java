package fairboil.analysis.group;

import fairboil.analysis.fault.Faults;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Build;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.statistics.interval.BinomialConfidenceInterval;
import org.jspecify.annotations.Nullable;

/** Summarises the runs of each build. */
public final class BuildSummaries {

  private static final Template MEAN = Template.of("the mean {word} of build {name}");

  private BuildSummaries() {}

  /**
   * One result a build, in the order given.
   *
   * @param builds the builds
   * @param runs all runs
   * @param confidence of the intervals, between 0 and 1
   * @param faults takes means at which the program failed
   */
  public static List<BuildResult> of(
      List<Build> builds, List<RunResult> runs, double confidence, Faults faults) {
    Map<?, RunGroup> groups = RunGroup.of(runs).byBuild();
    return builds.stream()
        .map(build -> result(build, groups.get(build.key()), confidence, faults))
        .toList();
  }

  private static BuildResult result(
      Build build, @Nullable RunGroup runs, double confidence, Faults faults) {
    if (runs == null) {
      return new BuildResult(build, 0, BoilCount.NONE, Map.of());
    }
    Map<Measure, Summary> summaries = new EnumMap<>(Measure.class);
    for (Measure measure : Measure.values()) {
      Message part = MEAN.with(Argument.word(measure.label()), Argument.name(build.key().name()));
      faults
          .contain(part, build.row().place(), () -> mean(runs.values(measure), confidence))
          .flatMap(mean -> mean)
          .ifPresent(mean -> summaries.put(measure, mean));
    }
    BoilCount boils = runs.boils();
    if (boils.judged() > 0) {
      summaries.put(Measure.SHARE_THAT_BOILED, share(boils.boiled(), boils.judged(), confidence));
    }
    return new BuildResult(build, runs.size(), boils, summaries);
  }

  private static Optional<Summary> mean(double[] values, double confidence) {
    return values.length == 0 ? Optional.empty() : Optional.of(Summary.of(values, confidence));
  }

  /**
   * A share of judged runs with its exact interval (Clopper and Pearson, Biometrika 26, 1934).
   *
   * @param boiled how many, from 0 to {@code runs}
   * @param runs of how many judged, at least 1
   */
  public static Summary share(int boiled, int runs, double confidence) {
    var exact =
        BinomialConfidenceInterval.CLOPPER_PEARSON.fromErrorRate(runs, boiled, 1 - confidence);
    return new Summary(
        runs,
        (double) boiled / runs,
        OptionalDouble.empty(),
        Optional.of(new Interval(exact.getLowerBound(), exact.getUpperBound())));
  }
}
