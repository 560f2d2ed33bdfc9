package fairboil.reports.chart;

import fairboil.analysis.effect.BuildPoint;
import fairboil.analysis.effect.HoleEffect;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.chart.ChartMark.Fill;
import fairboil.reports.chart.ChartMark.Need;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.chart.DesignStyles.Style;
import fairboil.reports.words.Caption;
import fairboil.reports.words.Display;
import fairboil.reports.words.EffectResiduals;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How far each build and each burn lies from the line of a hole effect. */
final class ResidualChart {

  private static final int HEIGHT = 380;
  private static final int EDGE = 12;
  private static final double BURN = 7;
  private static final double MEAN = 12;

  private final HoleEffect effect;
  private final EffectResiduals residuals;
  private final DesignStyles styles;
  private final Shown across;
  private final Shown up;
  private final Format format;

  ResidualChart(HoleEffect effect, DesignStyles styles, Display display, Format format) {
    this.effect = effect;
    this.residuals = EffectResiduals.of(effect);
    this.styles = styles;
    this.across = new Shown(display, Dimension.LENGTH);
    this.up = new Shown(display, effect.response().dimension().ofDifference());
    this.format = format;
  }

  Sheet sheet(Caption caption) {
    List<KeyEntry> key = new ArrayList<>(styles.key(designs()));
    key.add(new KeyEntry.Symbol(Glyph.CIRCLE, Hue.GREY, Fill.FAINT, BURN, "one burn"));
    key.add(new KeyEntry.Stroke(Hue.BLACK, Dash.DASHED, 1.5, "the fitted line"));
    int top = format.top(caption, key) + 22;
    int height = format.height(HEIGHT, top);
    Axis x =
        Range.of(effect.points().stream().mapToDouble(point -> across.of(point.holeError())))
            .axisFromZero(
                across.title("RMS hole error of ring " + effect.ring()), across.ticks(), 0.07);
    Range range =
        Range.of(effect.points().stream().flatMapToDouble(residuals::ofBurns).map(up::of));
    range.add(0);
    Axis y = range.axis(up.title("above the line"), up.ticks(), 0.1);
    Panel panel =
        new Panel(
            new Box(
                14 - EDGE, top - EDGE, format.width() - 28 + 2 * EDGE, height - top - 8 + 2 * EDGE),
            y.title(),
            "",
            x,
            y,
            EDGE,
            0,
            marks(x));
    return format.sheet(caption, key, List.of(panel), height);
  }

  private List<Optional<String>> designs() {
    return effect.points().stream().map(BuildPoint::design).distinct().toList();
  }

  private List<ChartMark> marks(Axis x) {
    List<ChartMark> marks = new ArrayList<>();
    Points zero = Points.of(new ChartPoint(x.from(), 0), new ChartPoint(x.to(), 0));
    marks.add(new ChartMark.Line(zero, Hue.BLACK, Dash.DASHED, 1.5));
    for (Optional<String> design : designs()) {
      Style style = styles.of(design);
      List<BuildPoint> builds =
          effect.points().stream().filter(point -> point.design().equals(design)).toList();
      marks.add(new ChartMark.Dots(burns(builds), style.hue(), style.glyph(), Fill.FAINT, BURN));
      List<ChartPoint> means = builds.stream().map(this::mean).toList();
      marks.add(
          new ChartMark.Dots(Points.of(means), style.hue(), style.glyph(), style.fill(), MEAN));
      for (int i = 0; i < builds.size(); i++) {
        marks.add(
            new ChartMark.Label(
                List.of(means.get(i)),
                builds.get(i).build().name(),
                style.hue(),
                Weight.BOLD,
                Need.IF_ROOM));
      }
    }
    return marks;
  }

  private ChartPoint mean(BuildPoint build) {
    return new ChartPoint(across.of(build.holeError()), up.of(residuals.ofMean(build)));
  }

  private Points burns(List<BuildPoint> builds) {
    List<ChartPoint> spots = new ArrayList<>();
    for (BuildPoint build : builds) {
      Arrays.stream(residuals.ofBurns(build).toArray())
          .forEach(burn -> spots.add(new ChartPoint(across.of(build.holeError()), up.of(burn))));
    }
    return Points.of(spots);
  }
}
