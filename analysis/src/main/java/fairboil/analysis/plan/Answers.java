package fairboil.analysis.plan;

import fairboil.analysis.plan.Answer.Curve;
import fairboil.analysis.plan.Answer.Need;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Finds how large a study must be. */
final class Answers {

  private static final int SHORTEST_CURVE = 12;
  private static final int LONGEST_CURVE = 40;

  private final Wish wish;
  private final Odds odds;
  private final double power;

  private Answers(Wish wish, Odds odds, double power) {
    this.wish = wish;
    this.odds = odds;
    this.power = power;
  }

  static Answer of(Wish wish, Spreads spreads, Odds odds, double power) {
    return new Answers(wish, odds, power).answer(spreads);
  }

  private Answer answer(Spreads spreads) {
    List<Need> needs = new ArrayList<>();
    for (Basis basis : Basis.values()) {
      for (int runs = 1; runs <= Answer.MOST_RUNS; runs++) {
        needs.add(new Need(basis, runs, builds(runs, basis)));
      }
    }
    int longest =
        needs.stream().mapToInt(need -> need.builds().orElse(LONGEST_CURVE)).max().orElseThrow();
    int last = Math.max(SHORTEST_CURVE, Math.min(LONGEST_CURVE, longest + 2));
    List<Curve> curves = new ArrayList<>();
    for (Basis basis : Basis.values()) {
      for (int runs = 1; runs <= Answer.MOST_RUNS; runs++) {
        curves.add(curve(runs, basis, last));
      }
    }
    return new Answer(wish, spreads, needs, curves);
  }

  /** The fewest that are enough: the odds grow with the number of builds. */
  private OptionalInt builds(int runs, Basis basis) {
    if (odds.of(Answer.MOST_BUILDS, runs, basis) < power) {
      return OptionalInt.empty();
    }
    int few = wish.kind().fewestBuilds() - 1;
    int enough = Answer.MOST_BUILDS;
    while (enough - few > 1) {
      int middle = (few + enough) / 2;
      if (odds.of(middle, runs, basis) < power) {
        few = middle;
      } else {
        enough = middle;
      }
    }
    return OptionalInt.of(enough);
  }

  private Curve curve(int runs, Basis basis, int last) {
    List<Double> shares = new ArrayList<>();
    int fewest = wish.kind().fewestBuilds();
    for (int builds = fewest; builds <= last; builds++) {
      shares.add(odds.of(builds, runs, basis));
    }
    return new Curve(basis, runs, fewest, shares);
  }
}
