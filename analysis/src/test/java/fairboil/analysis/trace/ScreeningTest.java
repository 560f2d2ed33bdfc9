package fairboil.analysis.trace;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.trace.Screening.Screened;
import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Place;
import fairboil.ingest.log.Channel;
import fairboil.ingest.log.TimeAxis;
import fairboil.ingest.quantity.Unit;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tech.tablesaw.api.DoubleColumn;

class ScreeningTest {

  private static Screened screen(double[] celsius, int faults, int empty) {
    double[] seconds = new double[celsius.length];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = i;
    }
    TimeAxis time =
        new TimeAxis(
            DoubleColumn.create("seconds", seconds),
            TimeAxis.Kind.ELAPSED,
            OptionalDouble.empty(),
            Optional.empty(),
            1,
            1);
    Channel channel =
        new Channel(
            "flame",
            Role.FLAME,
            Optional.empty(),
            Unit.CELSIUS,
            DoubleColumn.create("flame", celsius),
            0.1,
            faults,
            empty,
            Place.of("logs/a.csv"));
    return Screening.screen(time.seconds().asDoubleArray(), time.interval(), channel);
  }

  private static double[] flame(int count) {
    Random random = new Random(11);
    double[] celsius = new double[count];
    double flicker = 0;
    for (int i = 0; i < count; i++) {
      flicker += (-flicker + 20 * random.nextGaussian()) / 3;
      celsius[i] = 700 + flicker + 3 * random.nextGaussian();
    }
    return celsius;
  }

  @Test
  void quietFlickerIsAllKept() {
    Screened screened = screen(flame(2000), 0, 0);

    assertThat(screened.samples().used()).isEqualTo(2000);
  }

  @Test
  void loneSpikesAreSetAsideAndNothingElse() {
    double[] celsius = flame(600);
    celsius[50] = 1300;
    celsius[200] = 20;
    celsius[201] = 25;
    celsius[599] = 1500;
    celsius[0] = -120;

    Screened screened = screen(celsius, 0, 0);

    assertThat(screened.samples().setAside(SampleFate.SPIKE)).isEqualTo(5);
    assertThat(screened.samples().used()).isEqualTo(595);
    assertThat(screened.trace().celsiusAt(50)).isNaN();
    assertThat(screened.trace().celsiusAt(51)).isEqualTo(celsius[51]);
  }

  @Test
  void aRealPeakOfFiveSecondsIsKept() {
    double[] celsius = flame(600);
    for (int i = 300; i < 305; i++) {
      celsius[i] += 250;
    }

    assertThat(screen(celsius, 0, 0).samples().used()).isEqualTo(600);
  }

  @Test
  void stepsAndRampsAreKept() {
    double[] celsius = new double[400];
    for (int i = 0; i < celsius.length; i++) {
      celsius[i] = i < 100 ? 20 : i < 110 ? 20 + 70 * (i - 100) : i < 300 ? 750 : 300;
    }

    assertThat(screen(celsius, 0, 0).samples().used()).isEqualTo(400);
  }

  @Test
  void loneZeroIsAFaultAndTheAccountBalances() {
    double[] celsius = flame(100);
    celsius[10] = Double.NaN;
    celsius[11] = Double.NaN;
    celsius[12] = Double.NaN;
    celsius[40] = 0;
    celsius[60] = 0;
    celsius[61] = 0;

    Screened screened = screen(celsius, 2, 1);

    assertThat(screened.samples().setAside(SampleFate.FAULT)).isEqualTo(5);
    assertThat(screened.samples().setAside(SampleFate.GAP)).isEqualTo(1);
    assertThat(screened.samples().used()).isEqualTo(94);
    assertThat(screened.zeros()).isEqualTo(3);
  }

  @Test
  void zeroOnAFrostyDayIsATemperature() {
    double[] celsius = {1.2, 0.8, 0.4, 0, 0, -0.4, -0.8};

    assertThat(screen(celsius, 0, 0).samples().used()).isEqualTo(7);
  }

  @Test
  void nothingAndAllMissingBalanceToo() {
    assertThat(screen(new double[0], 0, 0).samples().read()).isZero();
    assertThat(screen(new double[] {Double.NaN, Double.NaN}, 0, 2).samples().used()).isZero();
    assertThat(screen(new double[] {41}, 0, 0).samples().used()).isEqualTo(1);
  }
}
