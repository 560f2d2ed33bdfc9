package fairboil.analysis.plan;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.group.Summary;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Truth by simulation: of studies of the advised size, as many know the mean of a design to within
 * the wished half width as the plan promises. The interval is that of the report: Student's t on
 * the means of builds. Bounds are four standard errors of a share.
 */
class HalfWidthPromiseTest {

  private static final double CONFIDENCE = 0.95;

  @ParameterizedTest
  @CsvSource({"10, 8, 12, 0.8", "10, 0.5, 15, 0.9", "12, 12, 6, 0.8"})
  void promiseIsKept(double halfWidth, double stoves, double burns, double power) {
    promise(halfWidth, stoves, burns, power, 1000);
  }

  @ParameterizedTest
  @Tag("long")
  @CsvSource({"10, 8, 12, 0.8", "10, 0.5, 15, 0.9", "12, 12, 6, 0.8"})
  void promiseIsKeptAtLength(double halfWidth, double stoves, double burns, double power) {
    promise(halfWidth, stoves, burns, power, 10_000);
  }

  private static void promise(
      double halfWidth, double stoves, double burns, double power, int trials) {
    Wish wish = new Wish(Wish.Kind.HALF_WIDTH, halfWidth);
    Spreads spreads = new Spreads(Spread.stated(burns), Spread.stated(stoves));
    Odds odds = new Odds(wish, spreads, 2, Optional.empty(), CONFIDENCE);
    Answer.Need need = Answers.of(wish, spreads, odds, power).advice(Basis.ESTIMATE).orElseThrow();
    int builds = need.builds().orElseThrow();
    double promised = odds.of(builds, need.runs(), Basis.ESTIMATE);
    RandomGenerator random = new SplittableRandom(79);
    int kept = 0;
    for (int trial = 0; trial < trials; trial++) {
      double[] means = new double[builds];
      for (int build = 0; build < builds; build++) {
        means[build] = mean(need.runs(), stoves, burns, random);
      }
      kept += halfWidth(means) <= halfWidth ? 1 : 0;
    }
    double margin = 4 * Math.sqrt(promised * (1 - promised) / trials);
    assertThat(promised).isBetween(power, 0.98);
    assertThat((double) kept / trials).isBetween(promised - margin, promised + margin);
  }

  private static double mean(int runs, double stoves, double burns, RandomGenerator random) {
    double stove = 700 + stoves * random.nextGaussian();
    double sum = 0;
    for (int run = 0; run < runs; run++) {
      sum += stove + burns * random.nextGaussian();
    }
    return sum / runs;
  }

  private static double halfWidth(double[] means) {
    Summary summary = Summary.of(means, CONFIDENCE);
    return summary.interval().orElseThrow().high() - summary.mean();
  }
}
