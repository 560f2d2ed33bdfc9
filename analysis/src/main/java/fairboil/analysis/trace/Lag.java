package fairboil.analysis.trace;

import java.util.Optional;

/**
 * How a probe lags behind what it measures, of the first order: {@code τ dT/dt + T} is what it
 * would show without.
 *
 * @param seconds the time constant τ, s, at least 0
 * @param uncertainty its standard uncertainty, s
 */
public record Lag(double seconds, double uncertainty) {

  /** Relative standard uncertainty of a lag that is told: a judgement. */
  private static final double TOLD_SHARE = 0.2;

  /** A time constant that somebody told, s. */
  public static Lag told(double seconds) {
    return new Lag(seconds, TOLD_SHARE * seconds);
  }

  /** The time constant by the clearest step of a clean trace, if there is a clear one. */
  public static Optional<Lag> ofStepIn(Trace trace) {
    return StepResponse.find(trace);
  }
}
