package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.WithExcluded;
import fairboil.analysis.compare.Comparison;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is said of differences with and without the runs that were left out. */
public final class ExcludedComparisons {

  private final CompareWords words;
  private final WithExcluded all;
  private final List<String> changed = new ArrayList<>();
  private final List<String> moved = new ArrayList<>();
  private int same;

  private ExcludedComparisons(Results results, WithExcluded all) {
    this.words = CompareWords.of(results);
    this.all = all;
  }

  /** Which differences counting them would have changed; none if nothing was left out. */
  public static List<String> sentences(Results results) {
    return results
        .withExcluded()
        .map(all -> new ExcludedComparisons(results, all).sentences(results.comparisons()))
        .orElse(List.of());
  }

  private List<String> sentences(List<Comparison> without) {
    without.stream().filter(pair -> pair.method().isHeadline()).forEach(this::add);
    List<String> sentences = new ArrayList<>(changed);
    if (same + moved.size() > 0) {
      sentences.add(
          (changed.isEmpty() ? "Every" : "Every other")
              + " difference that is told would be judged the same."
              + (moved.isEmpty() ? "" : " In figures: " + String.join("; ", moved) + "."));
    }
    return sentences;
  }

  private void add(Comparison without) {
    Optional<Comparison> with =
        all.comparisons().stream().filter(it -> isSame(it, without)).findFirst();
    if (with.isEmpty()) {
      changed.add(
          subject(without)
              + " could not be compared by their means, because a run would be counted that has"
              + " none.");
    } else if (with.get().verdict() != without.verdict()) {
      changed.add(figures(with.get(), without) + ", so " + verdict(with.get(), without) + ".");
    } else if (words.withInterval(with.get()).equals(words.withInterval(without))) {
      same++;
    } else {
      moved.add(figures(with.get(), without));
    }
  }

  private static boolean isSame(Comparison a, Comparison b) {
    return a.measure() == b.measure()
        && a.method() == b.method()
        && a.level().equals(b.level())
        && a.a().equals(b.a())
        && a.b().equals(b.b());
  }

  private static String subject(Comparison pair) {
    return "In " + pair.measure().label() + ", " + CompareWords.less(pair);
  }

  private String figures(Comparison with, Comparison without) {
    return CompareWords.less(without)
        + " in "
        + without.measure().label()
        + " would be "
        + words.withInterval(with)
        + " rather than "
        + words.withInterval(without);
  }

  private static String verdict(Comparison with, Comparison without) {
    return with.verdict() == Comparison.Verdict.NOT_SETTLED
        ? "it would not be settled, where now it is"
        : without.verdict() == Comparison.Verdict.NOT_SETTLED
            ? "it would be settled, where now it is not"
            : "the sign would turn";
  }
}
