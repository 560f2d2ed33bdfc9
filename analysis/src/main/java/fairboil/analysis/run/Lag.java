package fairboil.analysis.run;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.trace.StepResponse;
import fairboil.analysis.trace.Trace;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
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
      findings.warning(place, LogSays.NO_STEP.with(), LogSays.GIVE_LAG.with(RunSays.SENSORS));
      return Optional.empty();
    }
    StepResponse found = step.get();
    findings.note(
        place,
        LogSays.LAG.with(
            Argument.value(found.timeConstant(), 0.2, Dimension.DURATION),
            Argument.value(Math.abs(found.height()), 2, Dimension.TEMPERATURE_DIFFERENCE),
            Argument.value(found.at(), 2, Dimension.DURATION)),
        LogSays.IF_NOT_MOVED.with(RunSays.SENSORS));
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
