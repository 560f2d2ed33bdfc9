package fairboil.analysis.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against pots whose boil is known, heated by a formula of the test's own. */
class BoilFinderTest {

  private static final double BOILING = 98.4;

  /** A lumped pot over a fire that may grow, in a wind that may cool it, with its sensor. */
  private static final class Pot {

    private double capacity = 4300;
    private double power = 450;
    private double growth = 0;
    private double loss = 1.5;
    private double lag = 3;
    private double offset = 0.3;
    private double sd = 0.3;
    private double step = 0.1;
    private double interval = 1;
    private double lasts = 2400;
    private double boiledAt = Double.NaN;

    double[] celsius(Random random) {
      int count = (int) (lasts / interval);
      double[] readings = new double[count];
      double water = 15;
      double bead = 15;
      double dt = 0.1;
      int perReading = (int) Math.round(interval / dt);
      for (int i = 0; i < count; i++) {
        readings[i] = step * Math.round((bead + offset + sd * random.nextGaussian()) / step);
        for (int k = 0; k < perReading; k++) {
          double time = i * interval + k * dt;
          double net = power * (1 + growth * time) - loss * (water - 10);
          water = Math.min(BOILING, water + net / capacity * dt);
          bead += (water - bead) * dt / Math.max(lag, dt);
          if (water >= BOILING && Double.isNaN(boiledAt)) {
            boiledAt = time + dt;
          }
        }
      }
      return readings;
    }

    Trace trace(double[] celsius) {
      double[] seconds = new double[celsius.length];
      for (int i = 0; i < seconds.length; i++) {
        seconds[i] = i * interval;
      }
      return Trace.of(seconds, celsius, interval);
    }

    Boil boil(double[] celsius) {
      return BoilFinder.find(trace(celsius), search());
    }

    BoilSearch search() {
      return new BoilSearch(0, lasts, OptionalDouble.of(BOILING), 1.6, lag, step);
    }
  }

  private static String reason(Boil boil) {
    return ((Boil.NotSeen) boil).reason().toString();
  }

  @ParameterizedTest
  @CsvSource({
    // power W, growth 1/s, loss W/K, lag s, step K, interval s, worst error s
    "300, 0, 1.0, 0, 0.1, 1, 4",
    "450, 0, 1.5, 3, 0.1, 1, 4",
    "900, 0, 1.5, 8, 0.25, 1, 4",
    "600, 0.0005, 2.0, 4, 0.25, 2, 4",
    "700, -0.0003, 2.0, 4, 0.25, 1, 4",
    // The last degrees at 23 s each, and at a reading every 5 s: noise of 0.3 K matters more.
    "450, 0, 3.0, 5, 0.25, 1, 6",
    "400, 0, 2.0, 2, 0.1, 5, 8",
  })
  void boilTimeIsRightWithinFourSeconds(
      double power,
      double growth,
      double loss,
      double lag,
      double step,
      double interval,
      double worst) {
    Random random = new Random(20_240_612L);
    for (int run = 0; run < 40; run++) {
      Pot pot = new Pot();
      pot.power = power;
      pot.growth = growth;
      pot.loss = loss;
      pot.lag = lag;
      pot.step = step;
      pot.interval = interval;
      Boil boil = pot.boil(pot.celsius(random));

      assertThat(boil).isInstanceOf(Boil.Seen.class);
      assertThat(((Boil.Seen) boil).at()).isCloseTo(pot.boiledAt, within(worst));
      assertThat(((Boil.Seen) boil).length()).isEqualTo(Boil.Length.LONG);
    }
  }

  @Test
  void statedUncertaintyOfTheFitIsHonest() {
    Random random = new Random(7);
    int within = 0;
    int runs = 200;
    double sum = 0;
    for (int run = 0; run < runs; run++) {
      Pot pot = new Pot();
      Boil.Seen seen = (Boil.Seen) pot.boil(pot.celsius(random));
      double error = seen.at() - pot.boiledAt;
      sum += error;
      within += Math.abs(error) < 2 * Math.hypot(seen.fit(), seen.level()) ? 1 : 0;
    }
    assertThat(sum / runs).isCloseTo(0, within(0.7));
    assertThat(within).isGreaterThan(160);
  }

  @Test
  void shortPlateauHasALargerUncertainty() {
    Pot pot = new Pot();
    double[] celsius = pot.celsius(new Random(1));
    int cut = (int) pot.boiledAt + 40;
    Boil.Seen brief = (Boil.Seen) pot.boil(Arrays.copyOf(celsius, cut));
    Boil.Seen whole = (Boil.Seen) pot.boil(celsius);

    assertThat(brief.length()).isEqualTo(Boil.Length.SHORT);
    assertThat(brief.at()).isCloseTo(pot.boiledAt, within(6.0));
    assertThat(brief.level()).isGreaterThan(3 * whole.level());
  }

  @Test
  void recordThatEndsAtOnceHasNoBoil() {
    Pot pot = new Pot();
    double[] celsius = pot.celsius(new Random(1));

    assertThat(pot.boil(Arrays.copyOf(celsius, (int) pot.boiledAt + 5)))
        .isInstanceOf(Boil.NotSeen.class);
  }

  @Test
  void waterThatNeverBoilsIsToldApart() {
    Pot pot = new Pot();
    pot.power = 120;
    pot.lasts = 3600;

    assertThat(reason(pot.boil(pot.celsius(new Random(2)))))
        .contains("highest level of the water")
        .contains("boiling point was 98.4");
  }

  @Test
  void balanceOfFireAndLossNearTheBoilingPointIsNoBoil() {
    Pot pot = new Pot();
    pot.loss = 4;
    pot.power = 4 * (BOILING - 10 - 0.8);
    pot.lasts = 9000;

    assertThat(reason(pot.boil(pot.celsius(new Random(2))))).contains("levelled off slowly");
  }

  @Test
  void levelOfAControllerBelowTheBoilIsPassed() {
    Pot pot = new Pot();
    double[] celsius = pot.celsius(new Random(3));
    int at = 0;
    while (celsius[at] < 70) {
      at++;
    }
    double[] held = new double[celsius.length];
    for (int i = 0; i < held.length; i++) {
      int source = i < at ? i : Math.max(at, i - 300);
      held[i] = celsius[source];
    }

    Boil.Seen seen = (Boil.Seen) pot.boil(held);

    assertThat(seen.at()).isCloseTo(pot.boiledAt + 300, within(4.0));
  }

  @Test
  void probeDippedIntoHotWaterIsNoBoil() {
    Pot pot = new Pot();
    double[] celsius = new double[600];
    Random random = new Random(4);
    for (int i = 0; i < celsius.length; i++) {
      celsius[i] = (i < 100 ? 20 : BOILING) + 0.2 * random.nextGaussian();
    }

    assertThat(reason(pot.boil(celsius))).contains("10 are needed");
  }

  @Test
  void waterChangedOnTheWayIsNoBoil() {
    Pot pot = new Pot();
    double[] celsius = pot.celsius(new Random(5));
    double[] changed = new double[celsius.length];
    for (int i = 0; i < changed.length; i++) {
      changed[i] = i < 400 ? celsius[i] : celsius[i - 400];
    }

    assertThat(reason(pot.boil(changed))).contains("water fell by");
  }

  @Test
  void secondPotIsNotPartOfIt() {
    Pot pot = new Pot();
    double[] once = pot.celsius(new Random(5));
    double[] twice = Arrays.copyOf(once, 2 * once.length);
    System.arraycopy(once, 0, twice, once.length, once.length);
    pot.lasts *= 2;

    assertThat(((Boil.Seen) pot.boil(twice)).at()).isCloseTo(pot.boiledAt, within(4.0));
  }

  @Test
  void gapOverTheBoilIsNoBoil() {
    Pot pot = new Pot();
    double[] celsius = pot.celsius(new Random(6));
    for (int i = (int) pot.boiledAt - 25; i < pot.boiledAt + 20; i++) {
      celsius[i] = Double.NaN;
    }

    assertThat(reason(pot.boil(celsius))).contains("gap of").contains("over the boil");
  }

  @Test
  void briefDipWhileBoilingDoesNotMatter() {
    Pot pot = new Pot();
    double[] celsius = pot.celsius(new Random(6));
    for (int i = 0; i < 8; i++) {
      celsius[(int) pot.boiledAt + 60 + i] = 60;
    }

    assertThat(((Boil.Seen) pot.boil(celsius)).at()).isCloseTo(pot.boiledAt, within(4.0));
  }

  @Test
  void withoutABoilingPointThePlateauStillShows() {
    Pot pot = new Pot();
    Trace trace = pot.trace(pot.celsius(new Random(6)));
    BoilSearch search = new BoilSearch(0, pot.lasts, OptionalDouble.empty(), 0, pot.lag, 0);

    assertThat(((Boil.Seen) BoilFinder.find(trace, search)).at())
        .isCloseTo(pot.boiledAt, within(4.0));
  }

  @Test
  void nothingToGoOn() {
    BoilSearch search = new BoilSearch(0, 10, OptionalDouble.empty(), 0, 0, 0);

    assertThat(BoilFinder.find(Trace.empty(), search)).isInstanceOf(Boil.NotSeen.class);
  }
}
