package fairboil.analysis.run;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.trace.Boil;
import fairboil.analysis.trace.BoilFinder;
import fairboil.analysis.trace.BoilSearch;
import fairboil.analysis.trace.Levelling;
import fairboil.analysis.trace.Peak;
import fairboil.analysis.trace.PeakFinder;
import fairboil.analysis.trace.Trace;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.sheet.Settings;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the water channel shows of the boil.
 *
 * @param boil the boil, or why there is none
 * @param hottest the hottest held water, °C
 * @param probe the probe in the water, if there is one
 * @param lag its lag, if it is known; taken off the boil
 * @param levelUncertainty standard uncertainty of a plateau less the boiling point, K
 * @param heated the readings from the start of the boil time until the pot came off
 */
record WaterShown(
    Boil boil,
    Figure hottest,
    Optional<Probe> probe,
    Optional<Lag> lag,
    double levelUncertainty,
    Trace heated) {

  /** Standard uncertainty from where in the pot the probe sat, K: a judgement. */
  private static final double POSITION = 0.5;

  /** How much hotter than its boiling point water may get at the bottom of a pot, K. */
  private static final double SUPERHEAT = 1;

  static WaterShown of(
      RunContext context, PreparedLog log, Timeline timeline, Figure boilingPoint) {
    Optional<PreparedChannel> water = log.channel(Role.WATER);
    if (water.isEmpty()) {
      Message reason = log.time().isEmpty() ? log.lacking() : LogSays.NO_WATER.with();
      return new WaterShown(
          new Boil.NotSeen(reason),
          Figure.unknown(reason),
          Optional.empty(),
          Optional.empty(),
          POSITION,
          Trace.empty());
    }
    Probe probe = water.get().probe();
    double from = timeline.boilTimeStart().orElse(Double.NEGATIVE_INFINITY);
    double to = timeline.at(Event.POT_OFF).orElse(Double.POSITIVE_INFINITY);
    double u = levelUncertainty(probe, boilingPoint);
    double lag = water.get().lag().map(Lag::seconds).orElse(0.0);
    BoilSearch search = new BoilSearch(from, to, level(boilingPoint), u, lag, probe.resolution());
    Peak hottest = PeakFinder.find(water.get().trace(), from, to, context.held(Settings.PEAK_HOLD));
    return new WaterShown(
        BoilFinder.find(water.get().trace(), search),
        possible(hottest(hottest, probe), boilingPoint, u, water.get(), context.findings()),
        Optional.of(probe),
        water.get().lag(),
        u,
        water.get().trace().between(from, to).withoutMissing());
  }

  /** Water does not get hotter than it boils, but for a little at the bottom of the pot. */
  private static Figure possible(
      Figure hottest, Figure boilingPoint, double u, PreparedChannel channel, Findings findings) {
    boolean possible =
        !hottest.isKnown()
            || !boilingPoint.isKnown()
            || hottest.orNaN() <= boilingPoint.orNaN() + 2 * u + SUPERHEAT;
    if (possible) {
      return hottest;
    }
    findings.error(
        channel.place(),
        WaterSays.TOO_HOT.with(celsius(hottest), celsius(boilingPoint)),
        WaterSays.CHECK_PROBE.with());
    return Figure.unknown(WaterSays.ABOVE_BOILING.with());
  }

  private static Argument celsius(Figure known) {
    return Argument.value(known.orNaN(), 0.2, Dimension.TEMPERATURE);
  }

  private static OptionalDouble level(Figure boilingPoint) {
    return boilingPoint.isKnown()
        ? OptionalDouble.of(boilingPoint.orNaN())
        : OptionalDouble.empty();
  }

  private static double levelUncertainty(Probe probe, Figure boilingPoint) {
    double celsius = boilingPoint.isKnown() ? boilingPoint.orNaN() : 100;
    double ofSensor = Math.hypot(probe.tolerance(celsius), POSITION);
    return Math.hypot(ofSensor, boilingPoint.budget().combined());
  }

  private static Figure hottest(Peak peak, Probe probe) {
    if (peak instanceof Peak.Held held) {
      return Budget.of(
              BudgetLine.independent(Influence.NOISE, held.noise()),
              BudgetLine.independent(Influence.PEAK_BIAS, held.biasUncertainty()))
          .and(probe.budget(held.celsius()))
          .around(held.celsius(), Dimension.TEMPERATURE);
    }
    return Figure.unknown(((Peak.None) peak).reason());
  }

  /** The same, with a boil that is asked about and so counts as not seen. */
  WaterShown asking(Message reason) {
    return new WaterShown(new Boil.NotSeen(reason), hottest, probe, lag, levelUncertainty, heated);
  }

  Optional<Boil.Seen> seen() {
    return boil instanceof Boil.Seen seen ? Optional.of(seen) : Optional.empty();
  }

  /** Why the log shows no boil; empty if it does. */
  Optional<Message> whyNot() {
    return boil instanceof Boil.NotSeen not ? Optional.of(not.reason()) : Optional.empty();
  }

  /** At what level the water held below its boil, °C; empty if it did not hold one. */
  OptionalDouble levelled() {
    return Levelling.find(heated);
  }

  /** When the last reading was taken that shows the water on the fire, s. */
  double until() {
    return heated.size() == 0 ? Double.NEGATIVE_INFINITY : heated.secondsAt(heated.size() - 1);
  }

  /** The longest time between two of these readings, s. */
  double longestGap() {
    double longest = 0;
    for (int i = 1; i < heated.size(); i++) {
      longest = Math.max(longest, heated.secondsAt(i) - heated.secondsAt(i - 1));
    }
    return longest;
  }

  /** Mean of the boiling plateau, °C. */
  Figure plateau() {
    if (!(boil instanceof Boil.Seen seen)) {
      return Figure.unknown(whyNot().orElseThrow());
    }
    Probe sensor = probe.orElseThrow();
    return Budget.of(BudgetLine.independent(Influence.NOISE, seen.level() * seen.heatingRate()))
        .and(sensor.budget(seen.plateau()))
        .around(seen.plateau(), Dimension.TEMPERATURE);
  }

  /** Plateau less boiling point, K. */
  Figure plateauOffset(Figure boilingPoint) {
    Figure plateau = plateau();
    if (!plateau.isKnown() || !boilingPoint.isKnown()) {
      return plateau.isKnown() ? boilingPoint : plateau;
    }
    return plateau
        .budget()
        .and(boilingPoint.budget())
        .and(BudgetLine.independent(Influence.PLACEMENT, POSITION))
        .around(plateau.orNaN() - boilingPoint.orNaN(), Dimension.TEMPERATURE_DIFFERENCE);
  }

  /** For a chart. */
  Optional<Plateau> sketch() {
    return seen()
        .map(
            seen ->
                new Plateau(
                    seen.lineFrom(),
                    seen.lineFromCelsius(),
                    seen.at(),
                    seen.plateauTo(),
                    seen.plateau()));
  }
}
