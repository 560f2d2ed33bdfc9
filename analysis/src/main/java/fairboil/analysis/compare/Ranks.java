package fairboil.analysis.compare;

import fairboil.analysis.compare.RankComparison.Unit;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.measure.WithoutBoil;
import fairboil.analysis.model.RankSum;
import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Compares times to the boil by rank where some runs did not boil. Units are those of the
 * comparison by means: runs of a stove are not stoves here either.
 *
 * @param measure a measure; only times to the boil are ever compared: of what else a run that did
 *     not boil lacks, nobody knows whether it would have been more or less
 * @param level what is compared
 * @param unit what is ranked
 */
record Ranks(Measure measure, String level, Unit unit) {

  /** Whether some build was burnt under two of the conditions. */
  static boolean anyBuildHasTwo(Map<String, RunGroup> groups) {
    Set<Key> seen = new HashSet<>();
    return groups.values().stream()
        .flatMap(runs -> runs.byBuild().keySet().stream())
        .anyMatch(build -> !seen.add(build));
  }

  /** The pairs of which some run did not boil, as far as there is anything to rank. */
  List<RankComparison> pairs(Map<String, RunGroup> groups) {
    List<RankComparison> pairs = new ArrayList<>();
    List<String> names = List.copyOf(groups.keySet());
    for (int i = 0; i < names.size(); i++) {
      for (int j = i + 1; j < names.size(); j++) {
        pair(
                names.get(i),
                Objects.requireNonNull(groups.get(names.get(i))),
                names.get(j),
                Objects.requireNonNull(groups.get(names.get(j))))
            .ifPresent(pairs::add);
      }
    }
    return pairs;
  }

  private Optional<RankComparison> pair(String nameA, RunGroup a, String nameB, RunGroup b) {
    double[] timesA = times(a);
    double[] timesB = times(b);
    boolean none = timesA.length == 0 || timesB.length == 0;
    if (measure.withoutBoil() != WithoutBoil.WOULD_TAKE_LONGER
        || none
        || !(a.hidesFailures(measure) || b.hidesFailures(measure))) {
      return Optional.empty();
    }
    return test(a, b)
        .map(
            test ->
                new RankComparison(
                    measure,
                    level,
                    nameA,
                    nameB,
                    a.boils(),
                    b.boils(),
                    unit,
                    new RankSum(
                        RankSum.superiority(timesA, timesB), test.pValue(), test.method())));
  }

  private Optional<RankSum> test(RunGroup a, RunGroup b) {
    return switch (unit) {
      case RUNS -> Optional.of(RankSum.of(times(a), times(b)));
      case BUILDS -> {
        double[] ofA = values(medians(a));
        double[] ofB = values(medians(b));
        yield ofA.length + ofB.length > 2 ? Optional.of(RankSum.of(ofA, ofB)) : Optional.empty();
      }
      case WITHIN_BUILDS -> signs(medians(a), medians(b));
    };
  }

  private static Optional<RankSum> signs(Map<Key, Double> a, Map<Key, Double> b) {
    int larger = 0;
    int smaller = 0;
    for (Map.Entry<Key, Double> entry : a.entrySet()) {
      Double other = b.get(entry.getKey());
      if (other != null) {
        larger += entry.getValue() > other ? 1 : 0;
        smaller += entry.getValue() < other ? 1 : 0;
      }
    }
    return larger + smaller > 0 ? Optional.of(RankSum.ofSigns(larger, smaller)) : Optional.empty();
  }

  private static double[] values(Map<Key, Double> medians) {
    return medians.values().stream().mapToDouble(median -> median).toArray();
  }

  /** The median of each build, infinite where most of its runs did not boil. */
  private Map<Key, Double> medians(RunGroup runs) {
    Map<Key, Double> medians = new LinkedHashMap<>();
    runs.byBuild()
        .forEach(
            (build, own) -> {
              double[] times = times(own);
              if (times.length > 0) {
                Arrays.sort(times);
                double upper = times[times.length / 2];
                double lower = times[(times.length - 1) / 2];
                medians.put(build, Double.isInfinite(upper) ? upper : (lower + upper) / 2);
              }
            });
    return medians;
  }

  /** The known times, and infinity for each run that did not boil; none of one not seen. */
  private double[] times(RunGroup group) {
    double[] known =
        group.figures(measure).stream().mapToDouble(each -> each.measured().value()).toArray();
    double[] times = Arrays.copyOf(known, known.length + group.hidden(measure));
    Arrays.fill(times, known.length, times.length, Double.POSITIVE_INFINITY);
    return times;
  }
}
