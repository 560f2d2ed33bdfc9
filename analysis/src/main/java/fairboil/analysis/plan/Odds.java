package fairboil.analysis.plan;

import fairboil.analysis.figure.Measured;
import fairboil.analysis.model.StudentizedRange;
import fairboil.analysis.model.TwoSidedTests;
import java.util.Optional;

/**
 * How often a study of some size would tell what is wanted of it: the tests are those of the
 * report, on the means of builds, whose scatter is {@code √(σb² + σr²/n)}.
 *
 * <p>A hole effect β is found with the noncentrality |β| √(Sxx / (σb² + σr²/n)) and b − 2 degrees
 * of freedom; a difference δ between two of k designs of b builds with |δ| / √(2 (σb² + σr²/n) / b)
 * and k (b − 1), against Tukey's limit where k is above 2.
 */
final class Odds {

  private final Wish wish;
  private final Spreads spreads;
  private final int designs;
  private final Optional<HoleLevels> levels;
  private final double confidence;
  private final Optional<StudentizedRange> range;

  /**
   * What decides.
   *
   * @param wish what is wanted
   * @param spreads the scatter
   * @param designs how many designs are compared, at least 2
   * @param levels the hole errors; needed for a hole effect
   * @param confidence of the intervals, between 0 and 1
   */
  Odds(Wish wish, Spreads spreads, int designs, Optional<HoleLevels> levels, double confidence) {
    this.wish = wish;
    this.spreads = spreads;
    this.designs = designs;
    this.levels = levels;
    this.confidence = confidence;
    this.range = designs > 2 ? Optional.of(new StudentizedRange(designs)) : Optional.empty();
  }

  /**
   * The share of such studies that tell it, from 0 to 1.
   *
   * @param builds of each design, or in all for a hole effect; at least {@link
   *     Wish.Kind#fewestBuilds}
   * @param runs of each build, at least 1
   */
  double of(int builds, int runs, Basis basis) {
    double sd = spreads.ofBuildMean(runs, basis);
    if (sd == 0) {
      return 1; // nothing scatters
    }
    return switch (wish.kind()) {
      case HALF_WIDTH -> halfWidth(builds, sd);
      case DIFFERENCE -> difference(builds, sd);
      case MARGIN ->
          TwoSidedTests.equivalence(
              wish.size(), sd * Math.sqrt(2.0 / builds), 2 * (builds - 1.0), 1 - confidence);
      case HOLE_EFFECT -> holeEffect(builds, sd);
    };
  }

  private double halfWidth(int builds, double sd) {
    double degreesOfFreedom = builds - 1.0;
    return TwoSidedTests.narrowness(
        wish.size(),
        sd / Math.sqrt(builds),
        degreesOfFreedom,
        Measured.coverageFactor(confidence, degreesOfFreedom));
  }

  private double difference(int builds, double sd) {
    double degreesOfFreedom = designs * (builds - 1.0);
    double factor =
        range
            .map(k -> k.inverseCumulativeProbability(confidence, degreesOfFreedom) / Math.sqrt(2))
            .orElseGet(() -> Measured.coverageFactor(confidence, degreesOfFreedom));
    return TwoSidedTests.detection(
        wish.size(), sd * Math.sqrt(2.0 / builds), degreesOfFreedom, factor);
  }

  private double holeEffect(int builds, double sd) {
    double degreesOfFreedom = builds - 2.0;
    return TwoSidedTests.detection(
        wish.size(),
        sd / Math.sqrt(levels.orElseThrow().squares(builds)),
        degreesOfFreedom,
        Measured.coverageFactor(confidence, degreesOfFreedom));
  }
}
