package fairboil.ingest.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fairboil.ingest.dimension.Dimension;
import java.util.EnumSet;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Factors against NIST Special Publication 811 (2008), appendix B.8 ("Factors for units listed
 * alphabetically"), with the digits printed there; exact ones stand there in bold. Multiples by SI
 * prefixes are from its section 4.3, minute, hour, day, degree and litre from its table 6. The
 * digits were written down from memory and agree with public unit libraries that carry that table.
 */
class UnitTest {

  /** Half a unit of the last digit printed, for factors of seven digits. */
  private static final double ROUNDED = 5e-7;

  @ParameterizedTest
  @CsvSource({
    // pound (avoirdupois): 4.535 924 E-01; ounce (avoirdupois): 2.834 952 E-02
    "POUND, 0.4535924",
    "OUNCE, 0.02834952",
    // gallon (U.S.): 3.785 412 E-03; quart (U.S. liquid): 9.463 529 E-04
    "US_GALLON, 3.785412e-3",
    "US_QUART, 9.463529e-4",
    // pint (U.S. liquid): 4.731 765 E-04; cup (U.S.): 2.365 882 E-04
    "US_PINT, 4.731765e-4",
    "US_CUP, 2.365882e-4",
    // ounce (U.S. fluid): 2.957 353 E-05; tablespoon: 1.478 676 E-05; teaspoon: 4.928 922 E-06
    "US_FLUID_OUNCE, 2.957353e-5",
    "TABLESPOON, 1.478676e-5",
    "TEASPOON, 4.928922e-6",
    // inch of mercury, conventional: 3.386 389 E+03; millimeter of mercury: 1.333 224 E+02
    "INCH_OF_MERCURY, 3386.389",
    "MILLIMETRE_OF_MERCURY, 133.3224",
    // pound-force per square inch: 6.894 757 E+03
    "POUND_PER_SQUARE_INCH, 6894.757",
    // British thermal unit IT per hour: 2.930 711 E-01; Btu IT: 1.055 056 E+03
    "BTU_PER_HOUR, 0.2930711",
    "BTU, 1055.056",
    // knot: 5.144 444 E-01; kilometer per hour: 2.777 778 E-01
    "KNOT, 0.5144444",
    "KILOMETRE_PER_HOUR, 0.2777778",
    // degree (angle): 1.745 329 E-02
    "DEGREE, 0.01745329"
  })
  void factorsAreThoseOfSp811(Unit unit, double printed) {
    assertThat(Quantity.of(1, unit).value() / printed).isCloseTo(1, within(ROUNDED));
  }

  @ParameterizedTest
  @CsvSource({
    // exact in SP 811, printed in bold there
    "INCH, 0.0254",
    "FOOT, 0.3048",
    "YARD, 0.9144",
    "MILE, 1609.344",
    "SQUARE_INCH, 6.4516e-4",
    "MILE_PER_HOUR, 0.44704",
    "FOOT_PER_SECOND, 0.3048",
    "ATMOSPHERE, 101325",
    "BAR, 1e5",
    "MILLIBAR, 100",
    "BTU_PER_POUND, 2326",
    "KILOWATT_HOUR, 3.6e6",
    "KILOWATT_HOUR_PER_KILOGRAM, 3.6e6",
    // SP 811, table 6 and section 4.3
    "LITRE, 1e-3",
    "MILLILITRE, 1e-6",
    "CUBIC_METRE, 1",
    "MINUTE, 60",
    "HOUR, 3600",
    "DAY, 86400",
    "SECOND, 1",
    "MILLISECOND, 1e-3",
    "MICROSECOND, 1e-6",
    "KILOGRAM, 1",
    "GRAM, 1e-3",
    "MILLIGRAM, 1e-6",
    "METRE, 1",
    "CENTIMETRE, 1e-2",
    "MILLIMETRE, 1e-3",
    "KILOMETRE, 1e3",
    "SQUARE_METRE, 1",
    "SQUARE_CENTIMETRE, 1e-4",
    "SQUARE_MILLIMETRE, 1e-6",
    "PASCAL, 1",
    "HECTOPASCAL, 100",
    "KILOPASCAL, 1000",
    "RADIAN, 1",
    "METRE_PER_SECOND, 1",
    "WATT, 1",
    "KILOWATT, 1e3",
    "JOULE, 1",
    "KILOJOULE, 1e3",
    "MEGAJOULE, 1e6",
    "JOULE_PER_KILOGRAM, 1",
    "KILOJOULE_PER_KILOGRAM, 1e3",
    "MEGAJOULE_PER_KILOGRAM, 1e6",
    "WATT_PER_KELVIN, 1",
    "KILOGRAM_PER_SECOND, 1",
    "VOLT, 1",
    "MILLIVOLT, 1e-3",
    "MICROVOLT, 1e-6",
    "FRACTION, 1",
    "PERCENT, 1e-2"
  })
  void exactFactorsAreExact(Unit unit, double factor) {
    assertThat(Quantity.of(1, unit).value()).isCloseTo(factor, within(Math.ulp(factor)));
  }

  @ParameterizedTest
  @CsvSource({
    // derived from the factors above: Btu per hour and degree Fahrenheit (kelvin: 1.8 °F);
    // 1 g/min = 1e-3/60 kg/s; ounce per minute
    "BTU_PER_HOUR_FAHRENHEIT, 0.5275279",
    "GRAM_PER_MINUTE, 1.6666667e-5",
    "OUNCE_PER_MINUTE, 4.724921e-4"
  })
  void derivedFactorsFollow(Unit unit, double factor) {
    assertThat(Quantity.of(1, unit).value() / factor).isCloseTo(1, within(ROUNDED));
  }

  // SP 811, B.8: t/°C = (t/°F - 32)/1.8, t/°C = T/K - 273.15; a kelvin is a degree Celsius and 1.8
  // degrees Fahrenheit as an interval.
  @ParameterizedTest
  @CsvSource({
    "212, FAHRENHEIT, 100",
    "32, FAHRENHEIT, 0",
    "-40, FAHRENHEIT, -40",
    "273.15, KELVIN, 0",
    "20, CELSIUS, 20"
  })
  void temperatureScalesMeet(double written, Unit unit, double celsius) {
    assertThat(Quantity.of(written, unit).value()).isCloseTo(celsius, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"1.8, FAHRENHEIT, 1", "-1.8, FAHRENHEIT, -1", "1, KELVIN, 1", "1, CELSIUS, 1"})
  void differencesOfTemperaturesHaveNoOffset(double written, Unit unit, double kelvins) {
    assertThat(unit.toHeld(written, Dimension.TEMPERATURE_DIFFERENCE))
        .isCloseTo(kelvins, within(1e-12));
  }

  /** So that no unit is added without a check of its factor. */
  @Test
  void everyUnitIsCheckedHere() throws ReflectiveOperationException {
    Set<Unit> checked = EnumSet.of(Unit.CELSIUS, Unit.FAHRENHEIT, Unit.KELVIN);
    for (String test :
        new String[] {"factorsAreThoseOfSp811", "exactFactorsAreExact", "derivedFactorsFollow"}) {
      CsvSource source =
          getClass()
              .getDeclaredMethod(test, Unit.class, double.class)
              .getAnnotation(CsvSource.class);
      for (String row : source.value()) {
        checked.add(Unit.valueOf(row.substring(0, row.indexOf(','))));
      }
    }
    assertThat(checked).containsExactlyInAnyOrder(Unit.values());
  }

  @Property
  void convertingThereAndBackChangesNothing(
      @ForAll Unit unit, @ForAll @DoubleRange(min = -1e6, max = 1e6) double written) {
    for (Dimension as : Dimension.values()) {
      if (unit.measures(as)) {
        double back = unit.fromHeld(unit.toHeld(written, as), as);
        assertThat(back).isCloseTo(written, within(1e-9 * Math.max(1000, Math.abs(written))));
      }
    }
  }

  @Property
  void aDifferenceOfPointsIsTheDifference(
      @ForAll @DoubleRange(min = -400, max = 3000) double one,
      @ForAll @DoubleRange(min = -400, max = 3000) double other) {
    Unit unit = Unit.FAHRENHEIT;
    double points =
        unit.toHeld(one, Dimension.TEMPERATURE) - unit.toHeld(other, Dimension.TEMPERATURE);
    assertThat(unit.toHeld(one - other, Dimension.TEMPERATURE_DIFFERENCE))
        .isCloseTo(points, within(1e-9));
  }

  @Test
  void aUnitRefusesOtherDimensions() {
    assertThatThrownBy(() -> Unit.GRAM.toHeld(1, Dimension.LENGTH))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
