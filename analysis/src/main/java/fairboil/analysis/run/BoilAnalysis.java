package fairboil.analysis.run;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.run.BoilResult.BoilTimeFrom;
import fairboil.analysis.trace.Boil;
import fairboil.ingest.choice.BoilTimeSource;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.Optional;
import java.util.OptionalDouble;

/** The boil of a run: log and stopwatch side by side. */
final class BoilAnalysis {

  private static final double ROOT_12 = Math.sqrt(12);

  /** Standard uncertainty from the lag of a sensor of which none is told, s: a judgement. */
  private static final double UNTOLD_LAG_SECONDS = 2;

  /** Log and stopwatch may differ by so much without a finding, s. */
  private static final double AGREE_SECONDS = 15;

  /** So uncertain that no decimals are shown, s. */
  private static final double WHOLE_SECONDS = 2;

  private final RunContext context;
  private final PreparedLog log;
  private final EventTimes events;
  private final WaterShown water;
  private final Figure boilingPoint;
  private final PlausibleBoil plausible;

  BoilAnalysis(
      RunContext context,
      PreparedLog log,
      EventTimes events,
      WaterShown water,
      Figure boilingPoint) {
    this.context = context;
    this.log = log;
    this.events = events;
    this.water = water;
    this.boilingPoint = boilingPoint;
    this.plausible = new PlausibleBoil(context, log);
  }

  BoilResult result() {
    Figure byLog = boilTimeByLog();
    Figure byStopwatch = boilTimeByStopwatch();
    compare(byLog, byStopwatch);
    Optional<BoilTimeFrom> from = choose(byLog, byStopwatch);
    return new BoilResult(
        boilTime(from, byLog, byStopwatch),
        from,
        byLog,
        byStopwatch,
        water.hottest(),
        water.plateau(),
        water.plateauOffset(boilingPoint),
        litToBoil(from),
        burnTime());
  }

  private Figure boilTimeByLog() {
    return water
        .whyNot()
        .or(events::whyNoStart)
        .map(Figure::unknown)
        .orElseGet(() -> logInterval(start(), events.boilTimeStart()));
  }

  private Figure boilTimeByStopwatch() {
    return notMarked()
        .or(events::whyNoStart)
        .map(Figure::unknown)
        .orElseGet(() -> stopwatchInterval(start(), events.boilTimeStart()));
  }

  private Optional<Message> notMarked() {
    if (events.at(Event.BOIL).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        events.isAsked(Event.BOIL)
            ? RunSays.IN_DOUBT.with(Argument.word(Event.BOIL.label()))
            : BoilSays.NOT_MARKED.with());
  }

  private double start() {
    return events.timeline().boilTimeStart().orElseThrow();
  }

  private Figure logInterval(double from, Event event) {
    Boil.Seen seen = water.seen().orElseThrow();
    if (events.apart().isPresent() && events.isMarked(event)) {
      return Figure.unknown(events.apart().get());
    }
    double seconds = seen.at() - from;
    return seconds > 0
        ? logBudget(seen, event).around(seconds, Dimension.DURATION)
        : Figure.unknown(BoilSays.LOG_TOO_EARLY.with());
  }

  private Budget logBudget(Boil.Seen seen, Event start) {
    Probe probe = water.probe().orElseThrow();
    double lag = water.lag().map(Lag::uncertainty).orElse(UNTOLD_LAG_SECONDS);
    double step = probe.resolution() / ROOT_12 / seen.heatingRate();
    return Budget.of(
        BudgetLine.independent(Influence.FIT, Math.hypot(seen.fit(), seen.level())),
        BudgetLine.independent(Influence.RESOLUTION, step / Math.sqrt(10)),
        BudgetLine.shared(Influence.LAG, lag, probe.key()),
        BudgetLine.independent(Influence.SAMPLING, log.timeResolution() / ROOT_12),
        BudgetLine.independent(Influence.STOPWATCH, events.uncertainty(start)),
        BudgetLine.independent(
            Influence.CLOCK_JOINING, events.isMarked(start) ? events.joining() : 0));
  }

  private Figure stopwatchInterval(double from, Event event) {
    if (events.apart().isPresent() && !events.isMarked(event)) {
      return Figure.unknown(events.apart().get());
    }
    double seconds = events.at(Event.BOIL).orElseThrow() - from;
    if (seconds <= 0) {
      return Figure.unknown(RunSays.BOIL_TOO_EARLY.with(Argument.word(event.label())));
    }
    double pressed = Math.hypot(events.uncertainty(event), events.uncertainty(Event.BOIL));
    double joined = events.isMarked(event) ? 0 : events.joining();
    return Budget.of(
            BudgetLine.independent(Influence.STOPWATCH, pressed),
            BudgetLine.independent(Influence.CLOCK_JOINING, joined))
        .around(seconds, Dimension.DURATION);
  }

  private void compare(Figure byLog, Figure byStopwatch) {
    if (!byLog.isKnown() || !byStopwatch.isKnown()) {
      return;
    }
    double apart = byStopwatch.orNaN() - byLog.orNaN();
    double u = Math.hypot(byLog.budget().combined(), byStopwatch.budget().combined());
    if (Math.abs(apart) > Math.max(AGREE_SECONDS, 2 * u)) {
      context
          .findings()
          .warning(
              plausible.boilMark(),
              (apart > 0 ? BoilSays.MARKED_LATER : BoilSays.MARKED_EARLIER)
                  .with(Argument.value(Math.abs(apart), WHOLE_SECONDS, Dimension.DURATION)),
              BoilSays.CHECK_START.with());
    }
  }

  private Optional<BoilTimeFrom> choose(Figure byLog, Figure byStopwatch) {
    if (!mayHaveBoiled()) {
      return Optional.empty();
    }
    boolean logFirst = context.setting(Settings.BOIL_TIME_FROM) == BoilTimeSource.LOG;
    if (byStopwatch.isKnown() && (!logFirst || !byLog.isKnown())) {
      return Optional.of(BoilTimeFrom.STOPWATCH);
    }
    return byLog.isKnown() ? Optional.of(byPlateau()) : Optional.empty();
  }

  private BoilTimeFrom byPlateau() {
    boolean lasted = water.seen().filter(seen -> seen.length() == Boil.Length.LONG).isPresent();
    return lasted ? BoilTimeFrom.LOG : BoilTimeFrom.LOG_SHORT_PLATEAU;
  }

  private boolean mayHaveBoiled() {
    Optional<Outcome> told = context.value(RunsSheet.OUTCOME);
    return told.isEmpty()
        || (told.get() != Outcome.DID_NOT_BOIL && told.get() != Outcome.WOULD_NOT_LIGHT);
  }

  private Figure boilTime(Optional<BoilTimeFrom> from, Figure byLog, Figure byStopwatch) {
    if (from.isPresent()) {
      return from.get() == BoilTimeFrom.STOPWATCH ? byStopwatch : byLog;
    }
    if (!mayHaveBoiled()) {
      String outcome = context.value(RunsSheet.OUTCOME).orElseThrow().label();
      return Figure.unknown(BoilSays.ENDED.with(Argument.word(outcome)));
    }
    Message ofLog = ((Figure.Unknown) byLog).reason();
    Message ofStopwatch = ((Figure.Unknown) byStopwatch).reason();
    return Figure.unknown(
        ofLog.equals(ofStopwatch)
            ? ofLog
            : RunSays.AND.with(Argument.clause(ofLog), Argument.clause(ofStopwatch)));
  }

  private Figure litToBoil(Optional<BoilTimeFrom> from) {
    OptionalDouble lit = events.at(Event.LIT);
    if (from.isEmpty()) {
      return Figure.unknown(RunSays.NO_BOIL_TIME.with());
    }
    if (lit.isEmpty()) {
      return Figure.unknown(
          events.isAsked(Event.LIT)
              ? RunSays.IN_DOUBT.with(Argument.word(Event.LIT.label()))
              : RunSays.NO_LIGHTING.with());
    }
    Figure time =
        from.get() == BoilTimeFrom.STOPWATCH
            ? stopwatchInterval(lit.getAsDouble(), Event.LIT)
            : logInterval(lit.getAsDouble(), Event.LIT);
    return plausible.litToBoil(time);
  }

  private Figure burnTime() {
    OptionalDouble lit = events.at(Event.LIT);
    OptionalDouble out = events.at(Event.FLAME_OUT);
    if (lit.isEmpty() || out.isEmpty() || out.getAsDouble() <= lit.getAsDouble()) {
      return Figure.unknown(
          lit.isEmpty() ? RunSays.NO_LIGHTING.with() : BoilSays.NO_FLAME_OUT.with());
    }
    boolean sameClock = events.isMarked(Event.LIT) == events.isMarked(Event.FLAME_OUT);
    if (!sameClock && events.apart().isPresent()) {
      return Figure.unknown(events.apart().get());
    }
    double pressed = Math.hypot(events.uncertainty(Event.LIT), events.uncertainty(Event.FLAME_OUT));
    return Budget.of(
            BudgetLine.independent(Influence.STOPWATCH, pressed),
            BudgetLine.independent(Influence.CLOCK_JOINING, sameClock ? 0 : events.joining()))
        .around(out.getAsDouble() - lit.getAsDouble(), Dimension.DURATION);
  }
}
