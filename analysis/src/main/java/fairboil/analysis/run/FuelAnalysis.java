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
      return FuelResult.unknown("the fuel was not weighed");
    }
    FuelBalance balance = new FuelBalance(known());
    Optional<String> refusal = refusal();
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
      return Figure.unknown("lighting was neither marked nor seen");
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
  private Optional<String> refusal() {
    Optional<WeighedAt> when = context.value(RunsSheet.WEIGHED_AT);
    if (when.isEmpty()) {
      return Optional.of("when the rest of the fuel was weighed is not told");
    }
    if (when.get() == WeighedAt.BOIL && boil.from().isEmpty()) {
      return Optional.of("the fuel was weighed at the boil, and the water did not boil");
    }
    OptionalDouble glow = events.at(Event.GLOW_OUT);
    boolean cameOff = when.get() == WeighedAt.BURNT_OUT && potOffBefore(glow);
    return cameOff
        ? Optional.of("the pot came off before the fuel was burnt out and weighed")
        : Optional.empty();
  }

  private static Optional<Figure> refused(Optional<String> refusal) {
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
            "the char left holds more heat than the fuel burnt",
            "check the weighings of fuel and char, less their container");
    return Figure.unknown("the char left holds more heat than the fuel burnt");
  }

  private Figure possible(Figure efficiency) {
    if (!efficiency.isKnown() || (efficiency.orNaN() > 0 && efficiency.orNaN() <= 1)) {
      return efficiency;
    }
    context
        .findings()
        .error(
            context.place(RunsSheet.FUEL_LOADED),
            Findings.words(
                "an efficiency of %.0f %% is not possible: the water took more heat than this fuel"
                    + " gave",
                100 * efficiency.orNaN()),
            "check the masses of fuel, char and water, before and after, and their units");
    return Figure.unknown("the efficiency would not be possible");
  }

  private static Figure ifPossible(Figure efficiency, Figure figure) {
    return efficiency.isKnown() ? figure : efficiency;
  }

  private Figure perBoil(FuelBalance balance) {
    if (boil.from().isEmpty()) {
      return Figure.unknown("when the water boiled is not known");
    }
    References to = context.references();
    double from = Math.max(Water.MIN_CELSIUS, to.start());
    boolean possible = to.boilingPoint() > from && to.boilingPoint() <= Water.MAX_CELSIUS;
    return possible
        ? balance.dryFuelFor(
            to.water() * (Water.enthalpy(to.boilingPoint()) - Water.enthalpy(from)))
        : Figure.unknown("the reference start is at or above the reference boiling point");
  }
}
