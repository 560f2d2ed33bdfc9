package fairboil.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Role;
import fairboil.ingest.choice.YesNo;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/** What a flame probe itself does to a peak: its class, cold junction, lag and rating. */
class FlameProbeTest {

  private static final int LENGTH = 900;
  private static final double TAU = 8;

  private static double[] seconds() {
    double[] seconds = new double[LENGTH];
    Arrays.setAll(seconds, i -> i);
    return seconds;
  }

  /** A flame that swells to 700 °C for a while: what is about the bead. */
  private static double about(double t) {
    return 20 + 480 * (1 - Math.exp(-t / 40)) + 200 * Math.exp(-Math.pow((t - 400) / 25, 2));
  }

  /** Highest mean over 10 s of what is about the bead. */
  private static double truth() {
    double highest = 0;
    for (double from = 100; from < 700; from += 0.5) {
      double sum = 0;
      for (int k = 0; k <= 20; k++) {
        sum += about(from + k * 0.5);
      }
      highest = Math.max(highest, sum / 21);
    }
    return highest;
  }

  /** A bead of first order in it; at 850 s it is taken out quickly into air of 20 °C. */
  private static double[] bead(double noise, RandomGenerator random) {
    double[] read = new double[LENGTH];
    double bead = 20;
    for (int i = 0; i < LENGTH; i++) {
      read[i] = bead + noise * random.nextGaussian();
      for (int k = 0; k < 20; k++) {
        double t = i + k / 20.0;
        bead += ((t < 850 ? about(t) : 20) - bead) / TAU / 20;
      }
    }
    return read;
  }

  private static StudyFixture fixture() {
    return new StudyFixture()
        .times(seconds())
        .mark(Event.LIT, 0)
        .mark(Event.POT_ON, 10)
        .mark(Event.FLAME_OUT, 845);
  }

  private static RunResult undone(StudyFixture fixture, double noise, long seed) {
    return fixture
        .sensor(SensorsSheet.UNDO_LAG, YesNo.YES)
        .channel(Role.FLAME, bead(noise, new SplittableRandom(seed)))
        .analyse();
  }

  private static double line(Figure figure, Influence influence) {
    return figure.budget().lines().stream()
        .filter(line -> line.influence() == influence)
        .mapToDouble(BudgetLine::contribution)
        .sum();
  }

  private static List<Influence> influences(Figure figure) {
    return figure.budget().lines().stream().map(BudgetLine::influence).toList();
  }

  @Test
  void theLagIsUndoneOnlyWhereAsked() {
    RunResult read =
        fixture().lag(TAU).channel(Role.FLAME, bead(0, new SplittableRandom(1))).analyse();
    assertThat(read.flame().lag()).isEmpty();
    assertThat(truth() - read.flame().peak().orNaN()).isBetween(8.0, 40.0);
    RunResult undone = undone(fixture().lag(TAU), 0, 1);
    assertThat(undone.flame().peak().orNaN()).isCloseTo(truth(), within(3.0));
    assertThat(undone.flame().lag().orElseThrow().asRead().orNaN())
        .isCloseTo(read.flame().peak().orNaN(), within(1e-9));
    assertThat(undone.flame().lag().orElseThrow().added().orNaN())
        .isCloseTo(undone.flame().peak().orNaN() - read.flame().peak().orNaN(), within(1e-9));
  }

  @Test
  void eachSourceOfThePeakIsCountedOnce() {
    Figure peak = undone(fixture().lag(TAU), 2, 2).flame().peak();
    assertThat(influences(peak))
        .containsExactlyInAnyOrder(
            Influence.NOISE,
            Influence.PEAK_BIAS,
            Influence.LAG,
            Influence.LAG_NOISE,
            Influence.RESOLUTION,
            Influence.SENSOR_TOLERANCE);
    assertThat(line(peak, Influence.LAG_NOISE)).isPositive();
    assertThat(line(peak, Influence.SENSOR_TOLERANCE))
        .isCloseTo(0.0075 * peak.orNaN() / Math.sqrt(3), within(1e-6));
    assertThat(peak.budget().lines())
        .filteredOn(line -> line.sharedBy().isPresent())
        .extracting(BudgetLine::influence)
        .containsExactlyInAnyOrder(Influence.LAG, Influence.SENSOR_TOLERANCE);
  }

  private static List<Key> instruments(StudyFixture fixture) {
    return fixture
        .channel(Role.FLAME, bead(0, new SplittableRandom(1)))
        .analyse()
        .flame()
        .peak()
        .budget()
        .lines()
        .stream()
        .flatMap(line -> line.sharedBy().stream())
        .toList();
  }

  @Test
  void aProbeWithoutAnIdIsTheSameAtOneSiteOnly() {
    List<Key> north = instruments(fixture().cell(RunsSheet.SITE, "North"));
    assertThat(north)
        .isNotEmpty()
        .isEqualTo(instruments(fixture().cell(RunsSheet.SITE, "North")))
        .doesNotContainAnyElementsOf(instruments(fixture().cell(RunsSheet.SITE, "South")))
        .doesNotContainAnyElementsOf(instruments(fixture()));
  }

  /**
   * The time constant is told with 20 % of itself as its standard uncertainty. Of 60, at least 0.95
   * − 2.6 standard deviations within 1.96 u, tolerance of the class left out.
   */
  @Test
  void theTruthIsWithinWhatNoiseAndLagState() {
    int held = 0;
    for (int i = 0; i < 60; i++) {
      double told = TAU / (1 + 0.2 * new SplittableRandom(900 + i).nextGaussian());
      Figure peak = undone(fixture().lag(told), 3, 100 + i).flame().peak();
      double tolerance = line(peak, Influence.SENSOR_TOLERANCE);
      double u = Math.sqrt(Math.pow(peak.budget().combined(), 2) - tolerance * tolerance);
      held += Math.abs(peak.orNaN() - truth()) <= 1.96 * u ? 1 : 0;
    }
    assertThat(held / 60.0).isGreaterThan(0.95 - 2.6 * Math.sqrt(0.95 * 0.05 / 60));
  }

  @Test
  void theTimeConstantComesFromAStepWhereNoneIsTold() {
    RunResult result = undone(fixture(), 0.5, 3);
    LagUndone lag = result.flame().lag().orElseThrow();
    assertThat(lag.timeConstant().orNaN()).isCloseTo(TAU, within(0.2));
    assertThat(result.findings())
        .extracting(finding -> finding.problem().toString())
        .anyMatch(
            problem -> problem.matches(".*time constant is taken as (7\\.9[5-9]|8\\.)\\d* s.*"));
    assertThat(result.flame().peak().orNaN()).isCloseTo(truth(), within(6.0));
  }

  @Test
  void withoutTimeConstantAndStepItIsSaid() {
    double[] calm = new double[LENGTH];
    Arrays.setAll(calm, i -> 600 + 3 * Math.sin(i / 30.0));
    RunResult result =
        fixture().sensor(SensorsSheet.UNDO_LAG, YesNo.YES).channel(Role.FLAME, calm).analyse();
    assertThat(result.flame().lag()).isEmpty();
    assertThat(result.findings())
        .extracting(finding -> finding.problem().toString())
        .anyMatch(problem -> problem.contains("no time constant is given"));
  }

  @Test
  void readingsAboveWhatTheProbeIsRatedToAreAFinding() {
    RunResult result =
        fixture()
            .sensor(SensorsSheet.RATED_TO, Quantity.of(480, Unit.CELSIUS))
            .channel(Role.FLAME, bead(0, new SplittableRandom(1)))
            .analyse();
    assertThat(result.findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.problem().toString()).contains("above the 480.0 °C");
              assertThat(finding.remedy().toString())
                  .contains("insulation may have burnt, so its readings may be false");
              assertThat(finding.place().toString()).contains("flame");
            });
  }

  /**
   * Type K: about 40.0 µV/K at 15 °C over 42.3 µV/K near 650 °C; 1 K rectangular, as none is told.
   */
  @Test
  void theColdJunctionHasItsLine() {
    double[] volts = new double[LENGTH];
    double[] cold = new double[LENGTH];
    Arrays.fill(volts, 0.0265);
    Arrays.fill(cold, 15);
    Figure peak =
        fixture()
            .sensor(SensorsSheet.TYPE, "K")
            .channel(Role.FLAME, Unit.MILLIVOLT, volts)
            .channel(Role.COLD_JUNCTION, cold)
            .analyse()
            .flame()
            .peak();
    assertThat(line(peak, Influence.COLD_JUNCTION))
        .isCloseTo(40.0 / 42.3 / Math.sqrt(3), within(0.01));
    assertThat(influences(peak)).containsOnlyOnce(Influence.COLD_JUNCTION);
  }
}
