package fairboil.reports.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.Results;
import fairboil.analysis.effect.BuildPoint;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.layout.HoleError;
import fairboil.analysis.layout.RingResult;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.reports.SampleResults;
import fairboil.reports.words.Display;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is drawn: the points, words and scales of the sheets, before anything is painted. */
class SheetsTest {

  private static final Results METRIC = SampleResults.typical(DisplayUnits.METRIC);

  /** Each picture's name with its sheet. */
  private static Map<String, Sheet> sheets(Results results, DisplayUnits units) {
    List<Sheet> drawn = new ArrayList<>();
    ChartBook book = ChartBook.of(results, Display.in(units), new Faults());
    try {
      book.draw(
          sheet -> {
            drawn.add(sheet);
            return new byte[0];
          },
          1,
          picture -> {});
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    Map<String, Sheet> sheets = new LinkedHashMap<>();
    for (int i = 0; i < drawn.size(); i++) {
      sheets.put(book.names().get(i), drawn.get(i));
    }
    return sheets;
  }

  private static <T extends ChartMark> List<T> marks(Panel panel, Class<T> kind) {
    return panel.marks().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static <T extends ChartMark> List<T> marks(Sheet sheet, Class<T> kind) {
    return sheet.panels().stream().flatMap(panel -> marks(panel, kind).stream()).toList();
  }

  private static Stream<ChartPoint> spots(List<ChartMark.Dots> dots) {
    return dots.stream()
        .map(ChartMark.Dots::points)
        .flatMap(points -> Stream.iterate(0, i -> i < points.size(), i -> i + 1).map(points::at));
  }

  @Test
  void aHoleEffectShowsEachBuildAndEachBurnInShownUnits() {
    HoleEffect effect = METRIC.holeEffects().get(0);
    Sheet sheet = sheets(METRIC, DisplayUnits.METRIC).get("hole-effect-upper-normalised-peak");
    List<ChartMark.Dots> dots = marks(sheet, ChartMark.Dots.class);
    BuildPoint first = effect.points().get(0);

    assertThat(spots(dots).count())
        .isEqualTo(
            effect.points().size()
                + effect.points().stream().mapToInt(point -> point.burns().length).sum());
    assertThat(spots(dots))
        .anySatisfy(
            spot -> {
              assertThat(spot.x()).isCloseTo(1000 * first.holeError(), within(1e-9));
              assertThat(spot.y()).isCloseTo(first.mean(), within(1e-9));
            });
    assertThat(marks(sheet, ChartMark.Label.class))
        .extracting(ChartMark.Label::text)
        .contains("T1", "T5", "S1", "S5");
    assertThat(sheet.panels().get(0).x().title()).endsWith("(mm)");
    assertThat(sheet.panels().get(0).y().title()).isEqualTo("normalised peak (°C)");
    assertThat(marks(sheet, ChartMark.Band.class)).hasSize(1);
  }

  @Test
  void usUnitsReachAxesAndPoints() {
    Results us = SampleResults.typical(DisplayUnits.US);
    BuildPoint first = us.holeEffects().get(0).points().get(0);
    Sheet sheet = sheets(us, DisplayUnits.US).get("hole-effect-upper-normalised-peak");

    assertThat(sheet.panels().get(0).x().title()).endsWith("(in)");
    assertThat(sheet.panels().get(0).y().title()).endsWith("(°F)");
    assertThat(spots(marks(sheet, ChartMark.Dots.class)))
        .anySatisfy(
            spot -> {
              assertThat(spot.x()).isCloseTo(first.holeError() / 0.0254, within(1e-9));
              assertThat(spot.y()).isCloseTo(first.mean() * 1.8 + 32, within(1e-9));
            });
  }

  @Test
  void designsDifferInColourAndInMarker() {
    Sheet sheet = sheets(METRIC, DisplayUnits.METRIC).get("hole-effect-upper-normalised-peak");
    List<ChartMark.Dots> dots = marks(sheet, ChartMark.Dots.class);

    assertThat(dots).extracting(ChartMark.Dots::hue).contains(Hue.BLUE, Hue.VERMILION);
    assertThat(dots).allMatch(dot -> (dot.hue() == Hue.BLUE) == (dot.glyph() == Glyph.CIRCLE));
  }

  @Test
  void tooFewBuildsHavePointsAndNoLine() {
    Sheet sheet =
        sheets(SampleResults.twoBuilds(), DisplayUnits.METRIC)
            .get("hole-effect-upper-normalised-peak");

    assertThat(marks(sheet, ChartMark.Line.class)).isEmpty();
    assertThat(marks(sheet, ChartMark.Band.class)).isEmpty();
    assertThat(spots(marks(sheet, ChartMark.Dots.class)).count()).isEqualTo(2 + 6);
    assertThat(sheet.subtitle()).contains("2 builds").contains("no line");
  }

  @Test
  void everyBuildHasARowAndThoseThatDidNotAlwaysBoilHaveNoMean() {
    Sheet sheet = sheets(METRIC, DisplayUnits.METRIC).get("builds-boil-time");
    List<ChartMark.Row> rows = marks(sheet, ChartMark.Row.class);

    assertThat(rows).extracting(ChartMark.Row::left).contains("two-wall", "T1", "one-wall", "S5");
    assertThat(rows).extracting(ChartMark.Row::y).doesNotHaveDuplicates();
    assertThat(rows)
        .filteredOn(row -> row.left().equals("S1"))
        .extracting(ChartMark.Row::right)
        .containsExactly("boiled in 3 of 4");
    assertThat(marks(sheet, ChartMark.Dots.class))
        .filteredOn(dots -> dots.glyph() == Glyph.BAR)
        .hasSize(8);
    assertThat(sheet.panels().get(0).x().ticks()).isEqualTo(Axis.Ticks.CLOCK);
  }

  @Test
  void ringMapsDrawDeviationsToTheStatedScale() {
    List<RingResult> upper =
        METRIC.rings().stream().filter(ring -> ring.ring().equals("upper")).toList();
    int times = RingMaps.times(upper);
    Sheet sheet = sheets(METRIC, DisplayUnits.METRIC).get("ring-upper");
    Panel panel = sheet.panels().get(0);
    HoleError hole = upper.get(0).holes().get(3);
    List<ChartMark.Dots> dots = marks(panel, ChartMark.Dots.class);
    ChartPoint meant = dots.get(0).points().at(3);
    ChartPoint found = dots.get(1).points().at(3);

    assertThat(sheet.subtitle()).contains(times + " times");
    assertThat(sheet.panels()).hasSize(10);
    assertThat(found.x() - meant.x()).isCloseTo(times * hole.alongError(), within(1e-12));
    assertThat(found.y() - meant.y()).isCloseTo(times * hole.heightError(), within(1e-12));
  }

  @Test
  void ringMapsKeepOneScaleAlongAndUpAndHoldEveryHole() {
    Map<String, Sheet> sheets = sheets(METRIC, DisplayUnits.METRIC);
    for (String name : List.of("ring-upper", "ring-lower", "ring-base")) {
      for (Panel panel : sheets.get(name).panels()) {
        double along = panel.box().width() / panel.x().length();
        double up = panel.box().height() / panel.y().length();

        assertThat(up / along).isCloseTo(1, within(0.02));
        assertThat(spots(marks(panel, ChartMark.Dots.class)))
            .allMatch(spot -> panel.x().clamp(spot.x()) == spot.x())
            .allMatch(spot -> panel.y().clamp(spot.y()) == spot.y());
      }
    }
  }

  /** ISO 1101: the deviation is the distance between the true and the actual place. */
  @Test
  void holesOnTheBaseLieAsFarFromTheirPlaceAsTheyDeviate() {
    List<RingResult> base =
        METRIC.rings().stream().filter(ring -> ring.ring().equals("base")).toList();
    int times = RingMaps.times(base);
    Panel panel = sheets(METRIC, DisplayUnits.METRIC).get("ring-base").panels().get(0);
    List<ChartMark.Dots> dots = marks(panel, ChartMark.Dots.class);

    for (int i = 0; i < base.get(0).holes().size(); i++) {
      ChartPoint meant = dots.get(0).points().at(i);
      ChartPoint found = dots.get(1).points().at(i);
      assertThat(Math.hypot(found.x() - meant.x(), found.y() - meant.y()))
          .isCloseTo(times * base.get(0).holes().get(i).deviation(), within(1e-12));
    }
  }

  @Test
  void aTraceShowsFlameWaterAirEventsPeakAndBoil() {
    Sheet sheet = sheets(METRIC, DisplayUnits.METRIC).get("run-t1-1");
    Panel flame = sheet.panels().get(0);
    Panel water = sheet.panels().get(1);

    assertThat(marks(flame, ChartMark.Moment.class))
        .extracting(ChartMark.Moment::text)
        .contains("lit", "gas lit", "pot on", "gust of wind", "boil", "flame out");
    assertThat(marks(flame, ChartMark.Label.class))
        .extracting(ChartMark.Label::text)
        .anyMatch(text -> text.startsWith("peak 7"));
    assertThat(marks(water, ChartMark.Label.class))
        .extracting(ChartMark.Label::text)
        .contains("water", "air", "boiling point 98.9 °C")
        .anyMatch(text -> text.startsWith("boil time "));
    assertThat(flame.x().from()).isEqualTo(water.x().from());
    assertThat(flame.x().to()).isEqualTo(water.x().to());
  }

  @Test
  void noPointOfATraceIsLost() {
    Sheet sheet = sheets(METRIC, DisplayUnits.METRIC).get("run-t1-1");
    double hottest =
        Stream.of(METRIC.runs().get(0).sketch().curves().get(0).celsius())
            .flatMapToDouble(Arrays::stream)
            .filter(Double::isFinite)
            .max()
            .orElseThrow();
    double drawn =
        marks(sheet.panels().get(0), ChartMark.Line.class).stream()
            .flatMapToDouble(line -> Arrays.stream(line.points().y()))
            .filter(Double::isFinite)
            .max()
            .orElseThrow();

    assertThat(drawn).isEqualTo(hottest);
  }

  @Test
  void runsWithoutALogHaveNoTraceAndAnEmptyStudyNoPictures() {
    assertThat(sheets(METRIC, DisplayUnits.METRIC)).doesNotContainKey("run-t3-3");
    assertThat(sheets(SampleResults.empty(), DisplayUnits.METRIC)).isEmpty();
  }

  @Test
  void manyBuildsAreSpreadOverSeveralSheets() {
    Map<String, Sheet> sheets = sheets(SampleResults.of(95, 1), DisplayUnits.METRIC);

    assertThat(sheets)
        .containsKeys("builds-boil-time", "builds-boil-time-2", "builds-boil-time-3")
        .containsKeys("ring-upper", "ring-upper-4");
    assertThat(sheets.get("builds-boil-time").panels().get(0).x())
        .isEqualTo(sheets.get("builds-boil-time-3").panels().get(0).x());
    assertThat(sheets.values()).allMatch(sheet -> sheet.height() < 3000);
  }

  @Test
  void panelsLieOnTheirSheetsBesideEachOther() {
    for (Sheet sheet : sheets(METRIC, DisplayUnits.METRIC).values()) {
      Function<Panel, java.awt.Rectangle> area =
          panel ->
              new java.awt.Rectangle(
                  panel.box().x(), panel.box().y(), panel.box().width(), panel.box().height());
      for (Panel one : sheet.panels()) {
        assertThat(one.box().x()).isNotNegative();
        assertThat(one.box().x() + one.box().width()).isLessThanOrEqualTo(sheet.width());
        for (Panel other : sheet.panels()) {
          assertThat(one.equals(other) || !area.apply(one).intersects(area.apply(other))).isTrue();
        }
      }
    }
  }
}
