package fairboil.analysis.run;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.trace.LagUndoing;
import fairboil.analysis.trace.Peak;
import fairboil.analysis.trace.PeakFinder;
import fairboil.analysis.trace.Steady;
import fairboil.analysis.trace.Trace;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.PeakWindow;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Settings;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the flame channel shows. */
final class FlameAnalysis {

  private static final Template NO_FIRE =
      Template.of("its flame probe never rose clearly above the air");
  private static final Template NEVER_ROSE =
      Template.of(
          "the flame probe never rose clearly above the air: it read {value} at most, and the air"
              + " was {value}");
  private static final Template CHECK_PROBE =
      Template.of("check the probe, its wiring, and the role of its column in {sheet}");
  private static final Template FEW_READINGS =
      Template.of("the flame column has fewer than 10 readings while the flame burnt");
  private static final double ROOT_12 = Math.sqrt(12);

  /** A bead no further above the air is as warm as the air: a judgement. */
  private static final double AS_AIR_KELVINS = 15;

  private final RunContext context;
  private final PreparedLog log;
  private final Timeline timeline;
  private final Figure ambient;

  FlameAnalysis(RunContext context, PreparedLog log, Timeline timeline, Figure ambient) {
    this.context = context;
    this.log = log;
    this.timeline = timeline;
    this.ambient = ambient;
  }

  FlameResult result() {
    Optional<PreparedChannel> flame = log.channel(Role.FLAME);
    if (flame.isEmpty()) {
      return FlameResult.unknown(log.time().isEmpty() ? log.lacking() : LogSays.NO_FLAME.with());
    }
    if (sawNoFire(flame.get())) {
      return FlameResult.unknown(NO_FIRE.with());
    }
    Figure steady = steady(flame.get());
    Peak peak = peak(flame.get().trace());
    if (peak instanceof Peak.Held held) {
      return withPeak(flame.get(), held, steady);
    }
    Figure none = Figure.unknown(((Peak.None) peak).reason());
    return new FlameResult(none, none, none, none, none, steady);
  }

  /** Tells of a probe that is dead, fell out, or has another's role. */
  private boolean sawNoFire(PreparedChannel flame) {
    double highest = flame.trace().highest();
    if (!(ambient.isKnown() && highest <= ambient.orNaN() + AS_AIR_KELVINS)) {
      return false;
    }
    context
        .findings()
        .warning(
            flame.place(),
            NEVER_ROSE.with(celsius(highest), celsius(ambient.orNaN())),
            CHECK_PROBE.with(RunSays.SENSORS));
    return true;
  }

  private static Argument celsius(double celsius) {
    return Argument.value(celsius, 0.2, Dimension.TEMPERATURE);
  }

  private Peak peak(Trace trace) {
    return PeakFinder.find(trace, from(), to(), context.held(Settings.PEAK_HOLD));
  }

  private double from() {
    boolean whole = context.setting(Settings.PEAK_WINDOW) == PeakWindow.WHOLE_RUN;
    OptionalDouble start = whole ? timeline.at(Event.LIT) : timeline.at(Event.POT_ON);
    return start.orElse(timeline.boilTimeStart().orElse(Double.NEGATIVE_INFINITY));
  }

  private double to() {
    boolean whole = context.setting(Settings.PEAK_WINDOW) == PeakWindow.WHOLE_RUN;
    return whole
        ? Double.POSITIVE_INFINITY
        : timeline.at(Event.FLAME_OUT).orElse(Double.POSITIVE_INFINITY);
  }

  private FlameResult withPeak(PreparedChannel flame, Peak.Held asRead, Figure steady) {
    Figure read = peakBudget(flame.probe(), asRead).around(asRead.celsius(), Dimension.TEMPERATURE);
    if (flame.lag().isEmpty() || !flame.probe().undoesLag()) {
      return withPeak(read, asRead, steady, Optional.empty());
    }
    Lag lag = flame.lag().get();
    Trace undone = LagUndoing.undo(flame.trace(), lag.seconds());
    if (!(peak(undone) instanceof Peak.Held held)) {
      return withPeak(read, asRead, steady, Optional.empty());
    }
    double rate = rateAt(held.at(), flame.trace(), undone, lag);
    Figure peak =
        undoneBudget(flame, asRead, held, Math.abs(rate) * lag.uncertainty())
            .around(held.celsius(), Dimension.TEMPERATURE);
    LagUndone result =
        new LagUndone(
            lag.figure(flame.probe()),
            read,
            addedBudget(flame.probe(), asRead, held, Math.abs(rate) * lag.uncertainty())
                .around(held.celsius() - asRead.celsius(), Dimension.TEMPERATURE_DIFFERENCE));
    return withPeak(peak, held, steady, Optional.of(result));
  }

  /** How fast the bead warmed over the hold, K/s. */
  private double rateAt(double at, Trace read, Trace undone, Lag lag) {
    double half = context.held(Settings.PEAK_HOLD) / 2;
    double before = read.between(at - half, at + half).mean();
    double after = undone.between(at - half, at + half).mean();
    double rate = (after - before) / lag.seconds();
    return Double.isFinite(rate) ? rate : 0;
  }

  private static Budget undoneBudget(
      PreparedChannel flame, Peak.Held asRead, Peak.Held held, double ofLag) {
    return Budget.of(
            BudgetLine.independent(Influence.NOISE, Math.min(asRead.noise(), held.noise())),
            BudgetLine.independent(Influence.PEAK_BIAS, held.biasUncertainty()))
        .and(addedBudget(flame.probe(), asRead, held, ofLag))
        .and(flame.probe().budget(held.celsius()));
  }

  /** What undoing the lag makes uncertain: the time constant, and the scatter that it lifts. */
  private static Budget addedBudget(Probe probe, Peak.Held asRead, Peak.Held held, double ofLag) {
    double added = held.noise() * held.noise() - asRead.noise() * asRead.noise();
    return Budget.of(
        BudgetLine.shared(Influence.LAG, ofLag, probe.key()),
        BudgetLine.independent(Influence.LAG_NOISE, Math.sqrt(Math.max(0, added))));
  }

  private FlameResult withPeak(
      Figure peak, Peak.Held held, Figure steady, Optional<LagUndone> lag) {
    double hold = context.held(Settings.PEAK_HOLD);
    Figure at =
        Budget.of(BudgetLine.independent(Influence.SAMPLING, hold / ROOT_12))
            .around(held.at(), Dimension.DURATION);
    Figure bias =
        Budget.of(BudgetLine.independent(Influence.PEAK_BIAS, held.biasUncertainty()))
            .around(held.bias(), Dimension.TEMPERATURE_DIFFERENCE);
    return new FlameResult(peak, at, rise(peak), bias, normalised(peak), steady, lag);
  }

  private static Budget peakBudget(Probe probe, Peak.Held held) {
    return Budget.of(
            BudgetLine.independent(Influence.NOISE, held.noise()),
            BudgetLine.independent(Influence.PEAK_BIAS, held.biasUncertainty()))
        .and(probe.budget(held.celsius()));
  }

  private Figure rise(Figure peak) {
    return ambient.isKnown()
        ? peak.budget()
            .and(ambient.budget())
            .around(peak.orNaN() - ambient.orNaN(), Dimension.TEMPERATURE_DIFFERENCE)
        : ambient;
  }

  private Figure normalised(Figure peak) {
    return ambient.isKnown()
        ? peak.budget()
            .and(ambient.budget())
            .around(
                peak.orNaN() + context.references().ambient() - ambient.orNaN(),
                Dimension.TEMPERATURE)
        : ambient;
  }

  private Figure steady(PreparedChannel flame) {
    OptionalDouble start = timeline.at(Event.GAS_LIT);
    double from = start.orElse(from());
    double to = timeline.at(Event.FLAME_OUT).orElse(Double.POSITIVE_INFINITY);
    Optional<Steady> steady = Steady.of(flame.trace(), from, to);
    if (steady.isEmpty()) {
      return Figure.unknown(FEW_READINGS.with());
    }
    Probe probe = flame.probe();
    return Budget.of(BudgetLine.independent(Influence.NOISE, steady.get().noise()))
        .and(probe.budget(steady.get().celsius()))
        .around(steady.get().celsius(), Dimension.TEMPERATURE);
  }
}
