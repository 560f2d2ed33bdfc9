package fairboil.ingest.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.ingest.dimension.Dimension;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conversions are those of NIST SP 811 (2008); here it is the reading that is tested. */
class QuantityTextTest {

  private static Reading<Quantity> read(String text, String dimensions, DecimalMark mark) {
    List<Dimension> wanted =
        Arrays.stream(dimensions.split("\\+", -1)).map(Dimension::valueOf).toList();
    return QuantityText.read(text, wanted, Optional.empty(), mark);
  }

  private static Quantity value(Reading<Quantity> reading) {
    assertThat(reading).isInstanceOf(Reading.Read.class);
    return ((Reading.Read<Quantity>) reading).value();
  }

  private static Reading.Refused<Quantity> refusal(Reading<Quantity> reading) {
    assertThat(reading).isInstanceOf(Reading.Refused.class);
    return (Reading.Refused<Quantity>) reading;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        // text | wanted | number as written | unit | step as written
        "24 fl oz|MASS+VOLUME|24|US_FLUID_OUNCE|1",
        "1½ cups|MASS+VOLUME|1.5|US_CUP|0.5",
        "½ cup|VOLUME|0.5|US_CUP|0.5",
        "13 3/16\"|LENGTH|13.1875|INCH|0.0625",
        "13 3/16”|LENGTH|13.1875|INCH|0.0625",
        "1-3/8 in|LENGTH|1.375|INCH|0.125",
        "3/16 in.|LENGTH|0.1875|INCH|0.0625",
        "1 lb 4 oz|MASS+VOLUME|20|OUNCE|1",
        "1 lb, 4.5 oz|MASS|20.5|OUNCE|0.1",
        "2 lbs & 1 oz|MASS|33|OUNCE|1",
        "68F|TEMPERATURE|68|FAHRENHEIT|1",
        "68 °F|TEMPERATURE|68|FAHRENHEIT|1",
        "20,5 °C|TEMPERATURE|20.5|CELSIUS|0.1",
        "−5 ºC|TEMPERATURE|-5|CELSIUS|1",
        "5'43\"|DURATION|343|SECOND|1",
        "5′43″|DURATION|343|SECOND|1",
        "5’43’’|DURATION|343|SECOND|1",
        "5'43\"|LENGTH|103|INCH|1",
        "5m43s|DURATION|343|SECOND|1",
        "5 min 43.5 s|DURATION|343.5|SECOND|0.1",
        "1h 5m|DURATION|65|MINUTE|1",
        "0:05:43|DURATION|343|SECOND|1",
        "1:22,3|DURATION|82.3|SECOND|0.1",
        "1:22.307|DURATION|82.307|SECOND|0.001",
        "75:10|DURATION|4510|SECOND|1",
        "00h.00m.04s.05ms|DURATION|4005|MILLISECOND|1",
        "5,280 ft|LENGTH|5280|FOOT|1",
        "1 234 mm|LENGTH|1234|MILLIMETRE|1",
        "1\u00A0234\u00A0mm|LENGTH|1234|MILLIMETRE|1",
        "1\u2009234\u202Fmm|LENGTH|1234|MILLIMETRE|1",
        "1.234,5 g|MASS|1234.5|GRAM|0.1",
        "1,234.5 g|MASS|1234.5|GRAM|0.1",
        "1.2e3 g|MASS|1200|GRAM|100",
        ".5 kg|MASS|0.5|KILOGRAM|0.1",
        "'12 g|MASS|12|GRAM|1",
        "12-oz|MASS|12|OUNCE|1",
        "500 (ml)|VOLUME|500|MILLILITRE|1",
        "8 %|RATIO|8|PERCENT|1",
        "3 Btu/(h °F)|CONDUCTANCE|3|BTU_PER_HOUR_FAHRENHEIT|1",
        "2 °F|TEMPERATURE_DIFFERENCE|2|FAHRENHEIT|1"
      })
  void readsWhatPeopleWrite(String text, String wanted, double number, Unit unit, double step) {
    Quantity quantity = value(read(text, wanted, DecimalMark.POINT));

    Dimension dimension = quantity.dimension();
    double held = unit.toHeld(number, dimension);
    assertThat(quantity.value()).isCloseTo(held, within(1e-12 * Math.max(1, Math.abs(held))));
    assertThat(quantity.resolution())
        .isCloseTo(unit.toHeld(step, dimension.ofDifference()), within(1e-15));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "24 oz|MASS+VOLUME|could be a mass or a volume|24 oz wt",
        "5.43|DURATION|has no unit|5.43 min or 5.43 s",
        "5.43|DURATION|has no unit|5:43",
        "24|MASS+VOLUME|has no unit|24 g",
        "0|TEMPERATURE|has no unit|0 °C",
        "8|RATIO|has no unit|8 %",
        "20°|TEMPERATURE|does not say °C or °F|20°F",
        "5-6|MASS|is a range|the one value",
        "5–6 g|MASS|is a range|the one value",
        "5 g to 6 g|MASS|is a range|the one value",
        "20 ± 1 °C|TEMPERATURE|is a range|the one value",
        "06-May|MASS|is a date|as text",
        "May 6|MASS|is a date|as text",
        "6-Jan-26|LENGTH|is a date|as text",
        "2026-05-06|LENGTH|is a date|as text",
        "05/06/2026|LENGTH|is a date|as text",
        "300 s|MASS|is a time, not a mass|500 g",
        "5:43|MASS|is a time, not a mass|500 g",
        "1 lb 4|MASS|has no unit after 4|after each number",
        "4 oz 1 lb|MASS|does not go from larger units|one value",
        "68 °F 2 °F|TEMPERATURE|does not go from larger units|one value",
        "500 foo|MASS|know the unit|use g or oz",
        "boil|TEMPERATURE|is not a number|column of notes",
        "-5 g|MASS|is below zero|check",
        "-500 °F|TEMPERATURE|is below absolute zero|check",
        "1/0 in|LENGTH|divides by zero|that you mean",
        "1.2.3 g|MASS|is not a number|decimal mark",
        "1e400 g|MASS|is too large|check",
        "1:75|DURATION|60 or more|check",
        "1:60:10|DURATION|60 or more|check",
        "00:01:046|DURATION|thousandths|00:01.046",
        "0:0|DURATION|could mean|0:00"
      })
  void asksWhatCouldMeanTwoThings(String text, String wanted, String problem, String remedy) {
    Reading.Refused<Quantity> refused = refusal(read(text, wanted, DecimalMark.POINT));

    assertThat(refused.problem().toString()).contains(problem);
    assertThat(refused.remedy().toString()).contains(remedy);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,250 kg|POINT|1250", "1,250 kg|COMMA|1.25", "1,250 kg|UNKNOWN|",
        "1.250 kg|POINT|1.25", "1.250 kg|COMMA|", "1.250 kg|UNKNOWN|1.25",
        "0,250 kg|POINT|0.25", "0.250 kg|COMMA|0.25", "12,5 kg|UNKNOWN|12.5",
        "1,234,567 kg|UNKNOWN|1234567", "1,2345 kg|POINT|1.2345"
      })
  void aCommaBeforeThreeDigitsIsReadByItsFile(String text, DecimalMark mark, Double kilograms) {
    Reading<Quantity> reading = read(text, "MASS", mark);

    if (kilograms == null) {
      assertThat(refusal(reading).problem().toString()).contains("could be 1250 or 1.25");
    } else {
      assertThat(value(reading).value()).isEqualTo(kilograms);
    }
  }

  @ParameterizedTest
  @CsvSource({"-", "—", "n/a", "NA", "none", "?", "--:--"})
  void knowsWaysToSayNothing(String text) {
    assertThat(read(text, "DURATION", DecimalMark.POINT)).isInstanceOf(Reading.Missing.class);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "~500 ml|taken as 500 ml, though it says about",
        "approx. 500 ml|though it says about",
        "<500 ml|though it is only a bound",
        "500 ml (cold)|the words in brackets were left out",
        "2 cups|US cups"
      })
  void remarksOnWhatItDid(String text, String remark) {
    assertThat(((Reading.Read<Quantity>) read(text, "VOLUME", DecimalMark.POINT)).remark())
        .hasValueSatisfying(said -> assertThat(said.toString()).contains(remark));
  }

  @Property
  void aBareNumberTakesTheUnitOfItsHeader(@ForAll @IntRange(min = -999, max = 9_999_999) int n) {
    String text = String.format(Locale.ROOT, "%.2f", n / 100.0);
    Reading<Quantity> bare =
        QuantityText.read(
            text, List.of(Dimension.LENGTH), Optional.of(Unit.INCH), DecimalMark.UNKNOWN);
    assertThat(bare).isEqualTo(read(text + " in", "LENGTH", DecimalMark.UNKNOWN));
    assertThat(value(bare).in(Unit.INCH)).isCloseTo(n / 100.0, within(1e-9));
  }

  @Property
  void timesWithColonsAndWithWordsAreTheSame(
      @ForAll @IntRange(max = 3) int hours,
      @ForAll @IntRange(max = 59) int minutes,
      @ForAll @IntRange(min = 1, max = 59) int seconds) {
    String colons = String.format(Locale.ROOT, "%d:%02d:%02d", hours, minutes, seconds);
    String words = hours + " h " + minutes + " min " + seconds + " s";
    double total = hours * 3600 + minutes * 60 + seconds;
    assertThat(value(read(colons, "DURATION", DecimalMark.POINT)).value()).isEqualTo(total);
    assertThat(value(read(words, "DURATION", DecimalMark.POINT)).value()).isEqualTo(total);
  }

  /** Whatever stands in a cell, it is read, missing or refused in words. */
  @Property
  void nothingMakesItThrow(@ForAll String text, @ForAll DecimalMark mark) {
    for (Dimension dimension : Dimension.values()) {
      Reading<Quantity> reading =
          QuantityText.read(text, List.of(dimension), Optional.empty(), mark);
      assertThat(reading).isNotNull();
    }
    assertThat(QuantityText.amount(text, Optional.empty(), mark)).isNotNull();
    assertThat(MomentText.read(text, Optional.empty(), mark)).isNotNull();
    assertThat(MomentText.readTimeOfDay(text)).isNotNull();
    assertThat(DateText.read(text)).isNotNull();
  }

  /** The same of texts made of the parts that quantities are made of. */
  @Property
  void noMixtureOfPartsMakesItThrow(@ForAll List<@IntRange(max = 31) Integer> picks) {
    StringBuilder text = new StringBuilder();
    picks.stream().limit(12).forEach(pick -> text.append(PARTS.get(pick)));
    nothingMakesItThrow(text.toString(), DecimalMark.UNKNOWN);
  }

  private static final List<String> PARTS =
      List.of(
          "1", "25", "003", "999", ".", ",", ":", "-", "/", " ", "'", "\"", "½", "°", "C", "F",
          "oz", "lb", "m", "s", "fl oz", "(", ")", "~", "<", "e", "May", "am", "+", "±", "to", "h");
}
