package fairboil.analysis.compare;

import fairboil.analysis.compare.Comparison.Method;
import fairboil.analysis.compare.Comparison.Verdict;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.LinearFit;
import fairboil.analysis.model.StudentizedRange;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.gamma.LogGamma;

/**
 * All pairs of some things in one measure, their intervals holding together: by Tukey and Kramer
 * (Kramer, Biometrics 12, 1956) with scatter pooled, and by Games and Howell (Journal of
 * Educational Statistics 1, 1976) without.
 */
final class Pairs {

  private final Measure measure;
  private final String level;
  private final StudentizedRange range;
  private final double confidence;

  Pairs(Measure measure, String level, StudentizedRange range, double confidence) {
    this.measure = measure;
    this.level = level;
    this.range = range;
    this.confidence = confidence;
  }

  /** A difference with what it is uncertain by. */
  private record Difference(
      Sample a, Sample b, double standardError, double degreesOfFreedom, double deviation) {

    double value() {
      return a.mean() - b.mean();
    }
  }

  /** The pairs with scatter pooled over all; none if no thing has two units. */
  List<Comparison> pooled(List<Sample> samples, Method method) {
    double squares = samples.stream().mapToDouble(Sample::squares).sum();
    int degreesOfFreedom = samples.stream().mapToInt(sample -> sample.n() - 1).sum();
    List<Comparison> pairs = new ArrayList<>();
    if (degreesOfFreedom < 1 || samples.size() < 2) {
      return pairs;
    }
    double variance = squares / degreesOfFreedom;
    double critical = critical(degreesOfFreedom);
    for (int i = 0; i < samples.size(); i++) {
      for (int j = i + 1; j < samples.size(); j++) {
        Sample a = samples.get(i);
        Sample b = samples.get(j);
        double standardError = Math.sqrt(variance * (1.0 / a.n() + 1.0 / b.n()));
        Difference difference =
            new Difference(a, b, standardError, degreesOfFreedom, Math.sqrt(variance));
        pairs.add(comparison(difference, critical, method));
      }
    }
    return pairs;
  }

  /** The pairs that have two units on each side, each by its own scatter. */
  List<Comparison> unpooled(List<Sample> samples, Method method) {
    List<Comparison> pairs = new ArrayList<>();
    for (int i = 0; i < samples.size(); i++) {
      for (int j = i + 1; j < samples.size(); j++) {
        if (samples.get(i).n() > 1 && samples.get(j).n() > 1) {
          Difference difference = welch(samples.get(i), samples.get(j));
          pairs.add(comparison(difference, critical(difference.degreesOfFreedom), method));
        }
      }
    }
    return pairs;
  }

  private static Difference welch(Sample a, Sample b) {
    double ofA = a.variance() / a.n();
    double ofB = b.variance() / b.n();
    double sum = ofA + ofB;
    double degreesOfFreedom =
        sum == 0
            ? a.n() + b.n() - 2.0
            : sum * sum / (ofA * ofA / (a.n() - 1) + ofB * ofB / (b.n() - 1));
    return new Difference(
        a, b, Math.sqrt(sum), degreesOfFreedom, Math.sqrt((a.variance() + b.variance()) / 2));
  }

  /** The factor of the standard error that holds for all pairs; Student's t for a single one. */
  private double critical(double degreesOfFreedom) {
    return range.means() == 2
        ? Measured.coverageFactor(confidence, degreesOfFreedom)
        : range.inverseCumulativeProbability(confidence, degreesOfFreedom) / Math.sqrt(2);
  }

  private Comparison comparison(Difference difference, double critical, Method method) {
    double value = difference.value();
    double standardError = difference.standardError;
    double degreesOfFreedom = difference.degreesOfFreedom;
    double alone = zeroIfNothing(LinearFit.pValue(value, standardError, degreesOfFreedom));
    double studentised = Math.sqrt(2) * Math.abs(value) / standardError;
    double together =
        range.means() == 2 || Double.isNaN(studentised)
            ? alone
            : Math.max(alone, 1 - range.cumulativeProbability(studentised, degreesOfFreedom));
    Interval interval = Interval.around(value, critical * standardError);
    return new Comparison(
        measure,
        level,
        difference.a.name(),
        difference.b.name(),
        value,
        standardError,
        degreesOfFreedom,
        interval,
        alone,
        together,
        method,
        Verdict.of(interval),
        margin(value, standardError, degreesOfFreedom, confidence),
        effectSize(value, difference.deviation, degreesOfFreedom));
  }

  /** Two equal values without scatter: nothing speaks for a difference. */
  static double zeroIfNothing(double pValue) {
    return Double.isNaN(pValue) ? 1 : pValue;
  }

  static double margin(
      double value, double standardError, double degreesOfFreedom, double confidence) {
    double factor = Measured.coverageFactor(2 * confidence - 1, degreesOfFreedom);
    return Math.abs(value) + factor * standardError;
  }

  /** Hedges (Journal of Educational Statistics 6, 1981), with the exact correction. */
  static double effectSize(double value, double deviation, double degreesOfFreedom) {
    if (deviation == 0 || degreesOfFreedom <= 1) {
      return 0;
    }
    double half = degreesOfFreedom / 2;
    double correction =
        Math.exp(LogGamma.value(half) - LogGamma.value(half - 0.5)) / Math.sqrt(half);
    return correction * value / deviation;
  }
}
