package fairboil.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.fault.Faults;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.reports.chart.ChartBook;
import fairboil.reports.chart.ChartMark;
import fairboil.reports.chart.Panel;
import fairboil.reports.chart.Picture;
import fairboil.reports.chart.Points;
import fairboil.reports.chart.Sheet;
import fairboil.reports.words.Display;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Charts of heat and of uncertainty, of the demonstration: what is drawn agrees with itself. */
final class DemoHeatChartsTest {

  private static final Map<Picture.Kind, Sheet> SHEETS = new EnumMap<>(Picture.Kind.class);
  private static final Map<Picture.Kind, Picture> PICTURES = new EnumMap<>(Picture.Kind.class);

  @BeforeAll
  static void draw() throws Exception {
    ChartBook book =
        ChartBook.of(
            StudyRun.of(Path.of("..", "data-demo")).results(),
            Display.in(DisplayUnits.METRIC),
            new Faults());
    List<Sheet> sheets = new ArrayList<>();
    book.draw(sheet -> keep(sheet, sheets), 1, picture -> take(picture, sheets));
  }

  private static byte[] keep(Sheet sheet, List<Sheet> sheets) {
    sheets.add(sheet);
    return new byte[0];
  }

  private static void take(Picture picture, List<Sheet> sheets) throws IOException {
    PICTURES.putIfAbsent(picture.kind(), picture);
    SHEETS.putIfAbsent(picture.kind(), sheets.get(sheets.size() - 1));
  }

  private static <T extends ChartMark> List<T> marks(Panel panel, Class<T> kind) {
    return panel.marks().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** A residual is the reading less the line above it, at the same time. */
  @Test
  void whatIsLeftOverIsReadingLessBalance() {
    Panel water = SHEETS.get(Picture.Kind.HEAT_BALANCE).panels().get(0);
    Panel rest = SHEETS.get(Picture.Kind.HEAT_BALANCE).panels().get(1);
    List<ChartMark.Dots> readings = marks(water, ChartMark.Dots.class);
    List<ChartMark.Line> lines = marks(water, ChartMark.Line.class);
    List<ChartMark.Dots> residuals = marks(rest, ChartMark.Dots.class);

    assertThat(readings).as("heating and cooling").hasSize(2);
    for (int part = 0; part < readings.size(); part++) {
      Points read = readings.get(part).points();
      Points fitted = lines.get(part).points();
      Points off = residuals.get(part).points();
      assertThat(read.size()).isGreaterThan(30).isEqualTo(off.size());
      for (int i = 0; i < read.size(); i++) {
        assertThat(off.at(i).x()).isEqualTo(read.at(i).x());
        assertThat(off.at(i).y()).isCloseTo(read.at(i).y() - fitted.at(i).y(), within(1e-9));
        assertThat(off.at(i).y()).as("the demonstration is true").isBetween(-0.5, 0.5);
      }
    }
  }

  /** As many bars as rows, and those of one result make up nearly all of its variance. */
  @Test
  void sharesOfOneResultAddUpToAHundred() {
    Panel panel = SHEETS.get(Picture.Kind.BUDGET).panels().get(0);
    List<Double> sums = new ArrayList<>();
    for (ChartMark mark : panel.marks()) {
      if (mark instanceof ChartMark.Row row && row.right().startsWith("u = ")) {
        sums.add(0.0);
      } else if (mark instanceof ChartMark.Band bar) {
        sums.set(sums.size() - 1, sums.get(sums.size() - 1) + bar.outline().at(2).x());
      }
    }
    assertThat(sums).hasSize(2).allSatisfy(sum -> assertThat(sum).isBetween(97.0, 100.0 + 1e-9));
    assertThat(PICTURES.get(Picture.Kind.BUDGET).alternative())
        .contains("Peak ", "Normalised boil time ", "tolerance of the probe");
  }

  @Test
  void everyRunWithABalanceHasItsSmallChart() {
    assertThat(SHEETS.get(Picture.Kind.BALANCES).panels()).hasSizeGreaterThan(40);
    assertThat(PICTURES.get(Picture.Kind.BALANCES).caption())
        .contains("44 runs", "While heating: standard deviation", "While cooling");
  }
}
