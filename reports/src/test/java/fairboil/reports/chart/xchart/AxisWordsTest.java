package fairboil.reports.chart.xchart;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.reports.chart.Axis;
import fairboil.reports.chart.Axis.Ticks;
import fairboil.reports.chart.ChartException;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.chart.Tint;
import java.awt.Font;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AxisWordsTest {

  private static final double GAP = 8;

  /** Neither touch nor are too few, from the narrowest panel to the widest. */
  @ParameterizedTest
  @CsvSource({
    "NUMBERS, 0, 4.4",
    "NUMBERS, -0.07, 0.09",
    "NUMBERS, -1250, 900",
    "NUMBERS, 99990, 100010",
    "NUMBERS, 0, 2e6",
    "NUMBERS, 0, 9e-4",
    "CLOCK, 0, 17.5",
    "CLOCK, -1.5, 2",
    "CLOCK, 0, 300"
  })
  void figuresAlongAnAxisStandApart(Ticks ticks, double from, double to) throws ChartException {
    ChartLettering lettering = new ChartLettering(Typeface.load());
    Font font = lettering.font(Weight.PLAIN, 12.5f);
    Axis axis = new Axis("", from, to, ticks);
    for (int width : List.of(160, 250, 428, 900)) {
      double pixel = axis.length() / width;
      Frame frame = new Frame(axis, axis, 0, width, 0, 100);

      Graduation marks = new AxisWords(lettering, ChartInk.of(Tint.COLOUR)).along(frame).marks();

      Figures figures = Figures.of(axis, marks.step());
      List<String> texts = marks.values().stream().map(figures::text).toList();
      assertThat(texts).as("%s over %d px", axis, width).hasSizeBetween(2, 16);
      assertThat(texts).doesNotHaveDuplicates();
      assertThat(texts)
          .allMatch(text -> lettering.width(text, font) + GAP <= marks.step() / pixel, "fits");
    }
  }
}
