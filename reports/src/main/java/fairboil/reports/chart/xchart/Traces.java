package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Dash;
import fairboil.reports.chart.Mark;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Long and broken lines, painted each as one path, and whatever lies on them.
 *
 * <p>XChart strokes every piece of a line by itself, which begins each dash anew and takes long.
 */
final class Traces {

  private static final int LONG = 100;

  private final List<Mark> under = new ArrayList<>();
  private final List<Mark> over = new ArrayList<>();

  Traces(List<Mark> marks) {
    for (Mark mark : marks) {
      boolean above = !over.isEmpty() && (mark instanceof Mark.Line || mark instanceof Mark.Dots);
      (above || isTrace(mark) ? over : under).add(mark);
    }
  }

  private static boolean isTrace(Mark mark) {
    return mark instanceof Mark.Line line
        && (line.dash() != Dash.SOLID || line.points().size() > LONG);
  }

  /** The marks that lie under all traces. */
  List<Mark> under() {
    return under;
  }

  /** Paints the traces and the lines and points that lie on them. */
  void paint(Graphics2D panel, Frame frame, Ink ink) {
    MarkPainter.paint(panel, over, frame, ink);
  }
}
