package fairboil.analysis.precision;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.MeanSquare;
import fairboil.analysis.model.VarianceComponents;
import fairboil.analysis.precision.Repeatability.Level;
import fairboil.ingest.dimension.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Collects the rows of scatter. */
final class ScatterRows {

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
    OptionalDouble limit = OptionalDouble.of(Repeatability.LIMIT * sd);
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
        OptionalDouble.of(Repeatability.LIMIT * components.sdTotal()),
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
    OptionalDouble mean = mean(measure, burned.values());
    rows.add(
        new Repeatability(
            measure,
            level,
            design,
            sd,
            interval,
            degreesOfFreedom,
            mean.isPresent() ? OptionalDouble.of(sd / mean.getAsDouble()) : mean,
            mean.isPresent() ? Optional.of(over(interval, mean.getAsDouble())) : Optional.empty(),
            limit,
            burned.size(),
            burned.stovesInOrder().size()));
  }

  private static Interval over(Interval interval, double mean) {
    return new Interval(interval.low() / mean, interval.high() / mean);
  }

  /** The mean that scatter may be set against, if there is a natural zero. */
  private static OptionalDouble mean(Measure measure, double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    return measure.dimension() == Dimension.TEMPERATURE || !(mean > 0)
        ? OptionalDouble.empty()
        : OptionalDouble.of(mean);
  }
}
