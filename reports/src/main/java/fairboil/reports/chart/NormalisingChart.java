package fairboil.reports.chart;

import fairboil.analysis.group.Restating;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.chart.ChartMark.Fill;
import fairboil.reports.chart.DesignStyles.Style;
import fairboil.reports.words.Caption;
import fairboil.reports.words.Display;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Boil times as measured above, normalised below, against air and water of each burn. */
final class NormalisingChart {

  private static final int PANEL = 190;
  private static final int HEADING = 22;
  private static final int AXIS = 44;
  private static final int EDGE = 12;
  // Boxes of panels side by side must not overlap.
  private static final int GAP = 26;
  private static final double DOT = 9;

  private final Restating restating;
  private final DesignStyles styles;
  private final Shown temperature;
  private final Shown mass;
  private final Shown time;
  private final Format format;

  NormalisingChart(Restating restating, DesignStyles styles, Display display, Format format) {
    this.restating = restating;
    this.styles = styles;
    this.temperature = new Shown(display, Dimension.TEMPERATURE);
    this.mass = new Shown(display, Dimension.MASS);
    this.time = new Shown(display, Dimension.DURATION);
    this.format = format;
  }

  Sheet sheet(Caption caption) {
    List<KeyEntry> key = styles.key(designs());
    int top = format.top(caption, key) + HEADING;
    int panel = format.height(PANEL);
    int width = (format.width() - 28) / 2;
    Axis air = axis(temperature, "air", NormalisingChart::air);
    Axis water = axis(mass, "water", NormalisingChart::water);
    Axis y = times();
    int second = top + panel + HEADING + 8;
    List<Panel> panels = new ArrayList<>();
    for (Measure measure : List.of(Measure.BOIL_TIME, Measure.NORMALISED_BOIL_TIME)) {
      boolean above = measure == Measure.BOIL_TIME;
      int from = above ? top : second;
      int height = above ? panel : panel + AXIS;
      String heading = above ? "as measured" : "normalised";
      panels.add(panel(14, from, width, height, heading, untitled(air, above), y, air(measure)));
      panels.add(
          panel(14 + width, from, width, height, "", untitled(water, above), y, water(measure)));
    }
    return format.sheet(caption, key, panels, second + panel + AXIS + 8);
  }

  /** Figures stand under the lower panels only. */
  private static Axis untitled(Axis axis, boolean above) {
    return above ? axis.bare() : axis;
  }

  private Panel panel(
      int x,
      int y,
      int width,
      int height,
      String what,
      Axis along,
      Axis up,
      List<ChartMark> marks) {
    String heading = what.isEmpty() ? "" : time.title(what);
    Box box = new Box(x - EDGE, y - EDGE, width + 2 * EDGE - GAP, height + 2 * EDGE);
    return new Panel(box, heading, "", along, up, EDGE, 0, marks);
  }

  private Axis axis(Shown shown, String what, ToDoubleFunction<RunResult> value) {
    return Range.of(restating.runs().stream().mapToDouble(value).map(shown::of))
        .axis(shown.title(what), shown.ticks(), 0.06);
  }

  private Axis times() {
    Range range = new Range();
    for (RunResult run : restating.runs()) {
      range.add(time.of(Measure.BOIL_TIME.of(run).orNaN()));
      range.add(time.of(Measure.NORMALISED_BOIL_TIME.of(run).orNaN()));
    }
    return range.axis("", time.ticks(), 0.08);
  }

  private static double air(RunResult run) {
    return run.conditions().ambient().orNaN();
  }

  private static double water(RunResult run) {
    return run.conditions().water().orNaN();
  }

  private List<ChartMark> air(Measure measure) {
    return dots(run -> new ChartPoint(temperature.of(air(run)), time.of(measure.of(run).orNaN())));
  }

  private List<ChartMark> water(Measure measure) {
    return dots(run -> new ChartPoint(mass.of(water(run)), time.of(measure.of(run).orNaN())));
  }

  private List<ChartMark> dots(Function<RunResult, ChartPoint> spot) {
    List<ChartMark> marks = new ArrayList<>();
    for (Optional<String> design : styles.inOrder(designs())) {
      Style style = styles.of(design);
      List<ChartPoint> spots =
          restating.runs().stream()
              .filter(run -> run.build().design().equals(design))
              .map(spot)
              .toList();
      marks.add(new ChartMark.Dots(Points.of(spots), style.hue(), style.glyph(), Fill.FAINT, DOT));
    }
    return marks;
  }

  private List<Optional<String>> designs() {
    return restating.runs().stream().map(run -> run.build().design()).distinct().toList();
  }
}
