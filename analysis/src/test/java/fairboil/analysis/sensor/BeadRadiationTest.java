package fairboil.analysis.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.figure.Interval;
import org.junit.jupiter.api.Test;

class BeadRadiationTest {

  private static final double ZERO = 273.15;

  /**
   * A textbook's problem 12-88, answer as printed on a course's solution sheet: 850 K, walls 500 K,
   * emissivity 0.6, 60 W/(m² K): 1111 K.
   */
  @Test
  void textbookProblemOfABareBead() {
    double above = BeadRadiation.gasAboveBead(850 - ZERO, 500 - ZERO, 0.6, 60);

    assertThat(850 + above).isCloseTo(1111, within(1.0));
  }

  /** The same sheet, problem 12-89: 530 K, walls 380 K, 0.7, 120: 549.2 K. */
  @Test
  void textbookProblemOfAHotGas() {
    double above = BeadRadiation.gasAboveBead(530 - ZERO, 380 - ZERO, 0.7, 120);

    assertThat(530 + above).isCloseTo(549.2, within(0.1));
  }

  /**
   * A textbook's problem 9.40, inputs from a course's solution sheet: gas at 1367 K, walls 533 K,
   * 0.5, 114; the root, a bead at 1065.97 K, worked out by a reference solver.
   */
  @Test
  void textbookProblemSolvedForTheBead() {
    double above = BeadRadiation.gasAboveBead(1065.97 - ZERO, 533 - ZERO, 0.5, 114);

    assertThat(1065.97 + above).isCloseTo(1367, within(0.2));
  }

  @Test
  void theRangeHoldsItsCornersAndNoWallIsHotterThanTheBead() {
    Interval low = BeadRadiation.SMALL_FLAME.readsLow(800);

    assertThat(low.low()).isCloseTo(BeadRadiation.gasAboveBead(800, 500, 0.2, 200), within(1e-9));
    assertThat(low.high()).isCloseTo(BeadRadiation.gasAboveBead(800, 100, 0.9, 60), within(1e-9));
    assertThat(BeadRadiation.SMALL_FLAME.readsLow(50)).isEqualTo(new Interval(0, 0));
  }
}
