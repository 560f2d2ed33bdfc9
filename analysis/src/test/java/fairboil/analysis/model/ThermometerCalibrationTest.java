package fairboil.analysis.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** JCGM 100:2008, H.3: a thermometer calibrated by a straight line through 11 corrections. */
class ThermometerCalibrationTest {

  private static final double[] READINGS = {
    21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
  };
  private static final double[] CORRECTIONS = {
    -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
  };

  private final LinearFit fit =
      LinearFit.of(
              Regressors.line("above 20 °C", Arrays.stream(READINGS).map(t -> t - 20).toArray()),
              CORRECTIONS)
          .orElseThrow();

  // Printed: y1 −0.1712 with s 0.0029, y2 0.00218 with s 0.00067, s 0.0035; more digits by R 4.2.2.
  @Test
  void interceptSlopeAndScatter() {
    assertThat(fit.estimate(Regressors.INTERCEPT)).isCloseTo(-0.17120379, within(1e-8));
    assertThat(fit.standardError(Regressors.INTERCEPT)).isCloseTo(0.00287760, within(1e-8));
    assertThat(fit.estimate("above 20 °C")).isCloseTo(0.00218270, within(1e-8));
    assertThat(fit.standardError("above 20 °C")).isCloseTo(0.00066794, within(1e-8));
    assertThat(fit.residualSd()).isCloseTo(0.00349756, within(1e-8));
  }

  // Printed: the correction at 30 °C is −0.1494 with u 0.0041. Intercept and slope are correlated
  // by
  // −0.930; without that, u would be 0.0073.
  @Test
  void correctionAt30Degrees() {
    assertThat(fit.fitted(1, 10)).isCloseTo(-0.14937681, within(1e-8));
    assertThat(fit.standardErrorAt(1, 10)).isCloseTo(0.00413860, within(1e-8));
  }
}
