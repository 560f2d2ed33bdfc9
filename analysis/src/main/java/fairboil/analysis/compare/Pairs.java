package fairboil.analysis.compare;

import fairboil.analysis.compare.Comparison.Method;
import fairboil.analysis.compare.Comparison.Verdict;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.Dunnett;
import fairboil.analysis.model.EffectSize;
import fairboil.analysis.model.LinearFit;
import fairboil.analysis.model.StudentizedRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * All pairs of some things in one measure, their intervals holding together: by Tukey and Kramer
 * (Kramer, Biometrics 12, 1956) with scatter pooled, and by Games and Howell (Journal of
 * Educational Statistics 1, 1976) without; or all others against one of them, by Dunnett (Journal
 * of the American Statistical Association 50, 1955).
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

  /** How many standard errors hold for all differences together, and how often so many come. */
  private interface Family {

    double critical(double degreesOfFreedom);

    /** The chance that any of the family is off by so many standard errors, and none truly. */
    double pValue(double t, double degreesOfFreedom);
  }

  /** All pairs; a single one is Student's. */
  private final class AllPairs implements Family {

    @Override
    public double critical(double degreesOfFreedom) {
      return range.means() == 2
          ? Measured.coverageFactor(confidence, degreesOfFreedom)
          : range.inverseCumulativeProbability(confidence, degreesOfFreedom) / Math.sqrt(2);
    }

    @Override
    public double pValue(double t, double degreesOfFreedom) {
      return range.means() == 2
          ? 0
          : 1 - range.cumulativeProbability(Math.sqrt(2) * t, degreesOfFreedom);
    }
  }

  /** All against one. */
  private final class AgainstOne implements Family {

    private final Dunnett distribution;
    private final double critical;

    AgainstOne(Sample reference, List<Sample> others, int degreesOfFreedom) {
      double[] sizes = others.stream().mapToDouble(Sample::n).toArray();
      this.distribution = new Dunnett(reference.n(), sizes, degreesOfFreedom);
      this.critical = distribution.inverseCumulativeProbability(confidence);
    }

    @Override
    public double critical(double degreesOfFreedom) {
      return critical;
    }

    @Override
    public double pValue(double t, double degreesOfFreedom) {
      return 1 - distribution.cumulativeProbability(t);
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
    Family family = new AllPairs();
    double critical = family.critical(degreesOfFreedom);
    for (int i = 0; i < samples.size(); i++) {
      for (int j = i + 1; j < samples.size(); j++) {
        Difference difference = pooled(samples.get(i), samples.get(j), variance, degreesOfFreedom);
        pairs.add(comparison(difference, family, critical, method));
      }
    }
    return pairs;
  }

  private static Difference pooled(Sample a, Sample b, double variance, int degreesOfFreedom) {
    double standardError = Math.sqrt(variance * (1.0 / a.n() + 1.0 / b.n()));
    return new Difference(a, b, standardError, degreesOfFreedom, Math.sqrt(variance));
  }

  /** The others against the reference, scatter pooled over all; none if no thing has two units. */
  List<Comparison> against(Sample reference, List<Sample> others) {
    List<Sample> all = new ArrayList<>(others);
    all.add(reference);
    double squares = all.stream().mapToDouble(Sample::squares).sum();
    int degreesOfFreedom = all.stream().mapToInt(sample -> sample.n() - 1).sum();
    if (degreesOfFreedom < 1 || others.isEmpty()) {
      return List.of();
    }
    Family family = new AgainstOne(reference, others, degreesOfFreedom);
    double critical = family.critical(degreesOfFreedom);
    double variance = squares / degreesOfFreedom;
    return others.stream()
        .map(other -> pooled(other, reference, variance, degreesOfFreedom))
        .map(difference -> comparison(difference, family, critical, Method.DUNNETT))
        .toList();
  }

  /** The pairs that have two units on each side, each by its own scatter. */
  List<Comparison> unpooled(List<Sample> samples, Method method) {
    List<Comparison> pairs = new ArrayList<>();
    Family family = new AllPairs();
    for (int i = 0; i < samples.size(); i++) {
      for (int j = i + 1; j < samples.size(); j++) {
        if (samples.get(i).n() > 1 && samples.get(j).n() > 1) {
          Difference difference = welch(samples.get(i), samples.get(j));
          double critical = family.critical(difference.degreesOfFreedom);
          pairs.add(comparison(difference, family, critical, method));
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

  private Comparison comparison(
      Difference difference, Family family, double critical, Method method) {
    double value = difference.value();
    double standardError = difference.standardError;
    double degreesOfFreedom = difference.degreesOfFreedom;
    double alone = oneIfNothing(LinearFit.pValue(value, standardError, degreesOfFreedom));
    double t = Math.abs(value) / standardError;
    double together = Double.isNaN(t) ? alone : Math.max(alone, family.pValue(t, degreesOfFreedom));
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
        effectSize(value, difference.deviation, degreesOfFreedom),
        level.equals(Comparison.BUILD) && method != Method.DUNNETT
            ? Optional.empty()
            : effectInterval(difference, critical));
  }

  /** At the confidence that the difference has by itself, so that both tell the same. */
  private static Optional<Interval> effectInterval(Difference difference, double critical) {
    double df = difference.degreesOfFreedom;
    double alone = 1 - 2 * TDistribution.of(df).survivalProbability(critical);
    return EffectSize.of(
            difference.value(), difference.standardError, difference.deviation, df, alone)
        .map(EffectSize::interval);
  }

  /** Without scatter nothing speaks for a difference. */
  static double oneIfNothing(double pValue) {
    return Double.isNaN(pValue) ? 1 : pValue;
  }

  static double margin(
      double value, double standardError, double degreesOfFreedom, double confidence) {
    double factor = Measured.coverageFactor(2 * confidence - 1, degreesOfFreedom);
    return Math.abs(value) + factor * standardError;
  }

  static double effectSize(double value, double deviation, double degreesOfFreedom) {
    return deviation == 0 || degreesOfFreedom <= 1
        ? 0
        : EffectSize.correction(degreesOfFreedom) * value / deviation;
  }
}
