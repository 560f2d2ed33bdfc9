package fairboil.analysis.compare;

import fairboil.analysis.compare.Comparison.Method;
import fairboil.analysis.compare.Comparison.Verdict;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.EffectSize;
import fairboil.analysis.model.LinearFit;
import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Compares conditions, such as lids, within the builds that were burnt under both: differences
 * between builds cancel. The intervals of all pairs hold together (Bonferroni).
 */
final class WithinBuilds {

  private final Measure measure;
  private final String level;
  private final double confidence;
  private final List<String> names = new ArrayList<>();
  private final List<Map<Key, double[]>> values = new ArrayList<>();

  WithinBuilds(Measure measure, String level, Map<String, RunGroup> groups, double confidence) {
    this.measure = measure;
    this.level = level;
    groups.forEach(
        (name, runs) -> {
          names.add(name);
          values.add(byBuild(runs, measure));
        });
    int pairs = Math.max(1, names.size() * (names.size() - 1) / 2);
    this.confidence = 1 - (1 - confidence) / pairs;
  }

  private static Map<Key, double[]> byBuild(RunGroup runs, Measure measure) {
    Map<Key, double[]> values = new LinkedHashMap<>();
    if (!runs.hidesFailures(measure)) {
      runs.byBuild()
          .forEach(
              (build, own) -> {
                double[] known = own.values(measure);
                if (known.length > 0) {
                  values.put(build, known);
                }
              });
    }
    return values;
  }

  /** Whether any build was burnt under two of the conditions. */
  boolean isPossible() {
    for (int i = 0; i < names.size(); i++) {
      for (int j = i + 1; j < names.size(); j++) {
        if (!common(i, j).isEmpty()) {
          return true;
        }
      }
    }
    return false;
  }

  List<Comparison> pairs() {
    List<Comparison> pairs = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      for (int j = i + 1; j < names.size(); j++) {
        List<Key> common = common(i, j);
        if (common.size() > 1) {
          pairs.add(paired(i, j, common));
        } else if (common.size() == 1) {
          pairs.addAll(oneBuild(i, j, common.get(0)));
        }
      }
    }
    return pairs;
  }

  private List<Key> common(int i, int j) {
    return values.get(i).keySet().stream().filter(values.get(j)::containsKey).toList();
  }

  private Comparison paired(int i, int j, List<Key> common) {
    double[] differences =
        common.stream()
            .mapToDouble(
                build ->
                    mean(Objects.requireNonNull(values.get(i).get(build)))
                        - mean(Objects.requireNonNull(values.get(j).get(build))))
            .toArray();
    Sample sample = Sample.of(level, differences);
    double deviation = Math.sqrt(sample.variance());
    return comparison(
        i,
        j,
        sample.mean(),
        deviation / Math.sqrt(sample.n()),
        sample.n() - 1.0,
        deviation,
        Method.WITHIN_BUILDS);
  }

  private List<Comparison> oneBuild(int i, int j, Key build) {
    Sample a = Sample.of(names.get(i), Objects.requireNonNull(values.get(i).get(build)));
    Sample b = Sample.of(names.get(j), Objects.requireNonNull(values.get(j).get(build)));
    if (a.n() < 2 || b.n() < 2) {
      return List.of();
    }
    double ofA = a.variance() / a.n();
    double ofB = b.variance() / b.n();
    double sum = ofA + ofB;
    double degreesOfFreedom =
        sum == 0
            ? a.n() + b.n() - 2.0
            : sum * sum / (ofA * ofA / (a.n() - 1) + ofB * ofB / (b.n() - 1));
    return List.of(
        comparison(
            i,
            j,
            a.mean() - b.mean(),
            Math.sqrt(sum),
            degreesOfFreedom,
            Math.sqrt((a.variance() + b.variance()) / 2),
            Method.ONE_BUILD));
  }

  private Comparison comparison(
      int i,
      int j,
      double difference,
      double standardError,
      double degreesOfFreedom,
      double deviation,
      Method method) {
    double pValue =
        Pairs.oneIfNothing(LinearFit.pValue(difference, standardError, degreesOfFreedom));
    Interval interval =
        Interval.around(
            difference, Measured.coverageFactor(confidence, degreesOfFreedom) * standardError);
    int pairs = names.size() * (names.size() - 1) / 2;
    return new Comparison(
        measure,
        level,
        names.get(i),
        names.get(j),
        difference,
        standardError,
        degreesOfFreedom,
        interval,
        pValue,
        Math.min(1, pValue * pairs),
        method,
        Verdict.of(interval),
        Pairs.margin(difference, standardError, degreesOfFreedom, confidence),
        Pairs.effectSize(difference, deviation, degreesOfFreedom),
        EffectSize.of(difference, standardError, deviation, degreesOfFreedom, confidence)
            .map(EffectSize::interval));
  }

  private static double mean(double[] values) {
    return Arrays.stream(values).average().orElseThrow();
  }
}
