package fairboil.analysis.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The best rigid fit of the holes measured on a base onto its circles, which keep their angles and
 * are fitted together. The numbers on each circle may start anywhere and go either way round, and
 * the base may have been measured from its other face.
 *
 * @param motion the motion that takes the plan onto the holes
 * @param mirrored whether the base was measured from its other face
 * @param numberings one a circle
 * @param pairs the holes on their places, for each circle
 */
record BasePattern(
    Rigid motion, boolean mirrored, List<Numbering> numberings, List<List<Placing>> pairs) {

  /** A hole, its place in the plan and the two points. */
  record Placing(Spot spot, int slot, Rigid.Pair pair) {}

  /** The fit, or empty if there are fewer than two holes in different places. */
  static Optional<BasePattern> fit(List<BaseCircle> circles, List<Spot> spots) {
    Optional<BaseCircle> anchor =
        circles.stream()
            .filter(circle -> circle.radius() > 0)
            .max(Comparator.comparingLong(circle -> spots.stream().filter(circle::has).count()));
    if (anchor.isEmpty() || spots.size() < 2) {
      return Optional.empty();
    }
    double scale = anchor.get().radius();
    double noBetter = 1e-10 * scale * scale;
    BasePattern best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Search search : searches(circles, spots, circles.indexOf(anchor.get()))) {
      BasePattern pattern = search.run();
      double squares = pattern.motion.sumOfSquares(pattern.allPairs());
      if (squares < least - noBetter) {
        best = pattern;
        least = squares;
      }
    }
    return Optional.ofNullable(best);
  }

  private static List<Search> searches(List<BaseCircle> circles, List<Spot> spots, int anchor) {
    List<Spot> otherFace = spots.stream().map(spot -> spot.at(spot.a(), -spot.b())).toList();
    List<Search> searches = new ArrayList<>();
    for (Numbering numbering : Numbering.all(circles.get(anchor).plan().holes())) {
      searches.add(new Search(circles, spots, false, anchor, numbering));
    }
    for (Numbering numbering : Numbering.all(circles.get(anchor).plan().holes())) {
      searches.add(new Search(circles, otherFace, true, anchor, numbering));
    }
    return searches;
  }

  List<Rigid.Pair> allPairs() {
    return pairs.stream().flatMap(List::stream).map(Placing::pair).toList();
  }

  /** The fit for one numbering of the anchor circle: it decides how the others are numbered. */
  private record Search(
      List<BaseCircle> circles, List<Spot> spots, boolean mirrored, int anchor, Numbering given) {

    BasePattern run() {
      List<Rigid.Pair> anchorPairs = new ArrayList<>(pairs(circles.get(anchor), given));
      circles.stream()
          .filter(circle -> circle.radius() == 0)
          .forEach(circle -> anchorPairs.addAll(pairs(circle, Numbering.all(1).get(0))));
      List<Numbering> numberings = numberings(Rigid.fit(anchorPairs));
      numberings = numberings(Rigid.fit(pairs(numberings)));
      Rigid motion = Rigid.fit(pairs(numberings));
      List<List<Placing>> placings = new ArrayList<>();
      for (int i = 0; i < circles.size(); i++) {
        placings.add(placings(circles.get(i), numberings.get(i)));
      }
      return new BasePattern(motion, mirrored, numberings, placings);
    }

    private List<Numbering> numberings(Rigid motion) {
      List<Numbering> numberings = new ArrayList<>();
      for (int i = 0; i < circles.size(); i++) {
        numberings.add(i == anchor ? given : closest(circles.get(i), motion));
      }
      return numberings;
    }

    private Numbering closest(BaseCircle circle, Rigid motion) {
      double noBetter = 1e-10 * circle.radius() * circle.radius();
      Numbering best = null;
      double least = Double.POSITIVE_INFINITY;
      for (Numbering numbering : Numbering.all(circle.plan().holes())) {
        double squares = motion.sumOfSquares(pairs(circle, numbering));
        if (best == null || squares < least - noBetter) {
          best = numbering;
          least = squares;
        }
      }
      return Objects.requireNonNull(best);
    }

    private List<Rigid.Pair> pairs(List<Numbering> numberings) {
      List<Rigid.Pair> pairs = new ArrayList<>();
      for (int i = 0; i < circles.size(); i++) {
        pairs.addAll(pairs(circles.get(i), numberings.get(i)));
      }
      return pairs;
    }

    private List<Rigid.Pair> pairs(BaseCircle circle, Numbering numbering) {
      return placings(circle, numbering).stream().map(Placing::pair).toList();
    }

    private List<Placing> placings(BaseCircle circle, Numbering numbering) {
      return spots.stream()
          .filter(circle::has)
          .map(spot -> place(circle, numbering, spot))
          .toList();
    }

    private static Placing place(BaseCircle circle, Numbering numbering, Spot spot) {
      int slot = numbering.slot(circle.numberHere(spot));
      return new Placing(
          spot, slot, new Rigid.Pair(circle.planX(slot), circle.planY(slot), spot.a(), spot.b()));
    }
  }
}
