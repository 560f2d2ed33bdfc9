package fairboil.reports.chart;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.Summary;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.sheet.Key;
import fairboil.reports.chart.ChartMark.Fill;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.chart.DesignStyles.Style;
import fairboil.reports.words.BuildCaptions;
import fairboil.reports.words.Caption;
import fairboil.reports.words.Display;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Builds side by side in one measure, a row each, under their designs. */
final class BuildsChart {

  private static final int ROW = 25;
  private static final int RIGHT = 150;
  private static final int LEAST_RIGHT = 128;
  private static final int FOOT = 52;
  private static final int EDGE = 18;
  private static final double BURN = 8;
  private static final double MEAN = 12;
  private static final double HALF_BAR = 0.24;

  private final Measure measure;
  private final List<BuildResult> builds;
  private final Map<Key, double[]> burns;
  private final DesignStyles styles;
  private final BuildCaptions captions;
  private final String confidence;
  private final Shown along;
  private final Axis axis;
  private final Format format;

  /**
   * A chart of some builds.
   *
   * @param builds those to show, at least one
   * @param all the values of all burns by build, which set the axis, so that charts of some builds
   *     each can be laid side by side
   */
  BuildsChart(
      Measure measure,
      List<BuildResult> builds,
      Map<Key, double[]> all,
      List<BuildResult> everyBuild,
      DesignStyles styles,
      BuildCaptions captions,
      Display display,
      double confidence,
      Format format) {
    this.measure = measure;
    this.builds = builds;
    this.burns = all;
    this.styles = styles;
    this.captions = captions;
    this.confidence = Display.percent(confidence);
    this.along = new Shown(display, measure.dimension());
    this.axis = axis(everyBuild);
    this.format = format;
  }

  /** The values of the burns that count, by build. */
  static double[] burns(Measure measure, Key build, List<RunResult> runs) {
    return runs.stream()
        .filter(run -> run.build().key().equals(build))
        .flatMap(run -> measure.counted(run).stream())
        .mapToDouble(known -> known.measured().value())
        .toArray();
  }

  private Axis axis(List<BuildResult> everyBuild) {
    Range dots = Range.of(burns.values().stream().flatMapToDouble(Arrays::stream).map(along::of));
    DoubleStream ends =
        everyBuild.stream()
            .flatMap(build -> interval(build).stream())
            .flatMapToDouble(interval -> DoubleStream.of(interval.low(), interval.high()))
            .map(along::of);
    return Range.stretched(dots, ends, 0.35)
        .axis(along.title(measure.label()), along.ticks(), 0.04);
  }

  private Optional<Interval> interval(BuildResult build) {
    return Optional.ofNullable(build.summaries().get(measure)).flatMap(Summary::interval);
  }

  Sheet sheet(Caption caption) {
    List<Optional<String>> designs =
        styles.inOrder(builds.stream().map(build -> build.build().design()).distinct().toList());
    int rows = builds.size() + (areTold(designs) ? designs.size() : 0);
    List<KeyEntry> key = key();
    int top = format.top(caption, key);
    int right = format.share(RIGHT, LEAST_RIGHT);
    int height = top + rows * ROW + FOOT;
    int left = left(designs);
    Axis rowAxis = new Axis("", -rows + 0.5, 0.5, Axis.Ticks.NONE);
    Panel panel =
        new Panel(
            new Box(
                left - EDGE,
                top - EDGE,
                format.width() - left - right + 2 * EDGE,
                height - top + 2 * EDGE),
            "",
            "",
            axis,
            rowAxis,
            EDGE,
            0,
            marks(designs));
    return format.sheet(caption, key, List.of(panel), height);
  }

  /** Whether there is a design to put builds under. */
  private static boolean areTold(List<Optional<String>> designs) {
    return designs.stream().anyMatch(Optional::isPresent);
  }

  /** Room for the longest name, as far as names may be long. */
  private int left(List<Optional<String>> designs) {
    int longest =
        Stream.concat(
                designs.stream().filter(Optional::isPresent).map(DesignStyles::name),
                builds.stream().map(build -> build.build().key().name()))
            .mapToInt(String::length)
            .max()
            .orElse(0);
    return Math.min(format.share(240, 130), Math.max(format.share(80, 56), 40 + 8 * longest));
  }

  private List<KeyEntry> key() {
    return List.of(
        new KeyEntry.Symbol(Glyph.CIRCLE, Hue.GREY, Fill.FAINT, BURN, "one burn"),
        new KeyEntry.Symbol(Glyph.BAR, Hue.BLACK, Fill.FULL, MEAN, "mean of a build"),
        new KeyEntry.Area(Hue.PALE, confidence + " interval of that mean"));
  }

  private List<ChartMark> marks(List<Optional<String>> designs) {
    List<ChartMark> marks = new ArrayList<>();
    int row = 0;
    for (Optional<String> design : designs) {
      Style style = styles.of(design);
      if (areTold(designs)) {
        marks.add(new ChartMark.Row(row, DesignStyles.name(design), "", style.hue(), Weight.BOLD));
        row--;
      }
      for (BuildResult build : builds) {
        if (build.build().design().equals(design)) {
          addBuild(marks, build, style, row);
          row--;
        }
      }
    }
    return marks;
  }

  private static ChartMark bar(double from, double to, int row) {
    return new ChartMark.Band(
        Points.of(
            new ChartPoint(from, row - HALF_BAR),
            new ChartPoint(from, row + HALF_BAR),
            new ChartPoint(to, row + HALF_BAR),
            new ChartPoint(to, row - HALF_BAR)),
        Hue.PALE);
  }

  private void addBuild(List<ChartMark> marks, BuildResult build, Style style, int row) {
    Key key = build.build().key();
    marks.add(
        new ChartMark.Row(row, key.name(), captions.mean(measure, build), Hue.BLACK, Weight.PLAIN));
    interval(build)
        .ifPresent(
            interval ->
                marks.add(
                    bar(
                        axis.clamp(along.of(interval.low())),
                        axis.clamp(along.of(interval.high())),
                        row)));
    double[] values = burns.getOrDefault(key, new double[0]);
    Points dots =
        Points.of(
            Arrays.stream(values).mapToObj(value -> new ChartPoint(along.of(value), row)).toList());
    marks.add(new ChartMark.Dots(dots, style.hue(), style.glyph(), Fill.FAINT, BURN));
    Optional.ofNullable(build.summaries().get(measure))
        .ifPresent(
            summary ->
                marks.add(
                    new ChartMark.Dots(
                        Points.of(new ChartPoint(along.of(summary.mean()), row)),
                        style.hue(),
                        Glyph.BAR,
                        Fill.FULL,
                        MEAN)));
  }
}
