package fairboil.reports.print;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Where everything on a measuring strip lies. Millimetres; heights on the strip count from the edge
 * that lies along the rim.
 *
 * <p>The strip begins and ends midway between two divisions, so that no hole is cut in two, and is
 * exactly one wrap long. Where it is longer than a page it is cut midway between divisions too.
 *
 * @param plan the ring
 * @param spacing distance between divisions along the wrap
 * @param row distance of the holes from the rim edge where the strip reaches that far
 * @param width width of the strip
 * @param pieces its pieces in order; unmodifiable
 */
record StripLayout(
    RingPlan plan, double spacing, OptionalDouble row, double width, List<Piece> pieces) {

  /** The longest wrap that is drawn. */
  static final double LONGEST = 5000;

  /** Length of the tab that is glued under the next piece. */
  static final double TAB = 12;

  /** Height of both scales together. */
  static final double SCALES = 14;

  /** Room for the numbers of divisions and holes. */
  static final double NUMBERS = 6.5;

  /** Width of a strip that does not reach the rim. */
  private static final double NARROW = 28;

  /** How far at most the strip begins before division 1. */
  private static final double LEAD = 15;

  /** Space above a piece for its caption, and between pieces. */
  static final double CAPTION = 5;

  private static final double GAP = 4;

  /** Where pieces may lie on a page across. */
  record Area(double left, double top, double width, double height) {}

  /** Copies the pieces. */
  StripLayout {
    pieces = List.copyOf(pieces);
  }

  /**
   * Lays out a strip.
   *
   * @param plan a ring in the wall
   * @param wrap its wrap, above 0
   * @param area where pieces may lie on each page
   */
  static StripLayout of(RingPlan plan, double wrap, Area area) {
    double spacing = wrap / plan.divisions();
    OptionalDouble row = row(plan, area.height - CAPTION);
    double width = row.isPresent() ? widthFor(plan, row.getAsDouble()) : NARROW;
    double from = -Math.min(spacing / 2, LEAD);
    List<Double> cuts = new Cuts(plan, spacing, area.width - TAB).of(from, from + wrap);
    return new StripLayout(plan, spacing, row, width, placed(cuts, width, area));
  }

  private static OptionalDouble row(RingPlan plan, double most) {
    OptionalDouble height = plan.height();
    boolean reaches =
        height.isPresent()
            && height.getAsDouble() > 0
            && widthFor(plan, height.getAsDouble()) <= most;
    return reaches ? height : OptionalDouble.empty();
  }

  private static double widthFor(RingPlan plan, double height) {
    return height + plan.diameter().orElse(0) / 2 + NUMBERS + SCALES;
  }

  private static List<Piece> placed(List<Double> cuts, double width, Area area) {
    double pitch = CAPTION + width + GAP;
    int perPage = Math.max(1, (int) Math.floor((area.height + GAP) / pitch));
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i + 1 < cuts.size(); i++) {
      double y = area.top + CAPTION + i % perPage * pitch;
      pieces.add(new Piece(cuts.get(i), cuts.get(i + 1), i / perPage, area.left, y));
    }
    return pieces;
  }

  int pages() {
    return pieces.get(pieces.size() - 1).page() + 1;
  }

  /** The divisions in order. */
  List<RingMark> marks() {
    return IntStream.rangeClosed(1, plan.divisions())
        .mapToObj(
            division -> new RingMark(division, plan.holeOn(division), (division - 1) * spacing))
        .toList();
  }
}
