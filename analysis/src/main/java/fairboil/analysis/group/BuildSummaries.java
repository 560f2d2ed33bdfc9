package fairboil.analysis.group;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
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

  private BuildSummaries() {}

  /**
   * One result a build, in the order given.
   *
   * @param builds the builds
   * @param runs all runs
   * @param confidence of the intervals, between 0 and 1
   */
  public static List<BuildResult> of(List<Build> builds, List<RunResult> runs, double confidence) {
    Map<?, RunGroup> groups = RunGroup.of(runs).byBuild();
    return builds.stream()
        .map(build -> result(build, groups.get(build.key()), confidence))
        .toList();
  }

  private static BuildResult result(Build build, @Nullable RunGroup runs, double confidence) {
    if (runs == null) {
      return new BuildResult(build, 0, 0, Map.of());
    }
    Map<Measure, Summary> summaries = new EnumMap<>(Measure.class);
    for (Measure measure : Measure.values()) {
      double[] values = runs.values(measure);
      if (values.length > 0) {
        summaries.put(measure, Summary.of(values, confidence));
      }
    }
    summaries.put(Measure.SHARE_THAT_BOILED, share(runs.boiled(), runs.size(), confidence));
    return new BuildResult(build, runs.size(), runs.boiled(), summaries);
  }

  /**
   * A share of runs with its exact interval (Clopper and Pearson, Biometrika 26, 1934).
   *
   * @param boiled how many, from 0 to {@code runs}
   * @param runs of how many, at least 1
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
