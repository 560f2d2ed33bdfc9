package fairboil.analysis.run;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.fuel.FuelBalance;
import fairboil.analysis.fuel.Known;
import fairboil.analysis.water.Water;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.WeighedAt;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.sheet.RunsSheet;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The fuel measures of a run, and why some are refused. */
final class FuelAnalysis {

  private static final double USUAL_AIR = 20;
  private static final double USUAL_AIR_UNCERTAINTY = 10;

  private final RunContext context;
  private final EventTimes events;
  private final BoilResult boil;
  private final Conditions conditions;
  private final FuelFinder fuel;
  private final Figure waterLeft;

  FuelAnalysis(
      RunContext context,
      EventTimes events,
      BoilResult boil,
      Conditions conditions,
      Figure waterLeft) {
    this.context = context;
    this.events = events;
    this.boil = boil;
    this.conditions = conditions;
    this.fuel = new FuelFinder(context);
    this.waterLeft = waterLeft;
  }

  FuelResult result() {
    if (fuel.isNotWeighed()) {
      return FuelResult.unknown(FuelSays.NOT_WEIGHED.with());
    }
    FuelBalance balance = new FuelBalance(known());
    Optional<Message> refusal = refusal();
    Figure efficiency = refused(refusal).orElseGet(() -> possible(balance.efficiency()));
    Figure withoutChar =
        refused(refusal).orElseGet(() -> possible(balance.efficiencyWithoutChar()));
    return new FuelResult(
        above(balance.dryFuel()),
        above(balance.burningRate()),
        above(balance.firepower()),
        efficiency,
        withoutChar,
        refused(refusal).orElseGet(() -> ifPossible(efficiency, balance.specificConsumption())),
        ifPossible(efficiency, perBoil(balance)));
  }

  private Map<Known, Figure> known() {
    Map<Known, Figure> known = new EnumMap<>(Known.class);
    known.put(Known.MOIST_FUEL, fuel.moist());
    known.put(Known.MOISTURE, fuel.moisture());
    known.put(Known.HEATING_VALUE, fuel.heatingValue());
    known.put(Known.CHAR, fuel.charLeft());
    known.put(Known.CHAR_HEATING_VALUE, fuel.charHeatingValue());
    known.put(Known.AIR, air());
    known.put(Known.BOILING_POINT, conditions.boilingPoint());
    known.put(Known.WATER, conditions.water());
    known.put(Known.START, conditions.waterStart());
    boolean boiled = boil.from().isPresent();
    known.put(Known.HOTTEST, boiled ? conditions.boilingPoint() : boil.hottestWater());
    known.put(Known.WATER_LEFT, waterLeft);
    known.put(Known.BURNING, burning());
    return known;
  }

  /** What dries the fuel starts at the air's temperature; roughly is enough. */
  private Figure air() {
    return conditions.ambient().isKnown()
        ? conditions.ambient()
        : Budget.of(BudgetLine.independent(Influence.AMBIENT, USUAL_AIR_UNCERTAINTY))
            .around(USUAL_AIR, Dimension.TEMPERATURE);
  }

  /** How long the fuel burnt that was weighed, s: lit to flame out, or to when it was smothered. */
  private Figure burning() {
    Optional<WeighedAt> when = context.value(RunsSheet.WEIGHED_AT);
    if (when.filter(WeighedAt.BOIL::equals).isPresent()) {
      return asOne(boil.litToBoil());
    }
    boolean smothered = when.filter(WeighedAt.POT_OFF::equals).isPresent() && potOffBefore(out());
    return smothered ? litToPotOff() : asOne(boil.burnTime());
  }

  private OptionalDouble out() {
    return events.at(Event.FLAME_OUT);
  }

  private boolean potOffBefore(OptionalDouble end) {
    OptionalDouble off = events.at(Event.POT_OFF);
    return off.isPresent() && (end.isEmpty() || off.getAsDouble() < end.getAsDouble());
  }

  private Figure litToPotOff() {
    OptionalDouble lit = events.at(Event.LIT);
    double seconds = events.at(Event.POT_OFF).orElseThrow() - lit.orElse(Double.NaN);
    if (!(seconds > 0)) {
      return Figure.unknown(RunSays.NO_LIGHTING.with());
    }
    double u = Math.hypot(events.uncertainty(Event.LIT), events.uncertainty(Event.POT_OFF));
    return Budget.of(BudgetLine.independent(Influence.STOPWATCH, u))
        .around(seconds, Dimension.DURATION);
  }

  private static Figure asOne(Figure duration) {
    return duration.isKnown()
        ? Budget.of(BudgetLine.independent(Influence.STOPWATCH, duration.budget().combined()))
            .around(duration.orNaN(), Dimension.DURATION)
        : duration;
  }

  /** Why heat in the pot and fuel burnt do not belong together, if they do not. */
  private Optional<Message> refusal() {
    Optional<WeighedAt> when = context.value(RunsSheet.WEIGHED_AT);
    if (when.isEmpty()) {
      return Optional.of(FuelSays.NO_WEIGHED_AT.with());
    }
    if (when.get() == WeighedAt.BOIL && boil.from().isEmpty()) {
      return Optional.of(FuelSays.WEIGHED_AT_BOIL.with());
    }
    OptionalDouble glow = events.at(Event.GLOW_OUT);
    boolean cameOff = when.get() == WeighedAt.BURNT_OUT && potOffBefore(glow);
    return cameOff ? Optional.of(FuelSays.POT_OFF.with()) : Optional.empty();
  }

  private static Optional<Figure> refused(Optional<Message> refusal) {
    return refusal.map(Figure::unknown);
  }

  /** An amount of heat or fuel below nothing is no result. */
  private Figure above(Figure figure) {
    if (!figure.isKnown() || figure.orNaN() > 0) {
      return figure;
    }
    context
        .findings()
        .error(
            context.place(RunsSheet.CHAR_LEFT),
            FuelSays.CHAR_TOO_HOT.with(),
            FuelSays.CHECK_CHAR.with());
    return Figure.unknown(FuelSays.CHAR_TOO_HOT.with());
  }

  private Figure possible(Figure efficiency) {
    if (!efficiency.isKnown() || (efficiency.orNaN() > 0 && efficiency.orNaN() <= 1)) {
      return efficiency;
    }
    context
        .findings()
        .error(
            context.place(RunsSheet.FUEL_LOADED),
            FuelSays.TOO_EFFICIENT.with(Argument.share(efficiency.orNaN())),
            FuelSays.CHECK_MASSES.with());
    return Figure.unknown(FuelSays.NOT_EFFICIENT.with());
  }

  private static Figure ifPossible(Figure efficiency, Figure figure) {
    return efficiency.isKnown() ? figure : efficiency;
  }

  private Figure perBoil(FuelBalance balance) {
    if (boil.from().isEmpty()) {
      return Figure.unknown(RunSays.NO_BOIL_TIME.with());
    }
    References to = context.references();
    double from = Math.max(Water.MIN_CELSIUS, to.start());
    boolean possible = to.boilingPoint() > from && to.boilingPoint() <= Water.MAX_CELSIUS;
    return possible
        ? balance.dryFuelFor(
            to.water() * (Water.enthalpy(to.boilingPoint()) - Water.enthalpy(from)))
        : Figure.unknown(RunSays.REFERENCE_TOO_WARM.with());
  }
}
