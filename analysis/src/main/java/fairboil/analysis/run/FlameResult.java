package fairboil.analysis.run;

import fairboil.analysis.figure.Figure;
import fairboil.ingest.finding.Message;
import java.util.Optional;

/**
 * What the flame channel of a run shows: the temperature of a bead, not of the gas.
 *
 * @param peak highest value over the peak window of the noise-free trace averaged over the hold, °C
 * @param peakAt the middle of the hold on the run's time line, s
 * @param peakRise peak less ambient, K
 * @param peakBias how much the highest average of a noisy trace was reckoned to read high, K: it
 *     has been taken off the peak
 * @param normalisedPeak peak restated for the reference ambient (slope 1), °C
 * @param steadyFlame median from gas lit (else pot on) to flame out, °C
 * @param lag what undoing the lag of the probe did to the peak, where it was asked for and could be
 */
public record FlameResult(
    Figure peak,
    Figure peakAt,
    Figure peakRise,
    Figure peakBias,
    Figure normalisedPeak,
    Figure steadyFlame,
    Optional<LagUndone> lag) {

  /** A flame whose lag was not undone. */
  public FlameResult(
      Figure peak,
      Figure peakAt,
      Figure peakRise,
      Figure peakBias,
      Figure normalisedPeak,
      Figure steadyFlame) {
    this(peak, peakAt, peakRise, peakBias, normalisedPeak, steadyFlame, Optional.empty());
  }

  /** A run whose flame is not known at all, for one reason. */
  public static FlameResult unknown(Message reason) {
    Figure unknown = Figure.unknown(reason);
    return new FlameResult(unknown, unknown, unknown, unknown, unknown, unknown);
  }
}
