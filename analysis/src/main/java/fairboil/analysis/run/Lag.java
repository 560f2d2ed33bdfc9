package fairboil.analysis.run;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.trace.StepResponse;
import fairboil.analysis.trace.Trace;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Place;
import java.util.Optional;

/**
 * The lag of a probe: from its row in sensors.csv, or, where that asks for it to be undone, from a
 * step in its trace.
 *
 * @param seconds its time constant, s
 * @param fit standard uncertainty from the fit to a step, s; 0 where it was told
 * @param source where it is from
 */
record Lag(double seconds, double fit, Source source) {

  /** How the time constant differs between still and moving air or water: a judgement. */
  private static final double SHARE = 0.2;

  /** Where a time constant is from. */
  enum Source {
    SHEET,
    STEP
  }

  /** The lag of a probe with this trace, if it is known. */
  static Optional<Lag> of(Probe probe, Trace trace, Place place, Findings findings) {
    if (probe.lag().isPresent()) {
      return Optional.of(new Lag(probe.lag().getAsDouble(), 0, Source.SHEET));
    }
    return probe.undoesLag()
        ? ofStep(StepResponse.quickest(trace), place, findings)
        : Optional.empty();
  }

  private static Optional<Lag> ofStep(Optional<StepResponse> step, Place place, Findings findings) {
    if (step.isEmpty()) {
      findings.warning(
          place,
          "its lag is to be undone, but no time constant is told and its trace shows no step",
          "tell “time constant” in sensors.csv, or log the probe as it is put quickly from air into"
              + " hot water");
      return Optional.empty();
    }
    StepResponse found = step.get();
    findings.note(
        place,
        Findings.words(
            "its time constant is taken as %.1f s, from a step of %.0f K at %.0f s of its log",
            found.timeConstant(), found.height(), found.at()),
        "if the probe was not moved quickly there, tell “time constant” in sensors.csv");
    return Optional.of(new Lag(found.timeConstant(), found.uncertainty(), Source.STEP));
  }

  /** Standard uncertainty, s. */
  double uncertainty() {
    return Math.hypot(fit, SHARE * seconds);
  }

  /** The time constant as a figure, shared by all readings of a probe. */
  Figure figure(Probe probe) {
    return Budget.of(BudgetLine.shared(Influence.LAG, uncertainty(), probe.key()))
        .around(seconds, Dimension.DURATION);
  }
}
