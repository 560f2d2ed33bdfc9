package fairboil.analysis.fuel;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.water.Water;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The heat of the fuel against the heat in the pot.
 *
 * <p>Heat of the fuel: {@code m [q (1 − w) − w (h(Tb) − h(Ta) + L)]}, moist fuel m with moisture w
 * (wet basis) and heating value q, less what warms and boils away its own water. Equivalent dry
 * fuel: that heat, less the heat {@code c q_c} left in the char, over q. Useful heat: {@code M
 * (h(T) − h(T0)) + (M − M') L}, water M warmed and M − M' of it boiled away. The form is that of
 * the water boiling tests of stove laboratories (from memory: their text was not at hand); h and L
 * of water are those of {@link Water}.
 *
 * <p>Uncertainty: JCGM 100:2008, equation (10), with slopes by central differences over a tenth of
 * each standard uncertainty. A figure that needs something unknown is unknown for the same reason.
 */
public final class FuelBalance {

  private static final Template NOTHING = Template.of("nothing was burnt or nothing was heated");

  private static final Known[] FUEL = {
    Known.MOIST_FUEL, Known.MOISTURE, Known.HEATING_VALUE, Known.BOILING_POINT, Known.AIR
  };
  private static final Known[] CHAR = {Known.CHAR, Known.CHAR_HEATING_VALUE};
  private static final Known[] POT = {
    Known.WATER, Known.START, Known.HOTTEST, Known.WATER_LEFT, Known.BOILING_POINT
  };

  private final Map<Known, Figure> known;

  /** The balance of a burn; every {@link Known} must have its figure, known or not. */
  public FuelBalance(Map<Known, Figure> known) {
    this.known = new EnumMap<>(known);
    for (Known each : Known.values()) {
      if (!this.known.containsKey(each)) {
        throw new IllegalArgumentException("nothing is said of " + each);
      }
    }
  }

  /** Dry fuel of as much heat as was set free, char credited, kg. */
  public Figure dryFuel() {
    return figure(Dimension.MASS, FuelBalance::dryFuel, FUEL, CHAR);
  }

  /** Dry fuel per second, kg/s. */
  public Figure burningRate() {
    return figure(
        Dimension.MASS_RATE,
        values -> dryFuel(values) / values.of(Known.BURNING),
        FUEL,
        CHAR,
        new Known[] {Known.BURNING});
  }

  /** Heat set free per second, W. */
  public Figure firepower() {
    return figure(
        Dimension.POWER,
        values -> freed(values) / values.of(Known.BURNING),
        FUEL,
        CHAR,
        new Known[] {Known.BURNING});
  }

  /** Useful heat over the heat set free: the char left counts as not used. */
  public Figure efficiency() {
    return figure(Dimension.RATIO, values -> useful(values) / freed(values), FUEL, CHAR, POT);
  }

  /** Useful heat over the heat of all fuel burnt: the char left counts as wasted. */
  public Figure efficiencyWithoutChar() {
    return figure(Dimension.RATIO, values -> useful(values) / heatOfFuel(values), FUEL, POT);
  }

  /**
   * Equivalent dry fuel per mass of water left at the end, as far as that came towards boiling, a
   * ratio (kg/kg).
   */
  public Figure specificConsumption() {
    return figure(Dimension.RATIO, values -> dryFuel(values) / boiled(values), FUEL, CHAR, POT);
  }

  /**
   * Dry fuel that at this efficiency gives a heat to the water, kg.
   *
   * @param joules the heat, such as that of the reference water from its start to boiling
   */
  public Figure dryFuelFor(double joules) {
    return figure(
        Dimension.MASS, values -> dryFuel(values) * joules / useful(values), FUEL, CHAR, POT);
  }

  private static double heatOfFuel(Values values) {
    double boiling = values.of(Known.BOILING_POINT);
    double air = Math.max(Water.MIN_CELSIUS, values.of(Known.AIR));
    double wet = values.of(Known.MOISTURE);
    double drying = Water.enthalpy(boiling) - Water.enthalpy(air) + Water.latentHeat(boiling);
    double perKilogram = values.of(Known.HEATING_VALUE) * (1 - wet) - wet * drying;
    return values.of(Known.MOIST_FUEL) * perKilogram;
  }

  private static double freed(Values values) {
    return heatOfFuel(values) - values.of(Known.CHAR) * values.of(Known.CHAR_HEATING_VALUE);
  }

  private static double dryFuel(Values values) {
    return freed(values) / values.of(Known.HEATING_VALUE);
  }

  private static double useful(Values values) {
    double hottest = values.of(Known.HOTTEST);
    double warming = Water.enthalpy(hottest) - Water.enthalpy(values.of(Known.START));
    double steam = values.of(Known.WATER) - values.of(Known.WATER_LEFT);
    return values.of(Known.WATER) * warming + steam * Water.latentHeat(hottest);
  }

  private static double boiled(Values values) {
    double start = values.of(Known.START);
    double share = (values.of(Known.HOTTEST) - start) / (values.of(Known.BOILING_POINT) - start);
    return values.of(Known.WATER_LEFT) * share;
  }

  /** Values of what is known, one of them moved a little. */
  private record Values(Map<Known, Double> values, Known moved, double by) {
    double of(Known each) {
      double value = Objects.requireNonNull(values.get(each)) + (each == moved ? by : 0);
      return isTemperature(each)
          ? Math.max(Water.MIN_CELSIUS, Math.min(Water.MAX_CELSIUS, value))
          : value;
    }

    private static boolean isTemperature(Known each) {
      return each == Known.START || each == Known.HOTTEST || each == Known.BOILING_POINT;
    }
  }

  private Figure figure(Dimension dimension, ToDoubleFunction<Values> formula, Known[]... needed) {
    Map<Known, Double> values = new EnumMap<>(Known.class);
    for (Known[] group : needed) {
      for (Known each : group) {
        if (known.get(each) instanceof Figure.Unknown unknown) {
          return unknown;
        }
        values.put(each, Objects.requireNonNull(known.get(each)).orNaN());
      }
    }
    double value = formula.applyAsDouble(new Values(values, Known.WATER, 0));
    return Double.isFinite(value)
        ? budget(values, formula).around(value, dimension)
        : Figure.unknown(NOTHING.with());
  }

  private Budget budget(Map<Known, Double> values, ToDoubleFunction<Values> formula) {
    List<BudgetLine> lines = new ArrayList<>();
    for (Known each : values.keySet()) {
      Budget own = Objects.requireNonNull(known.get(each)).budget();
      double step = own.combined() / 10;
      if (step > 0 && !isBoilingAgain(each)) {
        double up = formula.applyAsDouble(moved(values, each, step));
        double down = formula.applyAsDouble(moved(values, each, -step));
        lines.addAll(own.scaledBy((up - down) / (2 * step)).lines());
      }
    }
    return new Budget(gathered(lines));
  }

  /** Where the water boiled, its highest temperature is the boiling point and moves with it. */
  private boolean isBoilingAgain(Known each) {
    return each == Known.HOTTEST
        && Objects.requireNonNull(known.get(Known.HOTTEST)).equals(known.get(Known.BOILING_POINT));
  }

  private Values moved(Map<Known, Double> values, Known each, double by) {
    boolean both = each == Known.BOILING_POINT && isBoilingAgain(Known.HOTTEST);
    if (!both || !values.containsKey(Known.HOTTEST)) {
      return new Values(values, each, by);
    }
    Map<Known, Double> together = new EnumMap<>(values);
    together.merge(Known.HOTTEST, by, Double::sum);
    return new Values(together, each, by);
  }

  /** What makes lines one: a cause, and the instrument that shares it. */
  private record Cause(Influence influence, Optional<Key> sharedBy) {}

  private static List<BudgetLine> gathered(List<BudgetLine> lines) {
    Map<Cause, BudgetLine> causes = new LinkedHashMap<>();
    for (BudgetLine line : lines) {
      causes.merge(new Cause(line.influence(), line.sharedBy()), line, FuelBalance::together);
    }
    return List.copyOf(causes.values());
  }

  private static BudgetLine together(BudgetLine one, BudgetLine other) {
    return new BudgetLine(
        one.influence(),
        Math.hypot(one.contribution(), other.contribution()),
        Math.min(one.degreesOfFreedom(), other.degreesOfFreedom()),
        one.sharedBy());
  }
}
