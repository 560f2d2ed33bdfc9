package fairboil.reports.chart;

import fairboil.analysis.effect.BuildPoint;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.effect.HoleEffect.BandPoint;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.chart.ChartMark.Fill;
import fairboil.reports.chart.ChartMark.Need;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.chart.DesignStyles.Style;
import fairboil.reports.words.Caption;
import fairboil.reports.words.Display;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** A response against hole error: the band, the line, each build and each of its burns. */
final class HoleEffectChart {

  private static final int HEIGHT = 560;
  private static final int EDGE = 12;
  private static final double BURN = 7;
  private static final double MEAN = 13;

  private final HoleEffect effect;
  private final DesignStyles styles;
  private final Shown across;
  private final Shown up;
  private final String confidence;
  private final Format format;

  HoleEffectChart(
      HoleEffect effect, DesignStyles styles, Display display, double confidence, Format format) {
    this.effect = effect;
    this.styles = styles;
    this.across = new Shown(display, Dimension.LENGTH);
    this.up = new Shown(display, effect.response().dimension());
    this.confidence = Display.percent(confidence);
    this.format = format;
  }

  Sheet sheet(Caption caption) {
    List<KeyEntry> key = key();
    int top = format.top(caption, key) + 22;
    int height = format.height(HEIGHT, top);
    Axis x = xAxis();
    Axis y = yAxis();
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
            marks(y));
    return format.sheet(caption, key, List.of(panel), height);
  }

  private Axis xAxis() {
    return Range.of(effect.points().stream().mapToDouble(point -> across.of(point.holeError())))
        .axisFromZero(
            across.title("RMS hole error of ring " + effect.ring()), across.ticks(), 0.07);
  }

  private Axis yAxis() {
    Range burns =
        Range.of(
            effect.points().stream()
                .flatMapToDouble(point -> Arrays.stream(point.burns()))
                .map(up::of));
    DoubleStream band =
        effect.band().stream()
            .flatMapToDouble(at -> DoubleStream.of(at.interval().low(), at.interval().high()))
            .map(up::of);
    return Range.stretched(burns, band, 0.3)
        .axis(up.title(effect.response().label()), up.ticks(), 0.06);
  }

  private List<KeyEntry> key() {
    List<KeyEntry> key = new ArrayList<>(styles.key(designs()));
    key.add(new KeyEntry.Symbol(Glyph.CIRCLE, Hue.GREY, Fill.FAINT, BURN, "one burn"));
    if (!effect.band().isEmpty()) {
      key.add(new KeyEntry.Stroke(Hue.BLACK, Dash.SOLID, 2, "fitted to the builds"));
      key.add(new KeyEntry.Area(Hue.PALE, confidence + " interval of the line"));
    }
    return key;
  }

  private List<Optional<String>> designs() {
    return effect.points().stream().map(BuildPoint::design).distinct().toList();
  }

  private List<ChartMark> marks(Axis y) {
    List<ChartMark> marks = new ArrayList<>();
    if (!effect.band().isEmpty()) {
      marks.add(new ChartMark.Band(outline(y), Hue.PALE));
      marks.add(new ChartMark.Line(line(), Hue.BLACK, Dash.SOLID, 2));
    }
    for (Optional<String> design : designs()) {
      addDesign(marks, design);
    }
    return marks;
  }

  private Points outline(Axis y) {
    List<ChartPoint> outline = new ArrayList<>();
    for (BandPoint at : effect.band()) {
      outline.add(spot(at.holeError(), y.clamp(up.of(at.interval().high()))));
    }
    for (int i = effect.band().size() - 1; i >= 0; i--) {
      BandPoint at = effect.band().get(i);
      outline.add(spot(at.holeError(), y.clamp(up.of(at.interval().low()))));
    }
    return Points.of(outline);
  }

  private Points line() {
    return Points.of(
        effect.band().stream().map(at -> spot(at.holeError(), up.of(at.fitted()))).toList());
  }

  private void addDesign(List<ChartMark> marks, Optional<String> design) {
    Style style = styles.of(design);
    List<BuildPoint> builds =
        effect.points().stream().filter(point -> point.design().equals(design)).toList();
    marks.add(new ChartMark.Dots(burns(builds), style.hue(), style.glyph(), Fill.FAINT, BURN));
    marks.add(new ChartMark.Dots(means(builds), style.hue(), style.glyph(), style.fill(), MEAN));
    for (BuildPoint build : builds) {
      marks.add(
          new ChartMark.Label(
              List.of(spot(build.holeError(), up.of(build.mean()))),
              build.build().name(),
              style.hue(),
              Weight.BOLD,
              Need.IF_ROOM));
    }
  }

  private Points burns(List<BuildPoint> builds) {
    return Points.of(
        builds.stream()
            .flatMap(
                build ->
                    Arrays.stream(build.burns())
                        .mapToObj(burn -> spot(build.holeError(), up.of(burn))))
            .toList());
  }

  private Points means(List<BuildPoint> builds) {
    return Points.of(
        builds.stream().map(build -> spot(build.holeError(), up.of(build.mean()))).toList());
  }

  private ChartPoint spot(double holeError, double y) {
    return new ChartPoint(across.of(holeError), y);
  }
}
