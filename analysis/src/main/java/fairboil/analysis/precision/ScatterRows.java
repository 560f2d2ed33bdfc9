package fairboil.analysis.precision;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.MeanSquare;
import fairboil.analysis.model.VarianceComponents;
import fairboil.analysis.precision.Repeatability.Level;
import fairboil.ingest.quantity.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** Collects the rows of scatter. */
final class ScatterRows {

  /** The difference of two runs that is exceeded once in twenty times, in standard deviations. */
  private static final double LIMIT = 2.8;

  private final double confidence;
  private final List<Repeatability> rows = new ArrayList<>();

  ScatterRows(double confidence) {
    this.confidence = confidence;
  }

  List<Repeatability> rows() {
    return List.copyOf(rows);
  }

  void runToRun(Measure measure, MeanSquare within, Burned burned) {
    double sd = Math.sqrt(within.value());
    Interval interval =
        VarianceComponents.intervalOfSd(within.squares(), within.degreesOfFreedom(), confidence);
    OptionalDouble limit = OptionalDouble.of(LIMIT * sd);
    add(measure, Level.RUN_TO_RUN, "", sd, interval, within.degreesOfFreedom(), limit, burned);
  }

  /** A scatter between groups beyond that within them. */
  void add(
      Measure measure, Level level, String design, VarianceComponents components, Burned burned) {
    add(
        measure,
        level,
        design,
        components.sdBetween(),
        components.intervalBetween(confidence),
        components.groups() - 1,
        OptionalDouble.empty(),
        burned);
  }

  /** The scatter of runs of one stove, each at another site: between and within together. */
  void total(Measure measure, Level level, VarianceComponents components, Burned burned) {
    add(
        measure,
        level,
        "",
        components.sdTotal(),
        components.intervalTotal(confidence),
        (int) Math.max(1, components.degreesOfFreedomTotal()),
        OptionalDouble.of(LIMIT * components.sdTotal()),
        burned);
  }

  private void add(
      Measure measure,
      Level level,
      String design,
      double sd,
      Interval interval,
      int degreesOfFreedom,
      OptionalDouble limit,
      Burned burned) {
    rows.add(
        new Repeatability(
            measure,
            level,
            design,
            sd,
            interval,
            degreesOfFreedom,
            relative(measure, sd, burned.values()),
            limit,
            burned.size(),
            burned.stovesInOrder().size()));
  }

  private static OptionalDouble relative(Measure measure, double sd, double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    return measure.dimension() == Dimension.TEMPERATURE || !(mean > 0)
        ? OptionalDouble.empty()
        : OptionalDouble.of(sd / mean);
  }
}
