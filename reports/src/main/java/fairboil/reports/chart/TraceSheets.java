package fairboil.reports.chart;

import fairboil.analysis.run.RunResult;
import fairboil.analysis.trace.Curve;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.words.Caption;
import fairboil.reports.words.Display;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/** The traces of many runs, small and side by side over the same axes. */
final class TraceSheets {

  /** As many runs as one sheet shows. */
  static final int RUNS_A_SHEET = 60;

  private static final int COLUMNS = 4;
  private static final int WIDTH = (Sheet.WIDTH - 28 - (COLUMNS - 1) * 12) / COLUMNS;
  private static final int HEIGHT = 62;
  private static final int ROW = HEIGHT + 28;
  private static final int HEADING = 20;
  // Two points a pixel are as many as can be seen.
  private static final int BUCKETS = WIDTH / 2;

  private final Shown degrees;
  private final Axis time;
  private final Axis up;

  /** Sheets of runs that can be drawn, all over the axes that hold every one of them. */
  TraceSheets(List<RunResult> all, Display display) {
    this.degrees = new Shown(display, Dimension.TEMPERATURE);
    Range times = new Range();
    Range temperatures = new Range();
    for (RunResult run : all) {
      for (Curve curve : curves(run)) {
        DoubleStream.of(curve.seconds()).forEach(second -> times.add(second / 60));
        DoubleStream.of(curve.celsius()).forEach(celsius -> temperatures.add(degrees.of(celsius)));
      }
    }
    this.time = times.axis("", Axis.Ticks.NONE, 0);
    this.up = temperatures.axis("", Axis.Ticks.NONE, 0.02);
  }

  Axis time() {
    return time;
  }

  /** From and to which temperature each panel reaches. */
  String temperatures() {
    return whole(up.from())
        + " to "
        + whole(up.to())
        + " "
        + degrees.display().symbol(Dimension.TEMPERATURE);
  }

  private static String whole(double value) {
    return (Math.round(value) < 0 ? "\u2212" : "") + Math.abs(Math.round(value));
  }

  private static List<Curve> curves(RunResult run) {
    return run.sketch().curves().stream()
        .filter(curve -> curve.role() == Role.FLAME || curve.role() == Role.WATER)
        .filter(curve -> Arrays.stream(curve.celsius()).anyMatch(Double::isFinite))
        .toList();
  }

  Sheet sheet(List<RunResult> some, Caption caption, Display display) {
    List<KeyEntry> key =
        List.of(
            new KeyEntry.Stroke(Hue.VERMILION, Dash.SOLID, 1.2, "flame"),
            new KeyEntry.Stroke(Hue.BLUE, Dash.SOLID, 1.8, "water"));
    int top = Format.SCREEN.top(caption, key) + HEADING;
    List<Panel> panels = new ArrayList<>();
    for (int i = 0; i < some.size(); i++) {
      Box box = new Box(14 + i % COLUMNS * (WIDTH + 12), top + i / COLUMNS * ROW, WIDTH, HEIGHT);
      panels.add(panel(some.get(i), box, display));
    }
    int rows = (some.size() + COLUMNS - 1) / COLUMNS;
    return new Sheet(
        caption.title(), caption.subtitle(), key, panels, Sheet.WIDTH, top + rows * ROW, 1);
  }

  private Panel panel(RunResult run, Box box, Display display) {
    List<ChartMark> marks = new ArrayList<>();
    Points floor =
        Points.of(new ChartPoint(time.from(), up.from()), new ChartPoint(time.to(), up.from()));
    marks.add(new ChartMark.Line(floor, Hue.GREY, Dash.SOLID, 1));
    for (Curve curve : curves(run)) {
      boolean flame = curve.role() == Role.FLAME;
      marks.add(
          new ChartMark.Line(
              thinned(curve), flame ? Hue.VERMILION : Hue.BLUE, Dash.SOLID, flame ? 1 : 1.6));
    }
    String boil =
        run.boil()
            .boilTime()
            .ifKnown()
            .map(known -> display.number(known.value(), 1, known.dimension()))
            .orElse("");
    return new Panel(box, run.run().key().name(), boil, time, up, 0, 0, marks);
  }

  /** The lowest and highest of each stretch, in the order in which they came. */
  private Points thinned(Curve curve) {
    double[] seconds = curve.seconds();
    double[] celsius = curve.celsius();
    int stretch = Math.max(1, curve.size() / BUCKETS);
    List<ChartPoint> spots = new ArrayList<>();
    for (int from = 0; from < seconds.length; from += stretch) {
      int low = from;
      int high = from;
      for (int i = from; i < Math.min(seconds.length, from + stretch); i++) {
        low = celsius[low] <= celsius[i] ? low : i;
        high = celsius[high] >= celsius[i] ? high : i;
      }
      for (int i : low < high ? new int[] {low, high} : new int[] {high, low}) {
        spots.add(new ChartPoint(seconds[i] / 60, degrees.of(celsius[i])));
      }
    }
    return Points.of(spots);
  }
}
