package fairboil.reports.chart;

import fairboil.analysis.run.RunResult;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.words.BudgetShare;
import fairboil.reports.words.Caption;
import fairboil.reports.words.Display;
import fairboil.reports.words.HeatWords;
import java.util.ArrayList;
import java.util.List;

/** What makes the peak and the normalised boil time of one run uncertain: a bar for each source. */
final class BudgetChart {

  private static final int ROW = 24;
  private static final int LEFT = 196;
  private static final int RIGHT = 112;
  private static final int FOOT = 52;
  private static final int EDGE = 18;
  private static final double HALF_BAR = 0.3;

  private final List<HeatWords.Uncertain> figures;
  private final Display display;
  private final Format format;

  /** A chart of a run that {@link #canDraw} allows. */
  BudgetChart(RunResult run, Display display, Format format) {
    this.figures = HeatWords.uncertain(run);
    this.display = display;
    this.format = format;
  }

  static boolean canDraw(RunResult run) {
    return !HeatWords.uncertain(run).isEmpty();
  }

  Sheet sheet(Caption caption) {
    List<KeyEntry> key =
        List.of(
            new KeyEntry.Area(Hue.BLUE, "of this run alone"),
            new KeyEntry.Area(Hue.ORANGE, "shared by many readings"));
    int rows = figures.size() + figures.stream().mapToInt(each -> each.seen().size()).sum();
    int top = format.top(caption, key);
    int height = top + rows * ROW + FOOT;
    Panel panel =
        new Panel(
            new Box(
                LEFT - EDGE,
                top - EDGE,
                format.width() - LEFT - RIGHT + 2 * EDGE,
                height - top + 2 * EDGE),
            "",
            "",
            new Axis("share of the variance (%)", -0.5, 100.5, Axis.Ticks.NUMBERS),
            new Axis("", -rows + 0.5, 0.5, Axis.Ticks.NONE),
            EDGE,
            0,
            marks());
    return format.sheet(caption, key, List.of(panel), height);
  }

  private List<ChartMark> marks() {
    List<ChartMark> marks = new ArrayList<>();
    int row = 0;
    for (HeatWords.Uncertain figure : figures) {
      marks.add(
          new ChartMark.Row(
              row--, figure.name(), "u = " + figure.told(display), Hue.BLACK, Weight.BOLD));
      for (BudgetShare share : figure.seen()) {
        marks.add(
            new ChartMark.Row(
                row,
                share.source(),
                share.percent() + ", " + figure.told(share.contribution(), display),
                Hue.BLACK,
                Weight.PLAIN));
        marks.add(bar(100 * share.share(), row--, share.isShared() ? Hue.ORANGE : Hue.BLUE));
      }
    }
    return marks;
  }

  private static ChartMark bar(double percent, int row, Hue hue) {
    return new ChartMark.Band(
        Points.of(
            new ChartPoint(0, row - HALF_BAR),
            new ChartPoint(0, row + HALF_BAR),
            new ChartPoint(percent, row + HALF_BAR),
            new ChartPoint(percent, row - HALF_BAR)),
        hue);
  }
}
