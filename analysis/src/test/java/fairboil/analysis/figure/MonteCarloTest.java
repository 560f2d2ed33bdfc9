package fairboil.analysis.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/** The examples of JCGM 101:2008, clause 9. */
class MonteCarloTest {

  private static final int DRAWS = 400_000;

  private static Budget four(Shape shape, double... contributions) {
    Budget budget = Budget.NONE;
    for (double contribution : contributions) {
      budget = budget.and(BudgetLine.independent(Influence.NOISE, contribution).shaped(shape));
    }
    return budget;
  }

  private static MonteCarlo drawn(Budget budget) {
    return MonteCarlo.of(DRAWS, new SplittableRandom(9), budget::draw);
  }

  // JCGM 101:2008, 9.2.2: four normal inputs with u = 1. u 2.0, 95 % [−3.92, 3.92].
  @Test
  void normalInputs() {
    MonteCarlo drawn = drawn(four(Shape.NORMAL, 1, 1, 1, 1));
    assertThat(drawn.mean()).isCloseTo(0, within(0.02));
    assertThat(drawn.standardUncertainty()).isCloseTo(2.0, within(0.01));
    assertThat(drawn.interval(0.95).low()).isCloseTo(-3.92, within(0.03));
    assertThat(drawn.interval(0.95).high()).isCloseTo(3.92, within(0.03));
  }

  // JCGM 101:2008, 9.2.3: four rectangular inputs with u = 1. u 2.0; 95 % ±3.88, which is
  // 2 √3 [2 − (3/5)^¼] analytically; the law of propagation gives ±3.92.
  @Test
  void rectangularInputs() {
    Budget budget = four(Shape.RECTANGULAR, 1, 1, 1, 1);
    MonteCarlo drawn = drawn(budget);
    double exact = 2 * Math.sqrt(3) * (2 - Math.pow(0.6, 0.25));
    assertThat(drawn.standardUncertainty()).isCloseTo(2.0, within(0.01));
    assertThat(drawn.interval(0.95).high()).isCloseTo(exact, within(0.02));
    assertThat(drawn.shortestInterval(0.95).width()).isCloseTo(2 * exact, within(0.05));
    assertThat(budget.combined()).isEqualTo(2);
    assertThat(budget.isMainlyRectangular()).isTrue();
  }

  // JCGM 101:2008, 9.2.4: the same with one of u = 10. u 10.1 (√103); 95 % ±17.0, where the law of
  // propagation gives ±19.9.
  @Test
  void oneRectangularInputDominates() {
    Budget budget = four(Shape.RECTANGULAR, 1, 1, 1, 10);
    MonteCarlo drawn = drawn(budget);
    assertThat(drawn.standardUncertainty()).isCloseTo(Math.sqrt(103), within(0.03));
    assertThat(drawn.interval(0.95).high()).isCloseTo(17.0, within(0.05));
    Measured firstOrder =
        budget.around(0, fairboil.ingest.dimension.Dimension.RATIO).ifKnown().orElseThrow();
    assertThat(firstOrder.expandedUncertainty(0.95)).isCloseTo(19.9, within(0.1));
  }

  // JCGM 101:2008, 9.3: calibration of a mass of 100 g in air, deviation from nominal in mg.
  // Monte Carlo 1.2341, u 0.0754, shortest 95 % [1.0834, 1.3825]; the law of propagation to first
  // order says u 0.0539, as the slope along both densities is 0 at the estimates.
  @Test
  void massCalibration() {
    MonteCarlo drawn = MonteCarlo.of(DRAWS, new SplittableRandom(10), MonteCarloTest::deviation);
    assertThat(drawn.mean()).isCloseTo(1.2341, within(0.0005));
    assertThat(drawn.standardUncertainty()).isCloseTo(0.0754, within(0.0004));
    assertThat(drawn.interval(0.95).low()).isCloseTo(1.0834, within(0.002));
    assertThat(drawn.interval(0.95).high()).isCloseTo(1.3825, within(0.002));
    assertThat(Math.hypot(0.05, 0.02)).isCloseTo(0.0539, within(0.0001));
  }

  private static double deviation(RandomGenerator random) {
    double reference = 100_000 + 0.05 * random.nextGaussian();
    double weights = 1.234 + 0.02 * random.nextGaussian();
    double air = 1.1 + 0.2 * random.nextDouble();
    double ofWeight = 7000 + 2000 * random.nextDouble();
    double ofReference = 7950 + 100 * random.nextDouble();
    return (reference + weights) * (1 + (air - 1.2) * (1 / ofWeight - 1 / ofReference)) - 100_000;
  }

  // A t distribution with ν degrees of freedom has a standard deviation of √(ν / (ν − 2)): JCGM
  // 101:2008, 6.4.9.4.
  @Test
  void fewDegreesOfFreedomWiden() {
    Budget budget =
        Budget.of(new BudgetLine(Influence.NOISE, 1, 6, Optional.empty(), Shape.NORMAL));
    MonteCarlo drawn = drawn(budget);
    assertThat(drawn.standardUncertainty()).isCloseTo(Math.sqrt(6.0 / 4), within(0.01));
    // Student's t for 6 degrees of freedom at 97.5 %: 2.447 (JCGM 100:2008, table G.2: 2.45).
    assertThat(drawn.interval(0.95).high()).isCloseTo(2.447, within(0.02));
  }

  @Test
  void sameSeedSameInterval() {
    Budget budget = four(Shape.RECTANGULAR, 1, 2);
    assertThat(MonteCarlo.of(500, new SplittableRandom(1), budget::draw).interval(0.9))
        .isEqualTo(MonteCarlo.of(500, new SplittableRandom(1), budget::draw).interval(0.9));
  }
}
