package fairboil.reports.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecimalTest {

  /** What reads back as the same number is full precision, by definition. */
  @Property
  void readsBackAsTheSameNumber(@ForAll double number) {
    assertThat(Double.parseDouble(Decimal.of(number))).isEqualTo(number == 0 ? 0.0 : number);
  }

  /** IEEE 754: 17 significant digits always suffice for a double. */
  @Property
  void hasAtMostSeventeenDigits(@ForAll double number) {
    assertThat(new BigDecimal(Decimal.of(number)).stripTrailingZeros().precision())
        .isLessThanOrEqualTo(17);
  }

  /** A decimal of up to 15 digits comes back as it was written (IEEE 754, binary64). */
  @Property
  void showsShortDecimalsAsWritten(@ForAll int digits) {
    String written = BigDecimal.valueOf(digits, 3).stripTrailingZeros().toPlainString();
    assertThat(Decimal.of(Double.parseDouble(written))).isEqualTo(digits == 0 ? "0" : written);
  }

  /**
   * 2e-3 and 2^-44 are numbers that some versions of Java print in more digits than needed; the
   * smallest double is 4.94065645841246544e-324, of which one digit suffices (IEEE 754).
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "0.1, 0.1",
    "-273.15, -273.15",
    "2e-3, 0.002",
    "1e-7, 1E-7",
    "-1.25e-9, -1.25E-9",
    "123456789012345, 123456789012345",
    "1e15, 1E15",
    "2e23, 2E23",
    "0.30000000000000004, 0.30000000000000004",
    "5e-324, 5E-324",
    "1.7976931348623157e308, 1.7976931348623157E308"
  })
  void isTheShortest(double number, String text) {
    assertThat(Decimal.of(number)).isEqualTo(text);
  }
}
