package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Axis;
import fairboil.reports.chart.Axis.Ticks;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;

/**
 * The round values at which an axis is marked: multiples of 1, 2 or 5 times a power of ten; along a
 * clock, of the parts that minutes and hours are told in.
 *
 * @param step from one to the next, in the axis's unit
 * @param values all that lie on the axis, in order
 */
record Graduation(double step, List<Double> values) {

  private static final double[] ROUND = {1, 2, 5, 10};
  private static final double[] CLOCK_MINUTES = {
    1 / 60.0, 2 / 60.0, 5 / 60.0, 10 / 60.0, 15 / 60.0, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 180, 360
  };
  // Values a rounding error beyond the end of the axis lie on it.
  private static final double TOLERANCE = 1e-9;

  /**
   * The closest marks that lie at least so far from one another.
   *
   * @param least the least distance of two, in the axis's unit
   */
  static Graduation of(Axis axis, double least) {
    return axis.ticks() == Ticks.CLOCK ? clock(axis, least) : decimal(axis, least);
  }

  /** No marks at all: the axis is one step. */
  static Graduation none(Axis axis) {
    return new Graduation(axis.length(), List.of());
  }

  private static Graduation clock(Axis axis, double least) {
    return Arrays.stream(CLOCK_MINUTES)
        .filter(minutes -> minutes >= least)
        .mapToObj(minutes -> multiples(axis, minutes, 1))
        .findFirst()
        .orElseGet(() -> decimal(axis, least));
  }

  private static Graduation decimal(Axis axis, double least) {
    int exponent = (int) Math.floor(Math.log10(least));
    double power = Math.pow(10, Math.abs(exponent));
    double times = exponent < 0 ? least * power : least / power;
    double round =
        Arrays.stream(ROUND).filter(each -> each >= times * (1 - TOLERANCE)).findFirst().orElse(10);
    // Whole numbers over a power of ten are the doubles nearest to what is written.
    return exponent < 0 ? multiples(axis, round, power) : multiples(axis, round * power, 1);
  }

  private static Graduation multiples(Axis axis, double dividend, double divisor) {
    double step = dividend / divisor;
    double slack = TOLERANCE * axis.length();
    long first = (long) Math.ceil((axis.from() - slack) / step);
    long last = (long) Math.floor((axis.to() + slack) / step);
    return new Graduation(
        step,
        LongStream.rangeClosed(first, last).mapToObj(count -> count * dividend / divisor).toList());
  }
}
