package fairboil.analysis.trace;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import java.util.Arrays;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Finds the highest value of the noise-free trace averaged over a hold.
 *
 * <p>The highest of many noisy averages reads high. Here the averages A are compared with their own
 * wide smooth S. What noise of the readings alone would make A − S scatter (v) is set against how
 * it does scatter (V): the share λ = 1 − v/V of each A − S is kept as real (empirical Bayes
 * shrinkage, C. Stein; see B. Efron, C. Morris, J. Amer. Statist. Assoc. 68 (1973) 117), and all of
 * a deviation that noise could hardly make anywhere in the window (universal threshold 2 ln n, D.
 * Donoho, I. Johnstone, Biometrika 81 (1994) 425). The peak is the expected maximum of what is then
 * known of the noise-free averages; the bias is the highest A less that.
 *
 * <p>The bead of a flame probe moves by 15 °C to 40 °C over a few seconds. Such flicker is counted
 * as noise, correlated as it is: the peak is that of the flame beneath it. As a trace alone cannot
 * tell flicker from flame, the difference that it makes, or the bias if that is more, is counted in
 * the uncertainty as the half-width of a rectangular distribution.
 */
public final class PeakFinder {

  private static final Template NO_READING =
      Template.of("there is no reading in the part of the log where the highest value is sought");
  private static final Template NO_STRETCH =
      Template.of(
          "no stretch of {value}, where the highest value is sought, has at least 3 readings and no"
              + " long gap");
  private static final Template TOO_SPARSE =
      Template.of(
          "fewer than 3 readings fall into the {value} for which the highest value must hold: the"
              + " log has one every {value}");

  private static final double SMOOTH_HOLDS = 4;

  /** Variance of the smooth over that of an average: 9/4 for a parabola, over 8 holds. */
  private static final double NOISE_LEFT_IN_SMOOTH = 9.0 / 4 / (2 * SMOOTH_HOLDS);

  private static final double FEWEST_HOLDS_FOR_BIAS = 3;

  /** From 2 standard deviations below the highest mean to 4 above it, in thirds of one. */
  private static final int RISE_STEPS = 18;

  private static final NormalDistribution STANDARD_NORMAL = NormalDistribution.of(0, 1);

  private final HeldAverages averages;
  private final double[] smooth;
  private final double averagedNoise;
  private final double scatter;

  private PeakFinder(Trace trace, HeldAverages averages) {
    this.averages = averages;
    int reach = Math.max(2, (int) Math.round(SMOOTH_HOLDS * averages.hold / averages.step));
    this.smooth = Smoothing.parabolas(averages.values, reach);
    double independent = Noise.independentVariance(trace);
    this.averagedNoise = independent * Math.min(1, trace.interval() / averages.hold);
    this.scatter = scatterOfAverages();
  }

  /**
   * Finds the peak of a clean trace.
   *
   * @param trace the trace
   * @param from start of the window, s
   * @param to end of the window, s
   * @param hold how long the peak must be held, s, above 0
   */
  public static Peak find(Trace trace, double from, double to, double hold) {
    Trace present = trace.between(from, to).withoutMissing();
    if (present.size() == 0) {
      return new Peak.None(NO_READING.with());
    }
    if (present.interval() <= 0 || hold < 2 * present.interval() * (1 - 1e-6)) {
      return new Peak.None(tooSparse(present, hold));
    }
    HeldAverages averages = HeldAverages.of(present, from, to, hold);
    return averages.indexOfHighest() < 0
        ? new Peak.None(NO_STRETCH.with(seconds(hold, 2)))
        : new PeakFinder(present, averages).find();
  }

  private static Message tooSparse(Trace present, double hold) {
    return TOO_SPARSE.with(seconds(hold, 2), seconds(present.interval(), 0.2));
  }

  private static Argument seconds(double seconds, double uncertainty) {
    return Argument.value(seconds, uncertainty, Dimension.DURATION);
  }

  private Peak find() {
    int highest = averages.indexOfHighest();
    double raw = averages.values[highest];
    if (averages.size() * averages.step < FEWEST_HOLDS_FOR_BIAS * averages.hold) {
      double noise = Math.sqrt(averagedNoise);
      return new Peak.Held(raw, averages.timeAt(highest), 0, noise, noise);
    }
    Estimate allNoise = estimate(scatter);
    Estimate allFlame = estimate(Math.min(averagedNoise, scatter));
    double bias = Math.max(0, raw - allNoise.celsius);
    double noise = Math.sqrt(scatter);
    double ambiguity = Math.abs(allFlame.celsius - allNoise.celsius);
    return new Peak.Held(
        raw - bias,
        averages.timeAt(allNoise.index),
        bias,
        noise,
        Math.max(noise, Math.max(bias, ambiguity)) / Math.sqrt(3));
  }

  private double scatterOfAverages() {
    double[] deviations = new double[averages.size()];
    int count = 0;
    for (int i = 0; i < deviations.length; i++) {
      double deviation = averages.values[i] - smooth[i];
      if (!Double.isNaN(deviation)) {
        deviations[count++] = deviation;
      }
    }
    double scale = Robust.scale(deviations, count);
    return scale * scale / (1 - NOISE_LEFT_IN_SMOOTH); // the smooth follows some of the noise
  }

  private record Estimate(double celsius, int index) {}

  /** The peak if the averages scatter with this variance by noise alone. */
  private Estimate estimate(double noise) {
    double share = scatter > 0 ? Math.max(0, 1 - noise / scatter) : 1;
    double threshold = 2 * Math.log(Math.max(2, averages.size())) * noise;
    double[] likely = new double[averages.size()];
    int best = -1;
    for (int i = 0; i < likely.length; i++) {
      double deviation = averages.values[i] - smooth[i];
      double kept = Math.max(share, 1 - threshold / (deviation * deviation));
      likely[i] = deviation == 0 ? smooth[i] : smooth[i] + kept * deviation;
      if (!Double.isNaN(likely[i]) && (best < 0 || likely[i] > likely[best])) {
        best = i;
      }
    }
    double rise = expectedRise(likely, Math.sqrt(share * noise), 0.5);
    double smoothRise = expectedRise(smooth, Math.sqrt(NOISE_LEFT_IN_SMOOTH * noise), SMOOTH_HOLDS);
    return new Estimate(likely[best] + rise - (1 - share) * smoothRise, best);
  }

  /**
   * How far the maximum of normal values is expected above the highest of their means, where values
   * are independent over so many holds.
   */
  private double expectedRise(double[] means, double spread, double holds) {
    if (spread < 0.02) {
      return 0;
    }
    int length = Math.max(1, (int) Math.round(holds * averages.hold / averages.step));
    double highest = highest(means, 0, means.length);
    double[] blocks = blocksNear(means, length, highest - 3 * spread);
    double step = spread / 3;
    double rise = 0;
    for (int i = 0; i < RISE_STEPS; i++) { // counted: a step may be lost in a high level
      double x = highest - 2 * spread + (i + 0.5) * step;
      double below = 1;
      for (double mean : blocks) {
        below *= STANDARD_NORMAL.cumulativeProbability((x - mean) / spread);
      }
      rise += step * (x < highest ? -below : 1 - below);
    }
    return rise;
  }

  private static double[] blocksNear(double[] means, int length, double least) {
    double[] blocks = new double[means.length / length + 1];
    int count = 0;
    for (int from = 0; from < means.length; from += length) {
      double highest = highest(means, from, Math.min(means.length, from + length));
      if (highest > least) {
        blocks[count++] = highest;
      }
    }
    return Arrays.copyOf(blocks, count);
  }

  private static double highest(double[] values, int from, int end) {
    double highest = Double.NEGATIVE_INFINITY;
    for (int i = from; i < end; i++) {
      highest = values[i] > highest ? values[i] : highest;
    }
    return highest;
  }
}
