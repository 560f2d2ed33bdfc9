package fairboil.reports.chart.xchart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.reports.chart.Axis;
import fairboil.reports.chart.Axis.Ticks;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Steps of 1, 2 and 5 times powers of ten, and those of clocks: common practice, no source. */
class GraduationTest {

  private static List<String> figures(Axis axis, double least) {
    Graduation marks = Graduation.of(axis, least);
    Figures figures = Figures.of(axis, marks.step());
    return marks.values().stream().map(figures::text).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "NUMBERS; 0; 4.3; 0.6; 0 1 2 3 4",
        "NUMBERS; -0.2; 0.2; 0.06; −0.2 −0.1 0.0 0.1 0.2",
        "NUMBERS; 0; 0.007; 0.0015; 0.000 0.002 0.004 0.006",
        "NUMBERS; 590; 730; 30; 600 650 700",
        "NUMBERS; -35; 22; 11; −20 0 20",
        "NUMBERS; 0; 1.2e6; 3e5; 0 500000 1000000",
        "NUMBERS; 99.99; 100.01; 0.005; 99.990 99.995 100.000 100.005 100.010",
        "CLOCK; 7.8; 10.3; 0.3; 8:00 8:30 9:00 9:30 10:00",
        "CLOCK; -1.5; 1.7; 0.6; −1:00 0:00 1:00",
        "CLOCK; 0; 0.5; 0.1; 0:00 0:10 0:20 0:30",
        "CLOCK; 0; 31; 6; 0:00 10:00 20:00 30:00",
        "CLOCK; 0; 200; 40; 0:00 60:00 120:00 180:00",
        "CLOCK; 0; 4000; 900; 0:00 1000:00 2000:00 3000:00 4000:00"
      })
  void marksAreRound(Ticks ticks, double from, double to, double least, String figures) {
    assertThat(figures(new Axis("", from, to, ticks), least)).containsExactly(figures.split(" "));
  }

  @Property
  void marksAreAsCloseAsAllowedAndAllOnTheAxis(
      @ForAll @DoubleRange(min = -1e5, max = 1e5) double from,
      @ForAll @DoubleRange(min = 0.01, max = 1e5) double length,
      @ForAll @DoubleRange(min = 0.02, max = 0.4) double share) {
    Axis axis = new Axis("", from, from + length, Ticks.NUMBERS);
    Graduation marks = Graduation.of(axis, share * length);
    // From 2 to 5 is the widest gap between round numbers.
    assertThat(marks.step()).isBetween(share * length * (1 - 1e-8), 2.5 * share * length);
    double tiny = 1e-6 * length;
    List<Double> values = marks.values();
    for (int i = 0; i < values.size(); i++) {
      assertThat(values.get(i)).isBetween(axis.from() - tiny, axis.to() + tiny);
      if (i > 0) {
        assertThat(values.get(i) - values.get(i - 1)).isCloseTo(marks.step(), within(tiny));
      }
    }
    // None is left out at either end.
    double left = values.isEmpty() ? length : values.get(0) - axis.from();
    assertThat(left).isLessThan(marks.step() + tiny);
    assertThat(values.stream().map(Math::abs).filter(value -> value < tiny).count())
        .isLessThanOrEqualTo(1);
  }
}
