package fairboil.reports.chart;

import fairboil.analysis.compare.Comparison;
import fairboil.analysis.compare.Comparison.Verdict;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.reports.chart.ChartMark.Fill;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.words.Caption;
import fairboil.reports.words.CompareWords;
import fairboil.reports.words.Display;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Differences in one measure, a row each with its interval, under what is compared. */
final class ForestChart {

  private static final int ROW = 25;
  private static final int RIGHT = 190;
  private static final int LEAST_RIGHT = 96;
  private static final int MOST_LETTERS = 18;
  private static final int FOOT = 52;
  private static final int EDGE = 18;
  private static final double SIZE = 12;

  private final Measure measure;
  private final List<Comparison> pairs;
  private final CompareWords words;
  private final Shown along;
  private final String confidence;
  private final Format format;

  /** A chart of at least one pair. */
  ForestChart(
      Measure measure,
      List<Comparison> pairs,
      CompareWords words,
      Display display,
      double confidence,
      Format format) {
    this.measure = measure;
    this.pairs = pairs;
    this.words = words;
    this.along = new Shown(display, measure.dimension().ofDifference());
    this.confidence = Display.percent(confidence);
    this.format = format;
  }

  Sheet sheet(Caption caption) {
    List<KeyEntry> key =
        List.of(
            new KeyEntry.Symbol(
                Glyph.DIAMOND, Hue.BLUE, Fill.FULL, SIZE, "settled: 0 lies outside"),
            new KeyEntry.Symbol(Glyph.DIAMOND, Hue.GREY, Fill.HOLLOW, SIZE, "not settled"),
            new KeyEntry.Stroke(Hue.GREY, Dash.SOLID, 2, confidence + " interval"));
    List<String> levels = pairs.stream().map(Comparison::level).distinct().toList();
    int rows = pairs.size() + levels.size();
    int top = format.top(caption, key);
    int height = top + rows * ROW + FOOT;
    int longest = widest(CompareWords::less);
    int left = Math.min(format.share(260, 150), Math.max(format.share(80, 56), 40 + 8 * longest));
    Panel panel =
        new Panel(
            new Box(
                left - EDGE,
                top - EDGE,
                format.width() - left - right() + 2 * EDGE,
                height - top + 2 * EDGE),
            "",
            "",
            axis(),
            new Axis("", -rows + 0.5, 0.5, Axis.Ticks.NONE),
            EDGE,
            0,
            marks(levels, rows));
    return format.sheet(caption, key, List.of(panel), height);
  }

  /** With its interval where the widest of them leaves room enough for what is drawn. */
  private String told(Comparison pair) {
    return format.isWide() || widest(words::withInterval) <= MOST_LETTERS
        ? words.withInterval(pair)
        : words.difference(pair);
  }

  private int right() {
    return format.isWide() ? RIGHT : Math.max(LEAST_RIGHT, 20 + 8 * widest(this::told));
  }

  private int widest(Function<Comparison, String> text) {
    return pairs.stream().mapToInt(pair -> text.apply(pair).length()).max().orElse(0);
  }

  private Axis axis() {
    Range range = new Range();
    range.add(0);
    for (Comparison pair : pairs) {
      range.add(along.of(pair.interval().low()));
      range.add(along.of(pair.interval().high()));
    }
    return range.axis(along.title("difference in " + measure.label()), along.ticks(), 0.05);
  }

  private List<ChartMark> marks(List<String> levels, int rows) {
    List<ChartMark> marks = new ArrayList<>();
    Points zero = Points.of(new ChartPoint(0, 0.5), new ChartPoint(0, -rows + 0.5));
    marks.add(new ChartMark.Line(zero, Hue.BLACK, Dash.DASHED, 1.2));
    int row = 0;
    for (String level : levels) {
      marks.add(new ChartMark.Row(row, level, "", Hue.BLACK, Weight.BOLD));
      row--;
      for (Comparison pair : pairs) {
        if (pair.level().equals(level)) {
          add(marks, pair, row);
          row--;
        }
      }
    }
    return marks;
  }

  private void add(List<ChartMark> marks, Comparison pair, int row) {
    boolean settled = pair.verdict() != Verdict.NOT_SETTLED;
    Hue hue = settled ? Hue.BLUE : Hue.GREY;
    Interval interval = pair.interval();
    marks.add(new ChartMark.Row(row, CompareWords.less(pair), told(pair), Hue.BLACK, Weight.PLAIN));
    marks.add(
        new ChartMark.Line(
            Points.of(
                new ChartPoint(along.of(interval.low()), row),
                new ChartPoint(along.of(interval.high()), row)),
            hue,
            Dash.SOLID,
            2));
    marks.add(
        new ChartMark.Dots(
            Points.of(new ChartPoint(along.of(pair.difference()), row)),
            hue,
            Glyph.DIAMOND,
            settled ? Fill.FULL : Fill.HOLLOW,
            SIZE));
  }
}
