package fairboil.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Lid;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.choice.Role;
import fairboil.ingest.choice.YesNo;
import fairboil.ingest.finding.Ledger;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.log.Channel;
import fairboil.ingest.log.Log;
import fairboil.ingest.log.OpenedLog;
import fairboil.ingest.log.RowFate;
import fairboil.ingest.log.TimeAxis;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.PotGiven;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Sensor;
import fairboil.ingest.sheet.SensorsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tech.tablesaw.api.DoubleColumn;

/**
 * Hidden truths, from sheets and logs to figures: growth of the fire, evaporation, lag, offset and
 * flicker all at once, and all that is told off by what the program states of it.
 */
class HiddenRunsTest {

  private static final double REFERENCE_CELSIUS = 20;

  /** How far a figure is from its truth, and how far its 95 % interval reaches. */
  private record Outcome(double truth, double value, double u, boolean held) {

    static Outcome of(Figure figure, double truth) {
      if (!(figure instanceof Figure.Known known)) {
        throw new AssertionError(figure.toString());
      }
      boolean held = known.interval(0.95).contains(truth);
      return new Outcome(truth, figure.orNaN(), figure.budget().combined(), held);
    }
  }

  private record Trial(Outcome peak, Outcome boil, Outcome normalised) {}

  private static Trial trial(long seed) {
    RandomGenerator random = new SplittableRandom(seed);
    HiddenBurn burn = new HiddenBurn(random);
    double reference = Math.rint(burn.water * 10) / 10;
    Study study = study(burn, reference, random, seed % 4 < 2);
    OpenedLog log = log(burn, random, seed % 2 == 0);
    RunResult run = StudyAnalysis.of(study, key -> log, 1).runs().get(0);
    double normalised =
        burn.boilTime(
            reference, REFERENCE_CELSIUS, REFERENCE_CELSIUS, HiddenBurn.boilingPoint(101_325));
    return new Trial(
        Outcome.of(run.flame().peak(), burn.truePeak),
        Outcome.of(run.boil().boilTime(), burn.boiledAt),
        Outcome.of(run.energy().normalisedBoilTime(), normalised));
  }

  private static Study study(
      HiddenBurn burn, double reference, RandomGenerator random, boolean startIsTold) {
    TestStudy sheets =
        new TestStudy()
            .setting(Settings.REFERENCE_WATER, Quantity.of(reference, Unit.KILOGRAM))
            .setting(Settings.NORMALISE_BY, NormaliseBy.HEAT_BALANCE)
            .build("A", "plain")
            .run("1", "A", row -> told(row, burn, random, startIsTold));
    mark(sheets, Event.LIT, HiddenBurn.LIT, 0);
    mark(sheets, Event.POT_ON, HiddenBurn.POT_ON, random.nextGaussian());
    mark(sheets, Event.POT_OFF, burn.potOff, random.nextGaussian());
    mark(sheets, Event.FLAME_OUT, burn.flameOut, random.nextGaussian());
    return sheets.finish();
  }

  private static void mark(TestStudy sheets, Event event, double seconds, double off) {
    sheets.mark("1", event, seconds - HiddenBurn.LIT + off);
  }

  private static Row.Builder told(
      Row.Builder row, HiddenBurn burn, RandomGenerator random, boolean startIsTold) {
    if (startIsTold) {
      double start = burn.start + 0.5 * random.nextGaussian();
      row.put(RunsSheet.WATER_START, Quantity.of(start, Unit.CELSIUS));
    }
    double pot = burn.potGrams + 2 * random.nextGaussian();
    return row.put(
            RunsSheet.AMBIENT,
            Quantity.of(burn.ambient + 0.5 * random.nextGaussian(), Unit.CELSIUS))
        .put(
            RunsSheet.STATION_PRESSURE,
            Quantity.of(burn.pascals + 100 * random.nextGaussian(), Unit.PASCAL))
        .put(RunsSheet.WATER, grams(1000 * burn.water + 2 * random.nextGaussian()))
        .put(RunsSheet.WATER_LEFT, grams(1000 * burn.waterLeft + 2 * random.nextGaussian()))
        .put(RunsSheet.POT, new PotGiven.EmptyMass(grams(pot)))
        .put(RunsSheet.POT_MATERIAL, "aluminium")
        .put(RunsSheet.LID, Lid.OFF);
  }

  private static Quantity grams(double value) {
    return Quantity.of(value, Unit.GRAM);
  }

  private static OpenedLog log(HiddenBurn burn, RandomGenerator random, boolean lagIsTold) {
    SourceFile source = new SourceFile("logs/1.csv", 1, "0".repeat(64));
    TimeAxis time =
        new TimeAxis(
            DoubleColumn.create("time", burn.seconds),
            TimeAxis.Kind.ELAPSED,
            OptionalDouble.empty(),
            Optional.empty(),
            1,
            1);
    double offWater = 1 + 0.2 * random.nextGaussian();
    double offFlame = 1 + 0.2 * random.nextGaussian();
    OptionalDouble flameLag =
        lagIsTold ? OptionalDouble.of(burn.flameLag / offFlame) : OptionalDouble.empty();
    List<Channel> channels =
        List.of(
            channel(Role.FLAME, burn.flameRead, flameLag),
            channel(Role.WATER, burn.waterRead, OptionalDouble.of(burn.waterLag / offWater)));
    int size = burn.seconds.length;
    Log log = new Log(source, time, channels, new Ledger<RowFate>(size, size, Map.of()));
    return new OpenedLog(Optional.of(log), Optional.of(source), List.of());
  }

  private static Channel channel(Role role, double[] values, OptionalDouble lag) {
    Row.Builder row =
        Row.at(Place.of("sensors.csv", 2))
            .put(SensorsSheet.COLUMN, role.label())
            .put(SensorsSheet.ROLE, role)
            .put(SensorsSheet.UNDO_LAG, role == Role.FLAME ? YesNo.YES : YesNo.NO);
    lag.ifPresent(s -> row.put(SensorsSheet.TIME_CONSTANT, Quantity.of(s, Unit.SECOND)));
    return new Channel(
        role.label(),
        role,
        Optional.of(new Sensor("test", row.build())),
        Unit.CELSIUS,
        DoubleColumn.create(role.label(), values),
        0.1,
        0,
        0,
        Place.of("logs/1.csv").column(role.label()));
  }

  /** Of so many, at least the 0.5 % quantile of a binomial of 95 %, by its normal approximation. */
  private static int least(int trials) {
    return (int) Math.floor(0.95 * trials - 2.576 * Math.sqrt(trials * 0.95 * 0.05) - 0.5);
  }

  private static void check(int trials, long seed) {
    int peak = 0;
    int boil = 0;
    int normalised = 0;
    for (int i = 0; i < trials; i++) {
      Trial trial = trial(seed + i);

      peak += trial.peak().held() ? 1 : 0;
      boil += trial.boil().held() ? 1 : 0;
      normalised += trial.normalised().held() ? 1 : 0;
    }
    if (System.getProperty("show") != null)
      System.out.println(peak + " " + boil + " " + normalised);
    assertThat(peak).as("peaks").isGreaterThanOrEqualTo(least(trials));
    assertThat(boil).as("boil times").isGreaterThanOrEqualTo(least(trials));
    assertThat(normalised).as("normalised").isGreaterThanOrEqualTo(least(trials));
  }

  @Test
  void of24HiddenBurnsTheTruthIsWithinWhatIsStated() {
    check(24, 1000);
  }

  @Test
  @Tag("long")
  void of400HiddenBurnsTheTruthIsWithinWhatIsStated() {
    check(400, 5000);
  }
}
