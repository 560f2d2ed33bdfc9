package fairboil.analysis.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How large a study must be for one wish to come true as often as wanted.
 *
 * @param wish the wish
 * @param spreads the scatter reckoned with
 * @param needs for each basis, then each number of runs from 1 to {@link #MOST_RUNS}; unmodifiable
 * @param curves the odds against builds, for each basis and number of runs; unmodifiable
 */
public record Answer(Wish wish, Spreads spreads, List<Need> needs, List<Curve> curves) {

  /** Nobody burns each stove more often than this for it. */
  public static final int MOST_RUNS = 6;

  /** More builds than this nobody makes. */
  public static final int MOST_BUILDS = 200;

  /** Making a stove counts as so many burns (common practice, no source). */
  public static final int BURNS_A_STOVE = 3;

  /**
   * How many builds are needed.
   *
   * @param basis the scatter reckoned with
   * @param runs of each build
   * @param builds of each design, or in all for a hole effect; empty if more than {@link
   *     #MOST_BUILDS}
   */
  public record Need(Basis basis, int runs, OptionalInt builds) {

    /** The work that it is, in burns. */
    int work() {
      return builds.orElseThrow() * (runs + BURNS_A_STOVE);
    }
  }

  /**
   * How often the wish comes true.
   *
   * @param basis the scatter reckoned with
   * @param runs of each build
   * @param fewest the number of builds of the first odds; the next are each for one build more
   * @param odds shares from 0 to 1; unmodifiable
   */
  public record Curve(Basis basis, int runs, int fewest, List<Double> odds) {

    /** Copies the odds. */
    public Curve {
      odds = List.copyOf(odds);
    }
  }

  /** Copies the lists. */
  public Answer {
    needs = List.copyOf(needs);
    curves = List.copyOf(curves);
  }

  /** The need for a number of runs. */
  public Need need(Basis basis, int runs) {
    return needs.stream()
        .filter(need -> need.basis == basis && need.runs == runs)
        .findFirst()
        .orElseThrow();
  }

  /**
   * The advice: the least work with at least two runs of each build, so that run-to-run scatter
   * shows; of equal work that with fewer builds. Empty if none is within reach.
   */
  public Optional<Need> advice(Basis basis) {
    Optional<Need> best = Optional.empty();
    for (Need need : needs) {
      boolean fits = need.basis == basis && need.runs > 1 && need.builds.isPresent();
      if (fits && (best.isEmpty() || need.work() <= best.get().work())) {
        best = Optional.of(need);
      }
    }
    return best;
  }
}
