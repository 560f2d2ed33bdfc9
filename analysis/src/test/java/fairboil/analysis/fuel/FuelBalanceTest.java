package fairboil.analysis.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.figure.Measured;
import fairboil.ingest.dimension.Dimension;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FuelBalanceTest {

  private static final Figure BOILING = exact(98, Dimension.TEMPERATURE);

  /**
   * A hand-worked example of the project's own, not a published one: 400 g of fuel with 10 % of
   * water, 20 g of char, 5 kg of water from 20 °C to the boil at 98 °C, 150 g boiled away, 22 min.
   */
  private static Map<Known, Figure> example() {
    Map<Known, Figure> known = new EnumMap<>(Known.class);
    known.put(Known.MOIST_FUEL, exact(0.4, Dimension.MASS));
    known.put(Known.MOISTURE, exact(0.1, Dimension.RATIO));
    known.put(Known.HEATING_VALUE, exact(18e6, Dimension.SPECIFIC_ENERGY));
    known.put(Known.CHAR, exact(0.02, Dimension.MASS));
    known.put(Known.CHAR_HEATING_VALUE, exact(29.5e6, Dimension.SPECIFIC_ENERGY));
    known.put(Known.AIR, exact(22, Dimension.TEMPERATURE));
    known.put(Known.BOILING_POINT, BOILING);
    known.put(Known.WATER, exact(5, Dimension.MASS));
    known.put(Known.START, exact(20, Dimension.TEMPERATURE));
    known.put(Known.HOTTEST, BOILING);
    known.put(Known.WATER_LEFT, exact(4.85, Dimension.MASS));
    known.put(Known.BURNING, exact(22 * 60, Dimension.DURATION));
    return known;
  }

  private static Figure exact(double value, Dimension dimension) {
    return Figure.known(Measured.exact(value, dimension));
  }

  private static Map<Known, Figure> with(Known which, double value, double u, Influence influence) {
    Map<Known, Figure> known = example();
    Dimension dimension = known.get(which).ifKnown().orElseThrow().dimension();
    known.put(which, Budget.of(BudgetLine.independent(influence, u)).around(value, dimension));
    return known;
  }

  /**
   * Worked by hand with 4.186 kJ/(kg K) and 2257 kJ/kg for drying, 2260 kJ/kg for steam, of which
   * the values of IAPWS used here differ by less than 0.1 %: dry fuel {@code (400 (18000 × 0.9 −
   * 0.1 (4.186 × 76 + 2257)) − 20 × 29500) / 18000 = 321.50 g}; useful heat {@code 5000 × 4.186 ×
   * 78 + 150 × 2260 = 1,971,540 J}.
   */
  @Test
  void handWorkedExample() {
    FuelBalance balance = new FuelBalance(example());

    assertThat(balance.dryFuel().orNaN()).isCloseTo(0.3214997, withinPercentage(0.02));
    assertThat(60_000 * balance.burningRate().orNaN()).isCloseTo(14.61362, withinPercentage(0.02));
    assertThat(balance.firepower().orNaN()).isCloseTo(4384.087, withinPercentage(0.02));
    assertThat(balance.efficiency().orNaN()).isCloseTo(0.340685, withinPercentage(0.1));
    assertThat(balance.specificConsumption().orNaN()).isCloseTo(0.0662886, withinPercentage(0.02));
  }

  /** Cooking power is firepower times efficiency: 1,971,540 J over 1,320 s. */
  @Test
  void firepowerTimesEfficiencyIsTheHeatInThePot() {
    FuelBalance balance = new FuelBalance(example());

    assertThat(balance.firepower().orNaN() * balance.efficiency().orNaN())
        .isCloseTo(1493.591, withinPercentage(0.1));
  }

  @Test
  void charNotCreditedIsWasted() {
    FuelBalance balance = new FuelBalance(example());
    double freed = 0.3214997 * 18;

    assertThat(balance.efficiencyWithoutChar().orNaN() / balance.efficiency().orNaN())
        .isCloseTo(freed / (freed + 0.02 * 29.5), within(1e-4));
  }

  /** The same heat again takes the same fuel again; half the heat, half the fuel. */
  @Test
  void fuelForAHeatIsInProportion() {
    FuelBalance balance = new FuelBalance(example());

    assertThat(balance.dryFuelFor(1_971_540).orNaN()).isCloseTo(0.3215, withinPercentage(0.1));
    assertThat(balance.dryFuelFor(985_770).orNaN()).isCloseTo(0.16075, withinPercentage(0.1));
  }

  /**
   * By hand: 4 g on 400 g of fuel are {@code 4 × (16200 − 257.5) / 18000 = 3.543 g} of dry fuel; a
   * point of moisture is {@code 400 × (18000 + 2575.1) / 18000 × 0.01 = 4.572 g}.
   */
  @Test
  void budgetOfDryFuelByHand() {
    Figure ofMass = new FuelBalance(with(Known.MOIST_FUEL, 0.4, 0.004, Influence.SCALE)).dryFuel();
    Figure ofMoisture =
        new FuelBalance(with(Known.MOISTURE, 0.1, 0.01, Influence.MOISTURE)).dryFuel();

    assertThat(1000 * ofMass.budget().combined()).isCloseTo(3.543, withinPercentage(0.1));
    assertThat(1000 * ofMoisture.budget().combined()).isCloseTo(4.572, withinPercentage(0.1));
    assertThat(ofMoisture.budget().lines())
        .extracting(BudgetLine::influence)
        .containsExactly(Influence.MOISTURE);
  }

  /** Where the water boiled, end and boiling point are one: by hand 5 × 4.19 kJ per kelvin. */
  @Test
  void theBoilingPointMovesTheEndOfHeating() {
    Map<Known, Figure> known = with(Known.BOILING_POINT, 98, 0.8, Influence.BOILING_POINT);
    known.put(Known.HOTTEST, known.get(Known.BOILING_POINT));
    Figure efficiency = new FuelBalance(known).efficiency();

    double share = (5 * 4190 - 0.15 * 2600) * 0.8 / 1_971_540;
    assertThat(efficiency.budget().combined() / efficiency.orNaN())
        .isCloseTo(share, withinPercentage(3));
  }

  @Test
  void whatNeedsTheUnknownIsUnknownForItsReason() {
    Map<Known, Figure> known = example();
    known.put(Known.CHAR, Figure.unknown("the char was not weighed"));
    FuelBalance balance = new FuelBalance(known);

    assertThat(balance.dryFuel()).isEqualTo(Figure.unknown("the char was not weighed"));
    assertThat(balance.efficiency()).isEqualTo(Figure.unknown("the char was not weighed"));
    assertThat(balance.efficiencyWithoutChar().isKnown()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "spruce pellets, CONIFER",
    "Douglas fir sticks, CONIFER",
    "white ash, BROADLEAF",
    "pine cones, CONES",
    "pellets, WOOD",
    "dry twigs, WOOD"
  })
  void kindsOfWoodByTheWordsOfPeople(String words, WoodFuel kind) {
    assertThat(WoodFuel.named(words)).contains(kind);
  }

  @ParameterizedTest
  @CsvSource({"straw pellets", "methylated spirit", "''"})
  void otherFuelsAreNotTakenForWood(String words) {
    assertThat(WoodFuel.named(words)).isEmpty();
  }

  /** ENplus A1 pellets as received: at least 16.5 MJ/kg at 10 % of water (from memory). */
  @Test
  void pelletsReachWhatTheirStandardAsksFor() {
    double wet = 0.9 * WoodFuel.CONIFER.heatingValue() - 0.1 * 2.443e6;

    assertThat(wet).isBetween(16.5e6, 17.5e6);
  }
}
