package fairboil.analysis.precision;

import fairboil.analysis.group.RunGroup;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.VarianceComponents;
import fairboil.analysis.precision.Repeatability.Level;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.quantity.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How far runs of a stove, and stoves of a design, differ. Scatter between builds is that within
 * designs: stoves built to different plans are meant to differ.
 */
public final class Repeatabilities {

  /** The difference of two runs that is exceeded once in twenty times, in standard deviations. */
  private static final double LIMIT = 2.8;

  private final double confidence;
  private final List<Repeatability> results = new ArrayList<>();

  private Repeatabilities(double confidence) {
    this.confidence = confidence;
  }

  /**
   * The scatter of each measure of runs.
   *
   * @param runs the results of all runs
   * @param confidence of the intervals, between 0 and 1
   */
  public static List<Repeatability> of(List<RunResult> runs, double confidence) {
    Repeatabilities all = new Repeatabilities(confidence);
    RunGroup counted = RunGroup.of(runs);
    for (Measure measure : Measure.values()) {
      if (measure.level() == Measure.Level.RUN) {
        all.add(measure, counted);
      }
    }
    return List.copyOf(all.results);
  }

  private void add(Measure measure, RunGroup runs) {
    runToRun(measure, builds(runs, measure));
    Map<String, List<RunResult>> designs = new LinkedHashMap<>();
    for (RunResult run : runs.runs()) {
      String design = run.build().design().orElse("");
      designs.computeIfAbsent(design, key -> new ArrayList<>()).add(run);
    }
    designs.forEach(
        (design, own) -> buildToBuild(measure, design, builds(RunGroup.of(own), measure)));
  }

  /** The values of each build; a build whose mean would hide failures is left out. */
  private static List<double[]> builds(RunGroup runs, Measure measure) {
    return runs.byBuild().values().stream()
        .map(own -> own.values(measure))
        .filter(values -> values.length > 0)
        .toList();
  }

  private void runToRun(Measure measure, List<double[]> builds) {
    int degreesOfFreedom = builds.stream().mapToInt(values -> values.length - 1).sum();
    if (degreesOfFreedom < 1) {
      return;
    }
    double squares = builds.stream().mapToDouble(Repeatabilities::squares).sum();
    double sd = Math.sqrt(squares / degreesOfFreedom);
    results.add(
        new Repeatability(
            measure,
            Level.RUN_TO_RUN,
            "",
            sd,
            VarianceComponents.intervalOfSd(squares, degreesOfFreedom, confidence),
            degreesOfFreedom,
            relative(measure, sd, builds),
            OptionalDouble.of(LIMIT * sd),
            builds.stream().mapToInt(values -> values.length).sum(),
            builds.size()));
  }

  private void buildToBuild(Measure measure, String design, List<double[]> builds) {
    VarianceComponents.of(builds)
        .ifPresent(
            components ->
                results.add(
                    new Repeatability(
                        measure,
                        Level.BUILD_TO_BUILD,
                        design,
                        components.sdBetween(),
                        components.intervalBetween(confidence),
                        components.groups() - 1,
                        relative(measure, components.sdBetween(), builds),
                        OptionalDouble.empty(),
                        builds.stream().mapToInt(values -> values.length).sum(),
                        builds.size())));
  }

  private static OptionalDouble relative(Measure measure, double sd, List<double[]> builds) {
    double mean = builds.stream().flatMapToDouble(Arrays::stream).average().orElseThrow();
    return measure.dimension() == Dimension.TEMPERATURE || !(mean > 0)
        ? OptionalDouble.empty()
        : OptionalDouble.of(sd / mean);
  }

  private static double squares(double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    return Arrays.stream(values).map(value -> (value - mean) * (value - mean)).sum();
  }
}
