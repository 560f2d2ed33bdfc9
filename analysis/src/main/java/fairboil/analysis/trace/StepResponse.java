package fairboil.analysis.trace;

import java.util.Optional;

/**
 * The answer of a probe to a step, such as being put into a flame or taken out of hot water: {@code
 * T = b + (a − b) exp(−(t − t₀)/τ)}.
 *
 * <p>A fire that grows, or a pot that cools, answers in the same shape, but no reading can follow
 * faster than its probe. So the quickest answer in a trace is taken; it is a time constant only if
 * the probe was moved quickly there, and no more than an upper bound otherwise.
 *
 * @param at when the step was, s
 * @param height from the old level to the new, K
 * @param timeConstant time to follow to 63 %, s
 * @param uncertainty its standard uncertainty from the fit, s
 */
public record StepResponse(double at, double height, double timeConstant, double uncertainty) {

  private static final double LEAST_KELVINS = 20;
  private static final double LEAST_SIGNAL = 15;
  private static final double MOST_MISFIT = 0.03;
  private static final double LONGEST = 120;
  private static final double FITTED_TIME_CONSTANTS = 4;
  private static final int CANDIDATES = 8;
  private static final int LEAST_READINGS = 7;
  private static final int ROUNDS = 6;

  /** The quickest answer to a step in a trace, if there is one. */
  public static Optional<StepResponse> quickest(Trace trace) {
    Trace present = trace.withoutMissing();
    if (present.interval() <= 0 || present.size() < LEAST_READINGS) {
      return Optional.empty();
    }
    double[] changes = changes(present);
    Optional<StepResponse> best = Optional.empty();
    for (int n = 0; n < CANDIDATES; n++) {
      int steepest = steepest(changes);
      if (!(Math.abs(changes[steepest]) > 0)) {
        break;
      }
      Optional<StepResponse> found = fit(present, steepest);
      if (found.isPresent()
          && (best.isEmpty() || found.get().timeConstant < best.get().timeConstant)) {
        best = found;
      }
      double until = found.map(StepResponse::timeConstant).orElse(2 * present.interval());
      forget(present, changes, steepest, until);
    }
    return best;
  }

  /** The change from each reading to the one after the next, K; 0 over a gap. */
  private static double[] changes(Trace trace) {
    double[] changes = new double[trace.size()];
    for (int i = 0; i + 2 < changes.length; i++) {
      boolean unbroken = trace.secondsAt(i + 2) - trace.secondsAt(i) <= trace.longestBridge();
      changes[i] = unbroken ? trace.celsiusAt(i + 2) - trace.celsiusAt(i) : 0;
    }
    return changes;
  }

  private static int steepest(double[] changes) {
    int steepest = 0;
    for (int i = 1; i < changes.length; i++) {
      steepest = Math.abs(changes[i]) > Math.abs(changes[steepest]) ? i : steepest;
    }
    return steepest;
  }

  private static void forget(Trace trace, double[] changes, int about, double timeConstant) {
    double reach = FITTED_TIME_CONSTANTS * timeConstant;
    int from = trace.indexAtOrAfter(trace.secondsAt(about) - reach / 2);
    int end = trace.indexAtOrAfter(trace.secondsAt(about) + reach);
    for (int i = from; i < Math.max(end, about + 1); i++) {
      changes[i] = 0;
    }
  }

  /** Fits readings from the steepest change on, for four time constants. */
  private static Optional<StepResponse> fit(Trace trace, int steepest) {
    int from = steepest + 1;
    double length = 3 * LEAST_READINGS * trace.interval();
    Decay decay = null;
    for (int round = 0; round < ROUNDS; round++) {
      Trace part = unbroken(trace, from, length);
      if (part.size() < LEAST_READINGS) {
        return Optional.empty();
      }
      decay = Decay.through(part, Math.min(LONGEST, 3 * length));
      length =
          Math.max(FITTED_TIME_CONSTANTS * decay.timeConstant, LEAST_READINGS * trace.interval());
    }
    return decay.isStep(levelBefore(trace, steepest, decay.timeConstant))
        ? Optional.of(decay.response(levelBefore(trace, steepest, decay.timeConstant)))
        : Optional.empty();
  }

  private static Trace unbroken(Trace trace, int from, double length) {
    int end = Math.min(trace.size(), from + 1);
    while (end < trace.size()
        && trace.secondsAt(end) - trace.secondsAt(end - 1) <= trace.longestBridge()
        && trace.secondsAt(end) - trace.secondsAt(from) <= length) {
      end++;
    }
    return from < trace.size()
        ? trace.between(trace.secondsAt(from), trace.secondsAt(end - 1))
        : Trace.empty();
  }

  /** Median of the readings over one time constant, at least three, up to the change. */
  private static double levelBefore(Trace trace, int steepest, double timeConstant) {
    double at = trace.secondsAt(steepest);
    double length = Math.max(timeConstant, 3 * trace.interval());
    return trace.between(at - length, at).median();
  }

  /** {@code b + c exp(−(t − first)/τ)} through a part of a trace, by least squares. */
  private record Decay(
      double first, double end, double start, double timeConstant, double misfit, double u) {

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int STEPS = 60;

    static Decay through(Trace part, double longest) {
      double low = Math.log(0.2 * part.interval());
      double high = Math.log(longest);
      double a = high - GOLDEN * (high - low);
      double b = low + GOLDEN * (high - low);
      double ofA = squares(part, Math.exp(a));
      double ofB = squares(part, Math.exp(b));
      for (int i = 0; i < STEPS; i++) {
        if (ofA < ofB) {
          high = b;
          b = a;
          ofB = ofA;
          a = high - GOLDEN * (high - low);
          ofA = squares(part, Math.exp(a));
        } else {
          low = a;
          a = b;
          ofA = ofB;
          b = low + GOLDEN * (high - low);
          ofB = squares(part, Math.exp(b));
        }
      }
      return at(part, Math.exp((low + high) / 2));
    }

    private static double squares(Trace part, double timeConstant) {
      Line line = against(part, timeConstant);
      double sum = 0;
      for (int i = 0; i < part.size(); i++) {
        double residual = part.celsiusAt(i) - line.at(shape(part, i, timeConstant));
        sum += residual * residual;
      }
      return sum;
    }

    private static double shape(Trace part, int i, double timeConstant) {
      return -Math.exp(-(part.secondsAt(i) - part.secondsAt(0)) / timeConstant);
    }

    /** The readings over −exp(−t/τ), which increases with time. */
    private static Line against(Trace part, double timeConstant) {
      double[] shapes = new double[part.size()];
      for (int i = 0; i < shapes.length; i++) {
        shapes[i] = shape(part, i, timeConstant);
      }
      Trace turned = Trace.of(shapes, part.values(), 0);
      return Line.through(turned, 0, turned.size());
    }

    private static Decay at(Trace part, double timeConstant) {
      Line line = against(part, timeConstant);
      Residuals residuals = new Residuals(3);
      for (int i = 0; i < part.size(); i++) {
        residuals.add(part.celsiusAt(i) - line.at(shape(part, i, timeConstant)));
      }
      double scatter = residuals.scatter();
      double remembered = (1 + residuals.memory()) / (1 - residuals.memory());
      double u = scatter * Math.sqrt(remembered / information(part, timeConstant, line.slope()));
      return new Decay(part.secondsAt(0), line.at(0), line.at(-1), timeConstant, scatter, u);
    }

    /** What is left of Σ(dT/dτ)² once level and height are free: its scatter about a line. */
    private static double information(Trace part, double timeConstant, double slope) {
      double[] shapes = new double[part.size()];
      double[] byTau = new double[part.size()];
      for (int i = 0; i < shapes.length; i++) {
        double share = (part.secondsAt(i) - part.secondsAt(0)) / timeConstant;
        shapes[i] = shape(part, i, timeConstant);
        byTau[i] = slope * shapes[i] * share / timeConstant;
      }
      Trace turned = Trace.of(shapes, byTau, 0);
      Line line = Line.through(turned, 0, turned.size());
      double sum = 0;
      for (int i = 0; i < shapes.length; i++) {
        double left = byTau[i] - line.at(shapes[i]);
        sum += left * left;
      }
      return sum;
    }

    boolean isStep(double before) {
      double height = Math.abs(end - before);
      return height >= Math.max(LEAST_KELVINS, LEAST_SIGNAL * misfit)
          && misfit <= MOST_MISFIT * height
          && timeConstant < LONGEST
          && u < 0.5 * timeConstant
          && Math.abs(start - before) < Math.abs(end - before)
          && (end - start) * (end - before) > 0;
    }

    /** The step was when the curve left the level before it. */
    StepResponse response(double before) {
      double back = timeConstant * Math.log((before - end) / (start - end));
      return new StepResponse(first - back, end - before, timeConstant, u);
    }
  }
}
