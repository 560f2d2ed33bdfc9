package fairboil.reports.chart;

import fairboil.analysis.run.BalanceResult.Fitted;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.words.Caption;
import fairboil.reports.words.Display;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How far the water of many runs lies from its heat balance, small and over the same axes. */
final class BalanceSheet {

  private static final int COLUMNS = 4;
  private static final int WIDTH = (Sheet.WIDTH - 28 - (COLUMNS - 1) * 12) / COLUMNS;
  private static final int HEIGHT = 40;
  private static final int ROW = HEIGHT + 26;
  private static final int HEADING = 20;
  private static final int SHARPNESS = 2;
  private static final double LINE = 1.4;

  private final List<RunResult> runs;
  private final Shown differences;
  private final Axis time;
  private final Axis up;
  private final double reach;

  BalanceSheet(List<RunResult> runs, Display display) {
    this.runs = runs;
    this.differences = new Shown(display, Dimension.TEMPERATURE_DIFFERENCE);
    this.time =
        Range.of(
                runs.stream()
                    .flatMap(HeatBalanceChart::parts)
                    .flatMapToDouble(part -> Arrays.stream(HeatBalanceChart.minutes(part))))
            .axis("", Axis.Ticks.NONE, 0);
    this.reach = HeatBalanceChart.reach(runs.stream());
    double shown = differences.of(reach);
    this.up = new Axis("", -shown, shown, Axis.Ticks.NONE);
  }

  /** How long the time axis of each is, in minutes. */
  double minutes() {
    return time.length();
  }

  /** How far above and below 0 each panel reaches, in K. */
  double reach() {
    return reach;
  }

  Sheet sheet(Caption caption) {
    List<KeyEntry> key =
        List.of(
            new KeyEntry.Stroke(Hue.VERMILION, Dash.SOLID, LINE, "heating"),
            new KeyEntry.Stroke(Hue.BLUE, Dash.DOTTED, LINE, "cooling"),
            new KeyEntry.Stroke(Hue.GREY, Dash.SOLID, 1, "the balance"));
    int top = Format.SCREEN.top(caption, key) + HEADING;
    List<Panel> panels = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      Box box = new Box(14 + i % COLUMNS * (WIDTH + 12), top + i / COLUMNS * ROW, WIDTH, HEIGHT);
      panels.add(panel(runs.get(i), box));
    }
    int rows = (runs.size() + COLUMNS - 1) / COLUMNS;
    return new Sheet(
        caption.title(), caption.subtitle(), key, panels, Sheet.WIDTH, top + rows * ROW, SHARPNESS);
  }

  private Panel panel(RunResult run, Box box) {
    List<ChartMark> marks = new ArrayList<>();
    Points zero = Points.of(new ChartPoint(time.from(), 0), new ChartPoint(time.to(), 0));
    marks.add(new ChartMark.Line(zero, Hue.GREY, Dash.SOLID, 1));
    run.energy()
        .balance()
        .ifPresent(
            balance -> {
              add(marks, balance.heating(), Hue.VERMILION, Dash.SOLID);
              add(marks, balance.cooling(), Hue.BLUE, Dash.DOTTED);
            });
    return new Panel(box, run.run().key().name(), "", time, up, 0, 0, marks);
  }

  private void add(List<ChartMark> marks, Optional<Fitted> fitted, Hue hue, Dash dash) {
    fitted.ifPresent(
        part ->
            marks.add(
                new ChartMark.Line(
                    Points.of(
                        HeatBalanceChart.minutes(part),
                        Arrays.stream(part.residuals()).map(differences::of).toArray()),
                    hue,
                    dash,
                    LINE)));
  }
}
