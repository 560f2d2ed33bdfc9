package fairboil.analysis.trace;

import fairboil.analysis.model.LinearFit;
import fairboil.analysis.model.Regressors;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the step in a trace and the time constant of its probe: the probe was moved at once from
 * one temperature to another, as from the air into boiling water.
 *
 * <p>After the step {@code τ dT/dt + T = T₁}, so {@code T(t) = T(s) + T₁ (t − s)/τ − ∫T/τ}: linear
 * in the time and in the integral of the readings, whose noise cancels. {@code 1/τ} is the slope
 * against the integral, by least squares over four time constants or more from the first reading
 * after the step, so that it does not matter when between two readings the step fell. The rule of
 * trapezoids makes {@code 2/h tanh(h/2τ)} of {@code 1/τ} where readings are h apart, which is
 * undone.
 */
final class StepFinder {

  /** A step must be of at least so many kelvins. */
  private static final double LEAST_STEP = 10;

  /** A step must be so many times the noise of the readings. */
  private static final double STEP_OVER_NOISE = 50;

  /**
   * Beyond their noise, readings before a step may differ by this share of it, and the first after
   * it from the curve by half of that.
   */
  private static final double UNEVEN = 0.02;

  /** Half an interval of the log over the time constant: a faster probe cannot be told. */
  private static final double MOST_HALF_INTERVAL = 0.5;

  private static final String TIME = "time";
  private static final String INTEGRAL = "integral";
  private static final double MOST_UNCERTAIN = 0.1;
  private static final int FEWEST_READINGS = 8;
  private static final int STEADY_READINGS = 10;
  private static final double WINDOW = 4;
  private static final double LONGER = 1.3;
  private static final int STEEPEST = 5;
  private static final int LATEST = 8;

  /** Relative standard uncertainty as no probe is quite of the first order: a judgement. */
  private static final double MODEL_SHARE = 0.05;

  private final Trace trace;
  private final double noise;

  private StepFinder(Trace trace) {
    this.trace = trace;
    this.noise = Noise.betweenNeighbours(trace);
  }

  /** The time constant by the clearest step of a trace, if there is a clear one. */
  static Optional<StepResponse> find(Trace trace) {
    Trace present = trace.withoutMissing();
    return present.size() < FEWEST_READINGS || present.interval() <= 0
        ? Optional.empty()
        : new StepFinder(present).find();
  }

  private Optional<StepResponse> find() {
    Optional<StepResponse> best = Optional.empty();
    for (int steep : steepest()) {
      // Late between two readings, or in noise, a step shows most only some readings later.
      for (int before = steep - LATEST; before <= steep; before++) {
        double base = base(before);
        Optional<StepResponse> step = fit(before).map(fit -> fit.from(base));
        if (step.isPresent()
            && (best.isEmpty() || step.get().timeConstant() < best.get().timeConstant())) {
          best = step;
        }
      }
    }
    return best;
  }

  /** The readings after which the trace is steepest, each the steepest about it. */
  private List<Integer> steepest() {
    List<Integer> found = new ArrayList<>();
    while (found.size() < STEEPEST) {
      int best = -1;
      for (int i = STEADY_READINGS + LATEST; i + 1 < trace.size(); i++) {
        if (isApart(i, found) && (best < 0 || rate(i) > rate(best))) {
          best = i;
        }
      }
      if (best < 0) {
        return found;
      }
      found.add(best);
    }
    return found;
  }

  private static boolean isApart(int index, List<Integer> found) {
    return found.stream().allMatch(other -> Math.abs(other - index) >= FEWEST_READINGS);
  }

  private double rate(int i) {
    double apart = trace.secondsAt(i + 1) - trace.secondsAt(i);
    return apart > 0 && apart <= trace.longestBridge()
        ? Math.abs(trace.celsiusAt(i + 1) - trace.celsiusAt(i)) / apart
        : 0;
  }

  /**
   * A fitted curve: when it begins, s; its time constant and that one's standard uncertainty, s;
   * the temperature that it begins with and the one that it ends at, °C.
   */
  private record Fit(double at, double seconds, double uncertainty, double first, double level) {

    /** The step from a level to that of the curve. */
    StepResponse from(double base) {
      double u = Math.hypot(uncertainty, MODEL_SHARE * seconds);
      return new StepResponse(at - since(base), level - base, seconds, u);
    }

    double share() {
      return uncertainty / seconds;
    }

    /** Whether a stretch, s, is long enough for it and not too long. */
    boolean isOver(double stretch) {
      return stretch >= WINDOW * seconds && stretch <= 2 * WINDOW * seconds;
    }

    /** How long before its first reading the curve left a temperature, s. */
    double since(double celsius) {
      return seconds * Math.log((level - celsius) / (level - first));
    }
  }

  /** The curve after a reading, over the shortest stretch of enough time constants. */
  private Optional<Fit> fit(int before) {
    double from = trace.secondsAt(before + 1);
    double end = trace.secondsAt(trace.size() - 1);
    double length = FEWEST_READINGS * trace.interval();
    for (; from + length <= end; length *= LONGER) {
      double stretch = length;
      Optional<Fit> fit =
          fit(before + 1, from + length)
              .filter(found -> found.isOver(stretch) && isStep(found, before));
      if (fit.isPresent()) {
        return fit;
      }
    }
    return Optional.empty();
  }

  private boolean isStep(Fit fit, int before) {
    double base = base(before);
    double step = Math.abs(fit.level - base);
    double drift = 0;
    for (int i = before - STEADY_READINGS; i <= before; i++) {
      drift = Math.max(drift, Math.abs(trace.celsiusAt(i) - base));
    }
    double slack = trace.interval() / 2 + 3 * fit.seconds * noise / step;
    double since = fit.since(base);
    boolean beginsAtOnce = since >= -slack && since <= trace.interval() + slack;
    return step >= Math.max(LEAST_STEP, STEP_OVER_NOISE * noise)
        && drift <= UNEVEN * step + 3 * noise
        && Math.abs(trace.celsiusAt(before + 1) - fit.first) <= UNEVEN * step / 2 + 3 * noise
        && beginsAtOnce
        && fit.share() <= MOST_UNCERTAIN;
  }

  private double base(int before) {
    double sum = 0;
    for (int i = before - STEADY_READINGS; i <= before; i++) {
      sum += trace.celsiusAt(i);
    }
    return sum / (STEADY_READINGS + 1);
  }

  private Optional<Fit> fit(int first, double to) {
    List<double[]> rows = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    double integral = 0;
    for (int i = first; i < trace.size() && trace.secondsAt(i) <= to; i++) {
      double apart = i == first ? 0 : trace.secondsAt(i) - trace.secondsAt(i - 1);
      if (apart > trace.longestBridge()) {
        return Optional.empty();
      }
      integral += i == first ? 0 : apart * (trace.celsiusAt(i) + trace.celsiusAt(i - 1)) / 2;
      rows.add(new double[] {trace.secondsAt(i) - trace.secondsAt(first), integral});
      values.add(trace.celsiusAt(i));
    }
    return rows.size() < FEWEST_READINGS
        ? Optional.empty()
        : fit(
            trace.secondsAt(first),
            rows,
            values.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private Optional<Fit> fit(double at, List<double[]> rows, double[] values) {
    Regressors x =
        Regressors.intercept(values.length)
            .and(TIME, rows.stream().mapToDouble(row -> row[0]).toArray())
            .and(INTEGRAL, rows.stream().mapToDouble(row -> row[1]).toArray());
    return LinearFit.of(x, values).flatMap(line -> fit(at, line));
  }

  private Optional<Fit> fit(double at, LinearFit line) {
    double rate = -line.estimate(INTEGRAL);
    double half = rate * trace.interval() / 2;
    if (!(rate > 0 && half <= MOST_HALF_INTERVAL)) {
      return Optional.empty();
    }
    double seconds = trace.interval() / (2 * atanh(half));
    double uncertainty = line.standardError(INTEGRAL) / (rate * rate);
    return Optional.of(
        new Fit(
            at,
            seconds,
            uncertainty,
            line.estimate(Regressors.INTERCEPT),
            line.estimate(TIME) / rate));
  }

  private static double atanh(double x) {
    return (Math.log1p(x) - Math.log1p(-x)) / 2;
  }
}
