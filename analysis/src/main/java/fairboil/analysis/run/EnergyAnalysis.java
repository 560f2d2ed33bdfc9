package fairboil.analysis.run;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.heat.Load;
import fairboil.analysis.water.Water;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.Optional;

/** Heat into the water, and the boil time restated by energy scaling. */
final class EnergyAnalysis {

  private static final Template STARTED_BOILING =
      Template.of("the water started at its boiling point");
  private static final Template FAR =
      Template.of(
          "the boil time is worked out for {value} of water, {number} times the {value} that was"
              + " tested");
  private static final Template GO_NEARER =
      Template.of(
          "test with about the reference water, or set “reference water” in {sheet} nearer to what"
              + " was tested");
  private static final double MOST_TIMES_THE_WATER = 1.5;
  private static final double LEAST_TIMES_THE_WATER = 0.67;

  private final RunContext context;
  private final PotFinder pots;
  private final Figure water;
  private final Figure start;
  private final Figure boilingPoint;

  /**
   * For a run.
   *
   * @param water mass of water, kg
   * @param start temperature of the water at the start, °C
   * @param boilingPoint at the run's pressure, °C
   */
  EnergyAnalysis(
      RunContext context, PotFinder pots, Figure water, Figure start, Figure boilingPoint) {
    this.context = context;
    this.pots = pots;
    this.water = water;
    this.start = start;
    this.boilingPoint = boilingPoint;
  }

  /** What was heated, with the pot's capacity. */
  private record Task(Load load, PotFinder.Capacity pot) {}

  private Optional<Task> task() {
    if (!water.isKnown() || !start.isKnown() || !boilingPoint.isKnown()) {
      return Optional.empty();
    }
    double from = Math.max(Water.MIN_CELSIUS, start.orNaN());
    double to = Math.min(Water.MAX_CELSIUS, boilingPoint.orNaN());
    if (from >= to) {
      return Optional.empty();
    }
    PotFinder.Capacity pot = pots.own(water.orNaN());
    return Optional.of(new Task(new Load(water.orNaN(), pot.joulesPerKelvin(), from, to), pot));
  }

  /** Why the heat into the water is not known. */
  private Message missing() {
    for (Figure needed : new Figure[] {water, start, boilingPoint}) {
      if (needed instanceof Figure.Unknown unknown) {
        return unknown.reason();
      }
    }
    return STARTED_BOILING.with();
  }

  /** Heat capacity of water and pot, J/K. */
  Figure heatCapacity() {
    Optional<Task> task = task();
    if (task.isEmpty()) {
      return Figure.unknown(missing());
    }
    Load load = task.get().load();
    double perKilogram = load.heatPerKilogram() / (load.to() - load.from());
    return water
        .budget()
        .scaledBy(perKilogram)
        .and(BudgetLine.independent(Influence.POT, task.get().pot().uncertainty()))
        .around(load.heatCapacity(), Dimension.ENERGY);
  }

  /** The pot as the heat balance needs it. */
  Optional<HeatRecord.PotHeat> potHeat() {
    Optional<Double> other =
        context.study().settings().value(Settings.REFERENCE_POT).isPresent()
            ? task()
                .map(task -> pots.reference(task.pot(), context.references().water()))
                .map(PotFinder.Capacity::joulesPerKelvin)
            : Optional.empty();
    return task()
        .map(Task::pot)
        .map(pot -> new HeatRecord.PotHeat(pot.joulesPerKelvin(), pot.uncertainty(), other));
  }

  EnergyResult result(Figure boilTime) {
    Optional<Task> task = task();
    Figure power = task.map(known -> power(known, boilTime)).orElse(Figure.unknown(missing()));
    Figure scaled = task.map(known -> scaled(known, boilTime)).orElse(Figure.unknown(missing()));
    return EnergyResult.byScaling(power, scaled);
  }

  private Figure power(Task task, Figure boilTime) {
    if (!boilTime.isKnown()) {
      return boilTime;
    }
    double seconds = boilTime.orNaN();
    double power = task.load().heat() / seconds;
    return inputs(task, 1 / seconds)
        .and(asOne(boilTime.budget(), power / seconds))
        .around(power, Dimension.POWER);
  }

  private Figure scaled(Task task, Figure boilTime) {
    if (!boilTime.isKnown()) {
      return boilTime;
    }
    Optional<Load> reference = reference(task.pot());
    if (reference.isEmpty()) {
      return Figure.unknown(RunSays.REFERENCE_TOO_WARM.with());
    }
    tellIfFar(task.load(), reference.get());
    double seconds = task.load().timeFor(reference.get(), boilTime.orNaN());
    return inputs(task, seconds / task.load().heat())
        .and(boilTime.budget().scaledBy(seconds / boilTime.orNaN()))
        .around(seconds, Dimension.DURATION);
  }

  private Optional<Load> reference(PotFinder.Capacity own) {
    References to = context.references();
    double from = Math.max(Water.MIN_CELSIUS, to.start());
    double capacity = pots.reference(own, to.water()).joulesPerKelvin();
    boolean possible =
        to.water() > 0 && to.boilingPoint() > from && to.boilingPoint() <= Water.MAX_CELSIUS;
    return possible
        ? Optional.of(new Load(to.water(), capacity, from, to.boilingPoint()))
        : Optional.empty();
  }

  private void tellIfFar(Load own, Load reference) {
    double times = reference.water() / own.water();
    if (times > MOST_TIMES_THE_WATER || times < LEAST_TIMES_THE_WATER) {
      context
          .findings()
          .warning(
              context.place(RunsSheet.WATER),
              FAR.with(water(reference.water()), Argument.number(times, 2), water(own.water())),
              GO_NEARER.with(RunSays.STUDY));
    }
  }

  private static Argument water(double kilograms) {
    return Argument.value(kilograms, 0.02, Dimension.MASS);
  }

  /** What water, start, boiling point and pot add, per joule of the load's heat. */
  private Budget inputs(Task task, double perJoule) {
    Load load = task.load();
    return asOne(water.budget(), load.heatPerKilogram() * perJoule, Influence.WATER_MASS)
        .and(start.budget().scaledBy(load.heatPerKelvin(load.from()) * perJoule))
        .and(
            asOne(
                boilingPoint.budget(),
                load.heatPerKelvin(load.to()) * perJoule,
                Influence.BOILING_POINT))
        .and(
            BudgetLine.independent(
                Influence.POT, task.pot().uncertainty() * (load.to() - load.from()) * perJoule));
  }

  private static Budget asOne(Budget budget, double sensitivity) {
    return asOne(budget, sensitivity, Influence.BOIL_TIME);
  }

  /** A budget whose lines all bear one name: those of another figure that this one stands on. */
  private static Budget asOne(Budget budget, double sensitivity, Influence name) {
    return budget.scaledBy(sensitivity).named(name);
  }
}
