package fairboil.reports.print;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Inches as on a rule; an inch is 25.4 mm exactly (NIST Special Publication 811, appendix B). */
class LengthsTest {

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "0.3, 0",
    "-0.3, 0",
    "0.5, 1/32",
    "25, 31/32",
    "25.1, 1",
    "25.4, 1",
    "38.1, 1 1/2",
    "85.725, 3 3/8",
    "86.5, 3 13/32",
    "254, 10",
    "-12.7, −1/2",
    "-31.75, −1 1/4"
  })
  void inchesAreFractionsOfARule(double mm, String expected) {
    assertThat(Lengths.inches(mm)).isEqualTo(expected);
  }
}
