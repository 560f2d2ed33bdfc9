package fairboil.ingest.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.dimension.Dimension;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTextTest {

  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "FRACTION")
  void knowsEverySymbol(Unit unit) {
    assertThat(UnitText.meanings(unit.symbol())).contains(unit);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "°C, CELSIUS",
        "º C, CELSIUS",
        "deg. C, CELSIUS",
        "degC, CELSIUS",
        "*C, CELSIUS",
        "Â°C, CELSIUS",
        "\uFFFDC, CELSIUS",
        "℃, CELSIUS",
        "Celsius, CELSIUS",
        "degrees Fahrenheit, FAHRENHEIT",
        "℉, FAHRENHEIT",
        "F, FAHRENHEIT",
        "K, KELVIN",
        "kg, KILOGRAM",
        "Kilograms, KILOGRAM",
        "GRAMS, GRAM",
        "lbs., POUND",
        "pounds, POUND",
        "oz wt, OUNCE",
        "fl. oz., US_FLUID_OUNCE",
        "FL OZ, US_FLUID_OUNCE",
        "fluid ounces, US_FLUID_OUNCE",
        "cups, US_CUP",
        "litres, LITRE",
        "liter, LITRE",
        "cc, MILLILITRE",
        "in., INCH",
        "inches, INCH",
        "feet, FOOT",
        "mm, MILLIMETRE",
        "secs, SECOND",
        "mins, MINUTE",
        "hrs, HOUR",
        "inHg, INCH_OF_MERCURY",
        "in. Hg, INCH_OF_MERCURY",
        "`\"Hg`, INCH_OF_MERCURY",
        "mb, MILLIBAR",
        "km/h, KILOMETRE_PER_HOUR",
        "kph, KILOMETRE_PER_HOUR",
        "knots, KNOT",
        "W/°C, WATT_PER_KELVIN",
        "MJ / kg, MEGAJOULE_PER_KILOGRAM",
        "Btu/(h·°F), BTU_PER_HOUR_FAHRENHEIT",
        "percent, PERCENT",
        "μs, MICROSECOND",
        "µV, MICROVOLT"
      })
  void knowsHowPeopleSpellUnits(String text, Unit unit) {
    assertThat(UnitText.meanings(text)).containsExactly(unit);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "oz, MASS, OUNCE", "oz, VOLUME, US_FLUID_OUNCE", "m, LENGTH, METRE", "m, DURATION, MINUTE",
        "c, VOLUME, US_CUP", "c, TEMPERATURE, CELSIUS", "', LENGTH, FOOT", "', DURATION, MINUTE",
        "`\"`, LENGTH, INCH", "`\"`, DURATION, SECOND"
      })
  void theDimensionWantedDecides(String text, Dimension wanted, Unit unit) {
    assertThat(UnitText.find(text, List.of(wanted))).hasValue(unit);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "k", "RC", "CH", "Cal", "gr", "s1", "g of wood", "oz water"})
  void seeksNoUnitsInsideWords(String text) {
    assertThat(UnitText.meanings(text)).isEmpty();
  }
}
