package fairboil.reports.chart.xchart;

import fairboil.reports.chart.ChartMark;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.chart.Panel;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Writes the words of moments above a panel, in lanes, so that no words cover others and no leader
 * runs through words.
 */
final class MomentLanes {

  private static final double LANE = 16;
  private static final double FIRST_BASELINE = -22;
  private static final double GAP = 4;
  private static final double WIDEST = 150;

  private final ChartLettering lettering;
  private final ChartInk ink;
  private final Font font;

  MomentLanes(ChartLettering lettering, ChartInk ink) {
    this.lettering = lettering;
    this.ink = ink;
    this.font = lettering.font(Weight.PLAIN, 12.5f);
  }

  /**
   * Words in their lane.
   *
   * @param at where the moment is
   * @param from the left edge of the words
   * @param to their right edge
   * @param lane the lane, 0 nearest the panel
   */
  record Placed(String text, double at, double from, double to, int lane) {

    boolean disturbs(Placed other) {
      boolean overlaps = lane == other.lane && from < other.to + GAP && other.from < to + GAP;
      return overlaps || crosses(other) || other.crosses(this);
    }

    /** Whether the leader up to these words runs through the others. */
    private boolean crosses(Placed other) {
      return other.lane < lane && at > other.from - GAP && at < other.to + GAP;
    }
  }

  void paint(Graphics2D g, Panel panel, Frame frame) {
    if (panel.lanes() == 0) {
      return;
    }
    double top = frame.y(panel.y().to());
    for (Placed placed : placed(panel, frame)) {
      double baseline = FIRST_BASELINE - placed.lane() * LANE;
      g.setColor(ink.moment());
      g.setStroke(ChartInk.HAIR);
      g.draw(new Line2D.Double(placed.at(), top, placed.at(), baseline - 9));
      lettering.draw(g, placed.text(), placed.from(), baseline, font, ink.secondText());
    }
  }

  List<Placed> placed(Panel panel, Frame frame) {
    List<ChartMark.Moment> moments = new ArrayList<>();
    for (ChartMark mark : panel.marks()) {
      if (mark instanceof ChartMark.Moment moment && !moment.text().isEmpty()) {
        moments.add(moment);
      }
    }
    moments.sort(Comparator.comparingDouble(ChartMark.Moment::x).reversed());
    List<Placed> placed = new ArrayList<>();
    for (ChartMark.Moment moment : moments) {
      String text = lettering.fitted(moment.text(), font, WIDEST);
      place(text, frame.x(moment.x()), panel, placed).ifPresent(placed::add);
    }
    return placed;
  }

  private Optional<Placed> place(String text, double at, Panel panel, List<Placed> others) {
    double width = lettering.width(text, font);
    for (double from : new double[] {at + GAP, at - GAP - width}) {
      for (int lane = 0; lane < panel.lanes(); lane++) {
        Placed candidate = new Placed(text, at, from, from + width, lane);
        boolean inside = candidate.from() >= 0 && candidate.to() <= panel.box().width();
        if (inside && others.stream().noneMatch(candidate::disturbs)) {
          return Optional.of(candidate);
        }
      }
    }
    return Optional.empty();
  }
}
