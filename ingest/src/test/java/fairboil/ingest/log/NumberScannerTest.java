package fairboil.ingest.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The reference is {@link Double#parseDouble}: every number must be the very same double. */
class NumberScannerTest {

  private final NumberScanner scanner = new NumberScanner();

  private boolean scan(String text, char mark) {
    return scanner.scan(text.toCharArray(), 0, text.length(), mark);
  }

  private void assertSame(String text) {
    assertThat(scan(text, '.')).as(text).isTrue();
    assertThat(scanner.value()).as(text).isEqualTo(Double.parseDouble(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0",
        "-0",
        "7",
        "007",
        "19.1",
        "+19.1",
        "-40.25",
        ".5",
        "5.",
        "00000100",
        "+4.1508E+01",
        "1e22",
        "1e23",
        "1e-22",
        "1e-23",
        "9.9E37",
        "123456789012345",
        "1234567890123456",
        "0.1234567890123456789",
        "9007199254740993",
        "1.7976931348623157E308",
        "4.9E-324",
        "1e400",
        "1e-400",
        "99999999999999999999999.5",
        "0.000000000000000000000000000001",
        "1E+0005"
      })
  void equalsParseDouble(String text) {
    assertSame(text);
  }

  @Property
  void equalsParseDoubleForAnyDouble(@ForAll double value) {
    assertSame(Double.toString(value));
  }

  @Property
  void equalsParseDoubleForReadings(
      @ForAll @LongRange(min = 0, max = 999_999_999_999_999_999L) long digits,
      @ForAll @IntRange(max = 25) int decimals) {
    assertSame(BigDecimal.valueOf(digits, decimals).toPlainString());
  }

  @Property
  void equalsParseDoubleWithExponents(
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double value,
      @ForAll @IntRange(min = -330, max = 330) int exponent) {
    assertSame(new BigDecimal(value).round(new java.math.MathContext(9)) + "e" + exponent);
  }

  @ParameterizedTest
  @CsvSource({"19, 0", "19.1, 1", "19.25, 2", "+4.1508E+01, 3", "2E1, -1", "5., 0", ".50, 2"})
  void countsDecimals(String text, int decimals) {
    assertThat(scan(text, '.')).isTrue();
    assertThat(scanner.decimals()).isEqualTo(decimals);
  }

  @Test
  void readsDecimalCommas() {
    assertThat(scan("-19,25", ',')).isTrue();
    assertThat(scanner.value()).isEqualTo(-19.25);
    assertThat(scan("19,25", '.')).isFalse();
    assertThat(scan("1234567890,12345678", ',')).isTrue();
    assertThat(scanner.value()).isEqualTo(Double.parseDouble("1234567890.12345678"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "-",
        "+",
        ".",
        "e5",
        "1e",
        "1.2.3",
        "1,2",
        "NaN",
        "Infinity",
        "0x1p3",
        "1d",
        "1f",
        "1 2",
        "--1",
        "1-",
        "\u0661"
      })
  void refusesWhatIsNoNumber(String text) {
    assertThat(scan(text, '.')).isFalse();
  }

  @Test
  void readsTheNumberAtTheStart() {
    char[] text = "23.81C".toCharArray();
    assertThat(scanner.scanPrefix(text, 0, text.length, '.')).isTrue();
    assertThat(scanner.value()).isEqualTo(23.81);
    assertThat(scanner.length()).isEqualTo(5);
  }

  @Test
  void readsLongNumbersInBoundedTime() {
    assertThat(scan("9".repeat(60_000) + ".5", '.')).isTrue();
    assertThat(scanner.value()).isEqualTo(Double.POSITIVE_INFINITY);
  }
}
