package fairboil.reports.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checked against java.math.BigDecimal. */
class FixedTest {

  private static String exact(double number, int decimals) {
    BigDecimal shown = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_EVEN);
    return shown.signum() == 0 ? shown.abs().toPlainString() : minus(shown.toPlainString());
  }

  private static String minus(String text) {
    return text.replace('-', '\u2212');
  }

  @Property
  void roundsAnyNumberAsItIsWritten(
      @ForAll double number, @ForAll @IntRange(max = 9) int decimals) {
    assertThat(Fixed.of(number, decimals)).isEqualTo(exact(number, decimals));
  }

  @Property
  void roundsShortDecimalsAsTheyAreWritten(
      @ForAll int digits,
      @ForAll @IntRange(max = 8) int places,
      @ForAll @IntRange(max = 7) int decimals) {
    double number = BigDecimal.valueOf(digits, places).doubleValue();
    assertThat(Fixed.of(number, decimals)).isEqualTo(exact(number, decimals));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 0",
    "-0.0, 1, 0.0",
    "-0.04, 1, 0.0",
    "0.05, 1, 0.0",
    "0.15, 1, 0.2",
    "0.285, 2, 0.28",
    "1.005, 2, 1.00",
    "2.5, 0, 2",
    "-3.5, 0, −4",
    "0.0072, 3, 0.007",
    "99.95, 1, 100.0",
    "1234567890.5, 0, 1234567890",
    "1e22, 1, 10000000000000000000000.0"
  })
  void halvesGoToTheEvenDigit(double number, int decimals, String text) {
    assertThat(Fixed.of(number, decimals)).isEqualTo(text);
  }
}
