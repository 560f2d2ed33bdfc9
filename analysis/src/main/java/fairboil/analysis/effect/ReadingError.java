package fairboil.analysis.effect;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.model.LinearFit;
import fairboil.analysis.model.Regressors;
import fairboil.analysis.model.Simex;
import fairboil.ingest.choice.Surface;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;

/**
 * The slope with the error of reading hole positions taken out. What readings add to an RMS adds in
 * squares, and most to a small one, so that of perfect holes is taken off; that an RMS still
 * scatters, which flattens the slope, is undone by simulation and extrapolation.
 */
final class ReadingError {

  private static final int DRAWS = 200;

  private static final int FITTED_ON_WALL = 1;
  private static final int FITTED_ON_BASE = 3;

  private static final double SPREAD = 1e-7;

  /**
   * Where the RMS of all rings together is less than this many floors, simulated studies have
   * intervals that hold too rarely, so there is no answer. Of all together: rings that would be
   * turned away one by one are those that happen to be read as good, and the rest then lie too
   * close together, which makes the slope too steep.
   */
  private static final double FEWEST_FLOORS = 2;

  private final Ring[] rings;
  private final Slope slope;

  private ReadingError(List<RingResult> rings, LinearFit line, double[] means) {
    this.rings = rings.stream().map(Ring::of).toArray(Ring[]::new);
    this.slope = new Slope(line, means);
  }

  /**
   * The slope as it would be without errors of reading; its interval has what the headline's has
   * beyond that of the line. Empty where rings were placed about as truly as they were read.
   *
   * @param line the line through the means
   * @param means the mean of each build
   * @param rings the ring of each build
   */
  static Optional<EffectRow> takenOut(
      LinearFit line,
      double[] means,
      List<RingResult> rings,
      EffectRow headline,
      double confidence,
      RandomGenerator random) {
    if (!areAboveTheirFloors(rings)) {
      return Optional.empty();
    }
    ReadingError reading = new ReadingError(rings, line, means);
    double[] corrected = reading.remeasured(0, random);
    double spread =
        Arrays.stream(corrected).max().orElse(0) - Arrays.stream(corrected).min().orElse(0);
    if (spread < SPREAD) {
      return Optional.empty();
    }
    Simex without = Simex.of(times -> reading.slope.of(reading.remeasured(times, random)), DRAWS);
    return Double.isFinite(without.estimate()) && Double.isFinite(without.standardError())
        ? Optional.of(row(without, line, headline, confidence))
        : Optional.empty();
  }

  private static boolean areAboveTheirFloors(List<RingResult> rings) {
    double squares = 0;
    double floors = 0;
    for (RingResult ring : rings) {
      if (!ring.rmsFloor().isKnown() || !ring.rms().isKnown()) {
        return false;
      }
      squares += ring.rms().orNaN() * ring.rms().orNaN();
      floors += ring.rmsFloor().orNaN() * ring.rmsFloor().orNaN();
    }
    return squares >= FEWEST_FLOORS * FEWEST_FLOORS * floors;
  }

  private static EffectRow row(Simex slope, LinearFit line, EffectRow headline, double confidence) {
    double beyond =
        Math.pow(headline.standardError(), 2)
            - Math.pow(line.standardError(EffectRow.HOLE_ERROR), 2);
    double standardError =
        Math.sqrt(slope.standardError() * slope.standardError() + Math.max(0, beyond));
    double df = headline.degreesOfFreedom();
    double pValue = LinearFit.pValue(slope.estimate(), standardError, df);
    return new EffectRow(
        headline.model(),
        EffectRow.HOLE_ERROR,
        slope.estimate(),
        standardError,
        df,
        Interval.around(slope.estimate(), Measured.coverageFactor(confidence, df) * standardError),
        Double.isNaN(pValue) ? OptionalDouble.empty() : OptionalDouble.of(pValue),
        headline.runs(),
        headline.builds());
  }

  private double[] remeasured(double times, RandomGenerator random) {
    return Arrays.stream(rings).mapToDouble(ring -> ring.remeasured(times, random)).toArray();
  }

  /**
   * What is known of the RMS of a ring.
   *
   * @param rms as measured
   * @param floor that of perfect holes
   * @param degreesOfFreedom coordinates read, less those that were fitted
   */
  private record Ring(double rms, double floor, int degreesOfFreedom) {

    static Ring of(RingResult ring) {
      boolean heights =
          ring.surface() == Surface.BASE
              || ring.holes().stream().anyMatch(hole -> hole.heightError() != 0);
      int fitted = ring.surface() == Surface.BASE ? FITTED_ON_BASE : FITTED_ON_WALL;
      int coordinates = (heights ? 2 : 1) * ring.holes().size();
      return new Ring(
          ring.rms().orNaN(), ring.rmsFloor().orNaN(), Math.max(1, coordinates - fitted));
    }

    /** The RMS, its floor taken off, as if errors of so many times the variance had been added. */
    double remeasured(double times, RandomGenerator random) {
      if (floor == 0) {
        return rms;
      }
      double unit = floor * floor / degreesOfFreedom;
      double along = rms / Math.sqrt(unit);
      double squares = along * along;
      if (times > 0) {
        // of a normal error in each direction only that along the deviations depends on them
        squares =
            Math.pow(along + Math.sqrt(times) * random.nextGaussian(), 2)
                + times * chiSquared(degreesOfFreedom - 1, random);
      }
      return Math.sqrt(Math.max(0, unit * squares - (1 + times) * floor * floor));
    }

    /** By the cube root, which is nearly normal (Wilson and Hilferty, PNAS 17, 1931). */
    private static double chiSquared(int degreesOfFreedom, RandomGenerator random) {
      if (degreesOfFreedom == 0) {
        return 0;
      }
      double spread = 2.0 / (9 * degreesOfFreedom);
      double root = 1 - spread + Math.sqrt(spread) * random.nextGaussian();
      return degreesOfFreedom * Math.pow(Math.max(0, root), 3);
    }
  }

  /** The slope on ever new hole errors, with the weights and other terms of one line. */
  private static final class Slope {

    private final double[] roots;
    private final List<double[]> others = new ArrayList<>();
    private final double[] response;
    private final int degreesOfFreedom;

    Slope(LinearFit line, double[] means) {
      this.roots = Arrays.stream(line.weights()).map(Math::sqrt).toArray();
      this.degreesOfFreedom = line.degreesOfFreedom();
      Regressors x = line.regressors();
      for (String name : x.names()) {
        if (!name.equals(EffectRow.HOLE_ERROR)) {
          int column = x.indexOf(name);
          double[] values = new double[roots.length];
          for (int i = 0; i < values.length; i++) {
            values[i] = x.row(i)[column];
          }
          others.add(unit(rest(values)));
        }
      }
      this.response = rest(means);
    }

    /** What the other terms leave of values, weighted. */
    private double[] rest(double[] values) {
      double[] rest = new double[values.length];
      for (int i = 0; i < rest.length; i++) {
        rest[i] = roots[i] * values[i];
      }
      for (double[] other : others) {
        double share = product(other, rest);
        for (int i = 0; i < rest.length; i++) {
          rest[i] -= share * other[i];
        }
      }
      return rest;
    }

    private static double[] unit(double[] values) {
      double length = Math.sqrt(product(values, values));
      return Arrays.stream(values).map(value -> value / length).toArray();
    }

    private static double product(double[] a, double[] b) {
      double sum = 0;
      for (int i = 0; i < a.length; i++) {
        sum += a[i] * b[i];
      }
      return sum;
    }

    Simex.Fit of(double[] errors) {
      double[] x = rest(errors);
      double squares = product(x, x);
      double estimate = product(x, response) / squares;
      double left = product(response, response) - estimate * estimate * squares;
      return new Simex.Fit(estimate, Math.max(0, left) / degreesOfFreedom / squares);
    }
  }
}
