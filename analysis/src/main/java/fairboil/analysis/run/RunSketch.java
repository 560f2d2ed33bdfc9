package fairboil.analysis.run;

import fairboil.analysis.trace.Curve;
import java.util.List;
import java.util.Optional;

/**
 * What a chart of a run needs; the log itself is not kept.
 *
 * @param curves each channel, thinned; unmodifiable
 * @param peakHoldSeconds how long the peak was held, s
 * @param plateau the boil as the water channel shows it, if it does
 */
public record RunSketch(List<Curve> curves, double peakHoldSeconds, Optional<Plateau> plateau) {

  /** Copies the curves. */
  public RunSketch {
    curves = List.copyOf(curves);
  }
}
