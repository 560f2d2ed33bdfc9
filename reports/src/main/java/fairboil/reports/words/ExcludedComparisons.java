package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.WithExcluded;
import fairboil.analysis.compare.Comparison;
import fairboil.analysis.compare.Comparison.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is said of differences with and without the runs that were left out. */
final class ExcludedComparisons {

  private final CompareWords words;
  private final WithExcluded all;
  private final Map<String, List<String>> lost = new LinkedHashMap<>();
  private final List<String> turned = new ArrayList<>();
  private int same;
  private int stoves;
  private int stovesTurned;

  private ExcludedComparisons(Results results, WithExcluded all) {
    this.words = CompareWords.of(results);
    this.all = all;
  }

  /** Which differences counting them would have changed; none if nothing was left out. */
  static List<String> sentences(Results results) {
    return results
        .withExcluded()
        .map(all -> new ExcludedComparisons(results, all).sentences(results.comparisons()))
        .orElse(List.of());
  }

  private List<String> sentences(List<Comparison> without) {
    without.stream().filter(pair -> pair.method().isHeadline()).forEach(this::add);
    List<String> sentences = new ArrayList<>(turned);
    lost.forEach(
        (pair, measures) ->
            sentences.add(
                pair
                    + " would have no difference in "
                    + Plural.list(measures)
                    + ", because a run would be counted that did not boil."));
    if (same > 0) {
      sentences.add(
          "Of designs and conditions, "
              + Plural.of(same, turned.isEmpty() ? "difference" : "other difference")
              + " would be judged the same.");
    }
    if (stoves > 0) {
      sentences.add(
          "Of "
              + Plural.of(stoves, "difference")
              + " between those very stoves, "
              + stovesTurned
              + " would be judged otherwise or have no figure.");
    }
    return sentences;
  }

  private void add(Comparison without) {
    Optional<Comparison> with =
        all.comparisons().stream().filter(it -> isSame(it, without)).findFirst();
    boolean turns = with.isEmpty() || with.get().verdict() != without.verdict();
    if (without.level().equals(Comparison.BUILD)) {
      stoves++;
      stovesTurned += turns ? 1 : 0;
    } else if (with.isEmpty()) {
      lost.computeIfAbsent(CompareWords.less(without), pair -> new ArrayList<>())
          .add(without.measure().label());
    } else if (turns) {
      turned.add(figures(with.get(), without));
    } else {
      same++;
    }
  }

  private static boolean isSame(Comparison a, Comparison b) {
    return a.measure() == b.measure()
        && a.method() == b.method()
        && a.level().equals(b.level())
        && a.a().equals(b.a())
        && a.b().equals(b.b());
  }

  private String figures(Comparison with, Comparison without) {
    return CompareWords.less(without)
        + " in "
        + without.measure().label()
        + " would be "
        + words.withInterval(with)
        + " rather than "
        + words.withInterval(without)
        + turn(with.verdict(), without.verdict());
  }

  private static String turn(Verdict with, Verdict without) {
    if (with == Verdict.NOT_SETTLED) {
      return ", which is not settled.";
    }
    return without == Verdict.NOT_SETTLED ? ", which is settled." : ", which is the other way.";
  }
}
