package fairboil.reports.chart.xchart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import fairboil.reports.chart.Axis;
import fairboil.reports.chart.Box;
import fairboil.reports.chart.ChartException;
import fairboil.reports.chart.ChartMark;
import fairboil.reports.chart.Panel;
import fairboil.reports.chart.Tint;
import fairboil.reports.chart.xchart.MomentLanes.Placed;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MomentLanesTest {

  private static final Axis AXIS = new Axis("", 0, 100, Axis.Ticks.NONE);
  private static final Frame FRAME = new Frame(AXIS, AXIS, 50, 850, 0, 200);

  private static List<Placed> placed(List<ChartMark> moments) throws ChartException {
    Panel panel = new Panel(new Box(0, 0, 860, 220), "", "", AXIS, AXIS, 0, 3, moments);
    return new MomentLanes(new ChartLettering(Typeface.load()), ChartInk.of(Tint.COLOUR))
        .placed(panel, FRAME);
  }

  @Test
  void wordsFarApartShareTheLowestLane() throws ChartException {
    assertThat(placed(List.of(new ChartMark.Moment(10, "lit"), new ChartMark.Moment(60, "boil"))))
        .extracting(Placed::lane)
        .containsOnly(0);
  }

  @Test
  void wordsCloseTogetherClimb() throws ChartException {
    assertThat(
            placed(
                List.of(new ChartMark.Moment(10, "gas lit"), new ChartMark.Moment(12, "pot on"))))
        .extracting(Placed::text, Placed::lane)
        .contains(tuple("pot on", 0), tuple("gas lit", 1));
  }

  @Property(tries = 60)
  void noWordsCoverOthersAndNoLeaderRunsThroughWords(
      @ForAll @Size(max = 12) List<@DoubleRange(min = 0, max = 100) Double> times)
      throws ChartException {
    List<ChartMark> moments =
        IntStream.range(0, times.size())
            .mapToObj(i -> (ChartMark) new ChartMark.Moment(times.get(i), "event number " + i))
            .toList();
    List<Placed> placed = placed(moments);

    for (int i = 0; i < placed.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertThat(placed.get(i).disturbs(placed.get(j))).isFalse();
      }
    }
  }
}
