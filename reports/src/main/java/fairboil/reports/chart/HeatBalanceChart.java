package fairboil.reports.chart;

import fairboil.analysis.run.BalanceResult;
import fairboil.analysis.run.BalanceResult.Fitted;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.chart.ChartMark.Fill;
import fairboil.reports.chart.ChartMark.Need;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.words.Caption;
import fairboil.reports.words.Display;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The heat balance of one run over its data: the water above, reading less balance below. */
final class HeatBalanceChart {

  private static final int WATER = 230;
  private static final int RESIDUALS = 140;
  private static final int HEADING = 22;
  private static final int TIME_AXIS = 44;
  private static final int EDGE = 12;
  private static final double DOT = 6;
  private static final double LINE = 1.6;

  private final RunResult run;
  private final Shown degrees;
  private final Shown differences;
  private final Format format;

  /** A chart of a run that {@link #canDraw} allows. */
  HeatBalanceChart(RunResult run, Display display, Format format) {
    this.run = run;
    this.degrees = new Shown(display, Dimension.TEMPERATURE);
    this.differences = new Shown(display, Dimension.TEMPERATURE_DIFFERENCE);
    this.format = format;
  }

  /** Whether a part of the run was fitted. */
  static boolean canDraw(RunResult run) {
    return parts(run).findAny().isPresent();
  }

  /** What was fitted of a run: its heating, its cooling. */
  static Stream<Fitted> parts(RunResult run) {
    return run.energy().balance().stream()
        .flatMap(balance -> Stream.of(balance.heating(), balance.cooling()))
        .flatMap(part -> part.stream());
  }

  Sheet sheet(Caption caption) {
    List<KeyEntry> key =
        List.of(
            new KeyEntry.Symbol(Glyph.CIRCLE, Hue.BLUE, Fill.FAINT, DOT + 2, "readings, averaged"),
            new KeyEntry.Stroke(Hue.BLACK, Dash.SOLID, LINE, "heat balance"));
    int top = format.top(caption, key) + HEADING;
    int upper = format.height(WATER);
    int lowerTop = top + upper + HEADING + 4;
    int lower = format.height(RESIDUALS) + TIME_AXIS;
    Axis time = time();
    return format.sheet(
        caption,
        key,
        List.of(water(time, top, upper), rest(time, lowerTop, lower)),
        lowerTop + lower);
  }

  private Axis time() {
    return Range.of(parts(run).flatMapToDouble(part -> Arrays.stream(minutes(part))))
        .axis("minutes from the start of the log", Axis.Ticks.NUMBERS, 0.02);
  }

  static double[] minutes(Fitted part) {
    return Arrays.stream(part.seconds()).map(second -> second / 60).toArray();
  }

  private Panel water(Axis time, int top, int height) {
    List<ChartMark> marks = new ArrayList<>();
    parts(run).forEach(part -> addCourse(marks, part));
    BalanceResult balance = run.energy().balance().orElseThrow();
    balance.heating().ifPresent(part -> marks.add(label(part, "heating")));
    balance.cooling().ifPresent(part -> marks.add(label(part, "cooling")));
    Axis y =
        Range.of(parts(run).flatMapToDouble(part -> Arrays.stream(part.celsius())).map(degrees::of))
            .axis(degrees.title("water"), degrees.ticks(), 0.06, 0.12);
    return panel(time.bare(), y, top, height, marks);
  }

  private void addCourse(List<ChartMark> marks, Fitted part) {
    double[] read = part.celsius();
    double[] off = part.residuals();
    double[] fitted = IntStream.range(0, off.length).mapToDouble(i -> read[i] - off[i]).toArray();
    marks.add(
        new ChartMark.Dots(
            Points.of(minutes(part), shown(read, degrees)),
            Hue.BLUE,
            Glyph.CIRCLE,
            Fill.FAINT,
            DOT));
    marks.add(
        new ChartMark.Line(
            Points.of(minutes(part), shown(fitted, degrees)), Hue.BLACK, Dash.SOLID, LINE));
  }

  private static double[] shown(double[] held, Shown as) {
    return Arrays.stream(held).map(as::of).toArray();
  }

  private ChartMark label(Fitted part, String text) {
    double[] minutes = minutes(part);
    int middle = minutes.length / 2;
    ChartPoint spot = new ChartPoint(minutes[middle], degrees.of(part.celsius()[middle]));
    return new ChartMark.Label(List.of(spot), text, Hue.BLACK, Weight.BOLD, Need.IF_ROOM);
  }

  private Panel rest(Axis time, int top, int height) {
    List<ChartMark> marks = new ArrayList<>();
    Points zero = Points.of(new ChartPoint(time.from(), 0), new ChartPoint(time.to(), 0));
    marks.add(new ChartMark.Line(zero, Hue.BLACK, Dash.SOLID, 1.2));
    parts(run)
        .forEach(
            part ->
                marks.add(
                    new ChartMark.Dots(
                        Points.of(minutes(part), shown(part.residuals(), differences)),
                        Hue.BLUE,
                        Glyph.CIRCLE,
                        Fill.FAINT,
                        DOT)));
    double reach = differences.of(reach(Stream.of(run)));
    Axis y =
        new Axis(differences.title("reading less balance"), -reach, reach, differences.ticks());
    return panel(time, y, top, height, marks);
  }

  /** The largest residual of those runs, K, with a little to spare; never 0. */
  static double reach(Stream<RunResult> runs) {
    double largest =
        runs.flatMap(HeatBalanceChart::parts)
            .flatMapToDouble(part -> Arrays.stream(part.residuals()))
            .map(Math::abs)
            .max()
            .orElse(0);
    return 1.15 * Math.max(1e-3, largest);
  }

  private Panel panel(Axis along, Axis up, int top, int height, List<ChartMark> marks) {
    Box box = new Box(14 - EDGE, top - EDGE, format.width() - 28 + 2 * EDGE, height + 2 * EDGE);
    return new Panel(box, up.title(), "", along, up, EDGE, 0, marks);
  }
}
