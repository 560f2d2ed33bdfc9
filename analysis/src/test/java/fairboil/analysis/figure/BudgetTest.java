package fairboil.analysis.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Key;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BudgetTest {

  private static BudgetLine line(double contribution, double degreesOfFreedom) {
    return new BudgetLine(Influence.NOISE, contribution, degreesOfFreedom, Optional.empty());
  }

  // JCGM 100:2008, H.1, end-gauge calibration: u(lS) 25 nm with 18 degrees of freedom, u(d) 9.7 nm
  // with 25.6, u(δα) 2.9 nm with 50, u(δθ) 16.6 nm with 2: uc = 32 nm, νeff = 16, U99 = 93 nm.
  @Test
  void endGauge() {
    Budget budget = Budget.of(line(25, 18), line(9.7, 25.6), line(2.9, 50), line(16.6, 2));

    assertThat(budget.combined()).isCloseTo(32, within(0.5));
    assertThat(Math.floor(budget.effectiveDegreesOfFreedom())).isEqualTo(16);
    Measured length = new Measured(838, budget.combined(), 16, Dimension.LENGTH);
    assertThat(length.expandedUncertainty(0.99)).isCloseTo(93, within(1.0));
  }

  // JCGM 100:2008, G.4.1: relative uncertainties of 0.25 %, 0.57 % and 0.82 % with 9, 4 and 14
  // degrees of freedom: uc = 1.03 %, νeff = 19.0, U95 = 2.2 %.
  @Test
  void welchSatterthwaite() {
    Budget budget = Budget.of(line(0.25, 9), line(0.57, 4), line(0.82, 14));

    assertThat(budget.combined()).isCloseTo(1.03, within(0.005));
    assertThat(budget.effectiveDegreesOfFreedom()).isCloseTo(19.0, within(0.05));
    assertThat(
            budget.around(100, Dimension.RATIO).ifKnown().orElseThrow().expandedUncertainty(0.95))
        .isCloseTo(2.15, within(0.01));
  }

  @Test
  void sharedAndIndependentPartsAddUp() {
    Budget budget =
        Budget.of(
            BudgetLine.independent(Influence.NOISE, 3),
            BudgetLine.shared(Influence.SENSOR_TOLERANCE, 4, new Key("study", "bead")));

    assertThat(budget.independent()).isEqualTo(3);
    assertThat(budget.shared()).isEqualTo(4);
    assertThat(budget.combined()).isEqualTo(5);
    assertThat(budget.scaledBy(-2).combined()).isEqualTo(10);
    assertThat(budget.and(line(12, 5)).combined()).isEqualTo(13);
  }

  @Test
  void noLinesIsNoUncertainty() {
    assertThat(Budget.NONE.combined()).isZero();
    assertThat(Budget.NONE.effectiveDegreesOfFreedom()).isInfinite();
  }
}
