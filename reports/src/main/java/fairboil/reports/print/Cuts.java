package fairboil.reports.print;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a strip is cut into pieces that fit the paper: pieces of about the same length, each cut as
 * far as can be from the holes beside it. Millimetres along the wrap.
 *
 * @param plan the ring
 * @param spacing distance between divisions
 * @param most the longest that a piece may be
 */
record Cuts(RingPlan plan, double spacing, double most) {

  /** Distance from a hole at which a cut is as good as any further away. */
  private static final double FAR_ENOUGH = 12;

  /** The ends of the strip and the cuts between them, in order. */
  List<Double> of(double from, double to) {
    List<Double> cuts = new ArrayList<>();
    double start = from;
    cuts.add(start);
    while (to - start > most) {
      int pieces = (int) Math.ceil((to - start) / most);
      start = best(start, start + (to - start) / pieces);
      cuts.add(start);
    }
    cuts.add(to);
    return cuts;
  }

  /** The place nearest to the wished one that keeps clear of the divisions. */
  private double best(double start, double wished) {
    double best = wished;
    double reach = Math.min(most / 4, Math.max(spacing, FAR_ENOUGH));
    for (double shift = 0; shift <= reach; shift += 0.5) {
      for (double place : new double[] {wished - shift, wished + shift}) {
        if (place - start <= most && clearance(place) > clearance(best)) {
          best = place;
        }
      }
    }
    return best;
  }

  private double clearance(double along) {
    double turn = along / spacing;
    return Math.min(Math.abs(turn - Math.rint(turn)) * spacing, FAR_ENOUGH);
  }
}
