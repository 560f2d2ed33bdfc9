package fairboil.analysis.model;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * A linear mixed model with one random intercept a group, by restricted maximum likelihood
 * (Patterson and Thompson, Biometrika 58, 1971). Immutable.
 *
 * <p>For a given ratio of the variances generalised least squares is plain least squares on rows
 * from which a part of their group's mean has been taken; the ratio is found by searching the
 * restricted likelihood, profiled as in Bates et al., Journal of Statistical Software 67 (2015),
 * section 3.4.
 */
public final class RandomIntercept {

  /** Ratios of standard deviations that are tried before the search is refined. */
  private static final double[] TRIED = {
    0, 0.002, 0.02, 0.05, 0.1, 0.2, 0.35, 0.5, 0.75, 1, 1.5, 2, 3, 5, 8, 13, 25, 50, 100, 300, 1000
  };

  /** Below this ratio of standard deviations the variance between groups is taken to be 0. */
  private static final double BOUNDARY = 1e-4;

  /** Relative step of numerical derivatives. */
  private static final double STEP = 1e-3;

  private final Grouped data;
  private final LinearFit fit;
  private final double between;
  private final double within;
  private final Optional<Curvature> information;

  private RandomIntercept(Grouped data, double ratio) {
    this.data = data;
    this.fit = data.whitened(ratio * ratio);
    this.within = fit.residualSumOfSquares() / fit.degreesOfFreedom();
    this.between = ratio * ratio * within;
    this.information =
        between == 0
            ? Optional.empty()
            : Optional.of(Curvature.of(data::criterion, between, within));
  }

  /**
   * Fits a model.
   *
   * @param x the regressors of the fixed part
   * @param y one response a row
   * @param groups the group of each row, numbered from 0 without gaps
   * @return the fit, or empty if no group has two rows, if the rows of a group do not differ, or if
   *     {@link LinearFit} has no answer
   */
  public static Optional<RandomIntercept> fit(Regressors x, double[] y, int[] groups) {
    int count = Arrays.stream(groups).max().orElse(-1) + 1;
    Optional<LinearFit> plain = LinearFit.of(x, y);
    if (count == groups.length || plain.isEmpty()) {
      return Optional.empty();
    }
    Grouped data = new Grouped(x, y.clone(), groups.clone(), count);
    if (!(data.squaresWithin() > 1e-20 * data.squares()) || !data.canBeTold()) {
      return Optional.empty();
    }
    double ratio = data.bestRatio();
    boolean noScatterWithin = ratio >= TRIED[TRIED.length - 1];
    return noScatterWithin ? Optional.empty() : Optional.of(new RandomIntercept(data, ratio));
  }

  /** The coefficient of the column of that name. */
  public double estimate(String name) {
    return fit.estimate(name);
  }

  /** Its standard error. */
  public double standardError(String name) {
    return fit.standardError(name);
  }

  /** The variance between groups; 0 at the boundary. */
  public double varianceBetween() {
    return between;
  }

  /** The variance within groups. */
  public double varianceWithin() {
    return within;
  }

  /** Whether the variance between groups is 0: then degrees of freedom are not known. */
  public boolean isAtBoundary() {
    return between == 0;
  }

  /** −2 log of the restricted likelihood, with its constants. */
  public double remlCriterion() {
    return data.criterion(between, within);
  }

  /**
   * The degrees of freedom of a coefficient by Satterthwaite's approximation (Biometrics Bulletin
   * 2, 1946; for mixed models Giesbrecht and Burns, Biometrics 41, 1985), from the observed
   * information of the two variances; empty at the boundary.
   */
  public OptionalDouble degreesOfFreedom(String name) {
    if (information.isEmpty()) {
      return OptionalDouble.empty();
    }
    DoubleBinaryOperator variance =
        (tau, sigma) -> sigma * data.whitened(tau / sigma).unscaledVariance(name);
    double ofTau = slope(step -> variance.applyAsDouble(between + step, within), between);
    double ofSigma = slope(step -> variance.applyAsDouble(between, within + step), within);
    double ofVariance = 2 * information.get().inverseForm(ofTau, ofSigma);
    double value = variance.applyAsDouble(between, within);
    double degreesOfFreedom = 2 * value * value / ofVariance;
    return degreesOfFreedom > 0 ? OptionalDouble.of(degreesOfFreedom) : OptionalDouble.empty();
  }

  /** First derivative at 0 by central differences of fourth order. */
  private static double slope(DoubleUnaryOperator f, double scale) {
    double h = STEP * scale;
    return (8 * (f.applyAsDouble(h) - f.applyAsDouble(-h))
            - (f.applyAsDouble(2 * h) - f.applyAsDouble(-2 * h)))
        / (12 * h);
  }

  /** The second derivatives of a function of two variables. */
  private record Curvature(double xx, double xy, double yy) {

    static Curvature of(DoubleBinaryOperator f, double x, double y) {
      double h = STEP * x;
      double k = STEP * y;
      return new Curvature(
          second(step -> f.applyAsDouble(x + step, y), h),
          (mixed(f, x, y, h, k) * 4 - mixed(f, x, y, 2 * h, 2 * k)) / 3,
          second(step -> f.applyAsDouble(x, y + step), k));
    }

    private static double second(DoubleUnaryOperator f, double h) {
      return (-f.applyAsDouble(2 * h)
              + 16 * f.applyAsDouble(h)
              - 30 * f.applyAsDouble(0)
              + 16 * f.applyAsDouble(-h)
              - f.applyAsDouble(-2 * h))
          / (12 * h * h);
    }

    private static double mixed(DoubleBinaryOperator f, double x, double y, double h, double k) {
      return (f.applyAsDouble(x + h, y + k)
              - f.applyAsDouble(x + h, y - k)
              - f.applyAsDouble(x - h, y + k)
              + f.applyAsDouble(x - h, y - k))
          / (4 * h * k);
    }

    /** {@code g' H⁻¹ g}. */
    double inverseForm(double gx, double gy) {
      double determinant = xx * yy - xy * xy;
      return (gx * gx * yy - 2 * gx * gy * xy + gy * gy * xx) / determinant;
    }
  }

  /** The rows with their groups. */
  @SuppressWarnings("ArrayRecordComponent") // stays inside this class
  private record Grouped(Regressors x, double[] y, int[] groups, int count) {

    /** The fit for a ratio of the variance between groups to that within. */
    LinearFit whitened(double ratio) {
      return fit(ratio).orElseThrow(); // as it is with the least and the largest ratio
    }

    private Optional<LinearFit> fit(double ratio) {
      double[] taken = taken(ratio);
      Regressors rows = Regressors.none(y.length);
      for (int j = 0; j < x.size(); j++) {
        rows = rows.and(x.names().get(j), whitened(x.column(j), taken));
      }
      return LinearFit.of(rows, whitened(y, taken));
    }

    /** Whether the columns stay independent when what groups share is taken from them. */
    boolean canBeTold() {
      double most = TRIED[TRIED.length - 1];
      return fit(most * most).isPresent();
    }

    /** The part of each group's mean to take from its rows. */
    private double[] taken(double ratio) {
      return Arrays.stream(sizes()).mapToDouble(n -> 1 - 1 / Math.sqrt(1 + n * ratio)).toArray();
    }

    private int[] sizes() {
      int[] sizes = new int[count];
      for (int group : groups) {
        sizes[group]++;
      }
      return sizes;
    }

    private double[] whitened(double[] values, double[] taken) {
      double[] means = means(values);
      double[] rows = new double[values.length];
      for (int i = 0; i < rows.length; i++) {
        rows[i] = values[i] - taken[groups[i]] * means[groups[i]];
      }
      return rows;
    }

    private double[] means(double[] values) {
      double[] sums = new double[count];
      for (int i = 0; i < values.length; i++) {
        sums[groups[i]] += values[i];
      }
      int[] sizes = sizes();
      for (int group = 0; group < count; group++) {
        sums[group] /= sizes[group];
      }
      return sums;
    }

    double squaresWithin() {
      double[] means = means(y);
      double sum = 0;
      for (int i = 0; i < y.length; i++) {
        sum += (y[i] - means[groups[i]]) * (y[i] - means[groups[i]]);
      }
      return sum;
    }

    double squares() {
      return Arrays.stream(y).map(value -> value * value).sum();
    }

    double criterion(double between, double within) {
      double ratio = between / within;
      LinearFit fit = whitened(ratio);
      double logs = 0;
      for (int n : sizes()) {
        logs += Math.log1p(n * ratio);
      }
      return fit.degreesOfFreedom() * Math.log(2 * Math.PI * within)
          + logs
          + fit.logDeterminantOfGram()
          + fit.residualSumOfSquares() / within;
    }

    private double profile(double ratio) {
      LinearFit fit = whitened(ratio * ratio);
      double within = fit.residualSumOfSquares() / fit.degreesOfFreedom();
      return criterion(ratio * ratio * within, within);
    }

    /** The ratio of the standard deviation between groups to that within. */
    double bestRatio() {
      int best = 0;
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < TRIED.length; i++) {
        double criterion = profile(TRIED[i]);
        if (criterion < least) {
          least = criterion;
          best = i;
        }
      }
      if (best == 0) {
        return 0;
      }
      double low = TRIED[best - 1];
      double high = TRIED[Math.min(TRIED.length - 1, best + 1)];
      double ratio =
          new BrentOptimizer(1e-12, 1e-12)
              .optimize(
                  new UnivariateObjectiveFunction(this::profile),
                  GoalType.MINIMIZE,
                  new SearchInterval(low, high),
                  new MaxEval(500))
              .getPoint();
      return ratio < BOUNDARY || profile(0) <= profile(ratio) ? 0 : ratio;
    }
  }
}
