package fairboil.analysis.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Hedges' g against R 4.2.2. */
class EffectSizeTest {

  /**
   * trt1 and trt2 of R's PlantGrowth: t −3.010098542 on 18 degrees of freedom; g −1.289142433 as
   * effectsize 0.8.3 has it; ends by uniroot on pt with ncp.
   */
  @Test
  void plantGrowth() {
    double difference = -0.865;
    double standardError = 0.865 / 3.010098542;
    EffectSize size =
        EffectSize.of(difference, standardError, standardError / Math.sqrt(0.2), 18, 0.95)
            .orElseThrow();
    assertThat(size.g()).isCloseTo(-1.289142433, within(1e-8));
    assertThat(size.interval().low()).isCloseTo(-2.212587039, within(1e-6));
    assertThat(size.interval().high()).isCloseTo(-0.337090343, within(1e-6));
  }

  /** By R: gamma(m/2) / (sqrt(m/2) gamma((m-1)/2)). */
  @Test
  void correction() {
    assertThat(EffectSize.correction(18)).isCloseTo(0.957646427, within(1e-9));
    assertThat(EffectSize.correction(4)).isCloseTo(0.7978845608, within(1e-10));
  }

  @Test
  void whereNothingScattersThereIsNone() {
    assertThat(EffectSize.of(1, 0, 0, 5, 0.95)).isEmpty();
    assertThat(EffectSize.of(1, 1, 1, 1, 0.95)).isEmpty();
  }
}
