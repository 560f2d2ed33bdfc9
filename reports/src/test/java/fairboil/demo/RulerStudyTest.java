package fairboil.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The numbers of R belong to the numbers of the study: least squares by the school formula. */
final class RulerStudyTest {

  @Test
  void slopeThroughTheMeansIsThatOfR() {
    List<Double> means =
        RulerStudy.PEAKS.stream()
            .map(burns -> burns.stream().mapToInt(Integer::intValue).average().orElseThrow())
            .toList();
    assertThat(slope(RulerStudy.RMS, means))
        .isCloseTo(RulerStudy.BUILD_MEANS.slope(), within(1e-10));
  }

  @Test
  void logsHoldTheVeryPeaks() {
    assertThat(RulerStudy.files().get("logs/R2-2.csv"))
        .contains("\n80,718.0,")
        .contains("\n900,718.0,")
        .doesNotContain(",718.1,");
  }

  private static double slope(List<Double> xs, List<Double> ys) {
    double n = xs.size();
    double meanX = xs.stream().mapToDouble(Double::doubleValue).sum() / n;
    double above = 0;
    double below = 0;
    for (int i = 0; i < n; i++) {
      above += (xs.get(i) - meanX) * ys.get(i);
      below += (xs.get(i) - meanX) * (xs.get(i) - meanX);
    }
    return above / below;
  }
}
