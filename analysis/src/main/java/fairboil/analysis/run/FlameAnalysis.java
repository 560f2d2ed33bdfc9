package fairboil.analysis.run;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.trace.Lag;
import fairboil.analysis.trace.Peak;
import fairboil.analysis.trace.PeakFinder;
import fairboil.analysis.trace.Steady;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.PeakWindow;
import fairboil.ingest.choice.Role;
import fairboil.ingest.quantity.Dimension;
import fairboil.ingest.sheet.Settings;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the flame channel shows. */
final class FlameAnalysis {

  private static final double ROOT_12 = Math.sqrt(12);

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
      return FlameResult.unknown(
          log.time().isEmpty() ? "the run has no log" : "the log has no flame column");
    }
    Figure steady = steady(flame.get());
    Peak shown = peak(flame.get(), 0);
    if (shown instanceof Peak.Held held) {
      return withPeak(flame.get(), held, steady);
    }
    Figure none = Figure.unknown(((Peak.None) shown).reason());
    return new FlameResult(none, none, none, none, none, none, steady);
  }

  private Peak peak(PreparedChannel flame, double lag) {
    return PeakFinder.find(flame.trace(), from(), to(), context.held(Settings.PEAK_HOLD), lag);
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

  private FlameResult withPeak(PreparedChannel flame, Peak.Held shown, Figure steady) {
    Optional<Lag> lag = flame.lag();
    Peak.Held held =
        lag.isPresent() && peak(flame, lag.get().seconds()) instanceof Peak.Held undone
            ? undone
            : shown;
    Budget ofLag = lag.map(known -> ofLag(known, shown, held, flame.probe())).orElse(Budget.NONE);
    Figure peak =
        peakBudget(flame.probe(), shown, held)
            .and(ofLag)
            .around(held.celsius(), Dimension.TEMPERATURE);
    double hold = context.held(Settings.PEAK_HOLD);
    Figure at =
        Budget.of(BudgetLine.independent(Influence.SAMPLING, hold / ROOT_12))
            .around(held.at(), Dimension.DURATION);
    Figure bias =
        Budget.of(BudgetLine.independent(Influence.PEAK_BIAS, held.biasUncertainty()))
            .around(held.bias(), Dimension.TEMPERATURE_DIFFERENCE);
    Figure undone =
        lag.isPresent()
            ? ofLag.around(held.celsius() - shown.celsius(), Dimension.TEMPERATURE_DIFFERENCE)
            : Figure.unknown("no time constant of the flame probe is told in sensors.csv");
    return new FlameResult(peak, at, rise(peak), bias, undone, normalised(peak), steady);
  }

  /** What undoing the lag is uncertain by: the time constant itself, and the noise it adds. */
  private static Budget ofLag(Lag lag, Peak.Held shown, Peak.Held held, Probe probe) {
    double share = lag.seconds() > 0 ? lag.uncertainty() / lag.seconds() : 0;
    double added = held.noise() * held.noise() - shown.noise() * shown.noise();
    return Budget.of(
        BudgetLine.shared(
            Influence.LAG, share * Math.abs(held.celsius() - shown.celsius()), probe.key()),
        BudgetLine.independent(Influence.LAG_NOISE, Math.sqrt(Math.max(0, added))));
  }

  private static Budget peakBudget(Probe probe, Peak.Held shown, Peak.Held held) {
    return Budget.of(
        BudgetLine.independent(Influence.NOISE, Math.min(shown.noise(), held.noise())),
        BudgetLine.independent(Influence.PEAK_BIAS, held.biasUncertainty()),
        probe.resolutionLine(),
        probe.toleranceLine(held.celsius()));
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
      return Figure.unknown("the flame column has fewer than 10 readings while the flame burnt");
    }
    Probe probe = flame.probe();
    return Budget.of(
            BudgetLine.independent(Influence.NOISE, steady.get().noise()),
            probe.resolutionLine(),
            probe.toleranceLine(steady.get().celsius()))
        .around(steady.get().celsius(), Dimension.TEMPERATURE);
  }
}
