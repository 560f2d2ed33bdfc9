package fairboil.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.claim.ClaimResult.Verdict;
import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.HoleEffect.EffectVerdict;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Ledger;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.log.Channel;
import fairboil.ingest.log.Log;
import fairboil.ingest.log.OpenedLog;
import fairboil.ingest.log.RowFate;
import fairboil.ingest.log.TimeAxis;
import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Selection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import tech.tablesaw.api.DoubleColumn;

/**
 * A small invented study of which everything is known: sheets and logs in, results out. Five builds
 * with wall rings of known error, three burns each, at an altitude where water boils at 98.3 °C.
 */
class KnownStudyTest {

  private static final int BUILDS = 5;
  private static final double[] SCATTER = {1, -2, 1};
  private static final double[] BUILD_SCATTER = {3, -4, 2, -3, 2};

  /** Every second hole is off by 2e along the wrap: best fit leaves e either way. */
  private static double holeErrorInMillimetres(int build) {
    return 0.5 + 0.5 * build;
  }

  private static double flame(int build, int burn) {
    return 660 - 12 * holeErrorInMillimetres(build) + BUILD_SCATTER[build] + SCATTER[burn];
  }

  private static double boilSeconds(int build, int burn) {
    return 400 + 20 * build + 5 * burn;
  }

  private static Study study() {
    TestStudy sheets = new TestStudy().wall("upper", 8, 320);
    for (int build = 0; build < BUILDS; build++) {
      String name = "B" + build;
      sheets.build(name, "one");
      for (int hole = 0; hole < 8; hole++) {
        double error = (hole % 2 == 0 ? 2 : 0) * holeErrorInMillimetres(build);
        sheets.hole(name, "upper", hole + 1, 40 * hole + error, 15);
      }
      for (int burn = 0; burn < 3; burn++) {
        run(sheets, name, name + "-" + burn);
      }
    }
    return sheets
        .claim("quick", row -> claim(row).put(ClaimsSheet.VALUE, seconds(460)))
        .claim("quicker", row -> claim(row).put(ClaimsSheet.VALUE, seconds(390)))
        .finish();
  }

  private static void run(TestStudy sheets, String build, String run) {
    sheets.run(
        run,
        build,
        row ->
            row.put(RunsSheet.AMBIENT, Quantity.of(20, Unit.CELSIUS))
                .put(RunsSheet.ALTITUDE, Quantity.of(500, Unit.METRE))
                .put(RunsSheet.WATER, Quantity.of(1, Unit.KILOGRAM)));
    sheets.mark(run, Event.LIT, 0).mark(run, Event.POT_ON, 60);
  }

  private static Row.Builder claim(Row.Builder row) {
    return row.put(ClaimsSheet.CLAIM, "c")
        .put(ClaimsSheet.TEXT, "B0 boils that fast.")
        .put(ClaimsSheet.MEASURE, "boil time")
        .put(ClaimsSheet.ABOUT, new Selection.Named("B0"))
        .put(ClaimsSheet.RELATION, Relation.AT_MOST);
  }

  private static Amount seconds(double value) {
    return new Amount(value, 1, Optional.of(Unit.SECOND));
  }

  /** Water from 15 °C straight to the boil, then boiling for three minutes; then all goes out. */
  private static OpenedLog open(Run run) {
    int build = run.build().name().charAt(1) - '0';
    int burn = run.key().name().charAt(3) - '0';
    double boilAt = 60 + boilSeconds(build, burn);
    int length = (int) boilAt + 180;
    SourceFile source = new SourceFile("logs/" + run.key() + ".csv", 1, "0".repeat(64));
    double[] times = new double[length];
    for (int i = 0; i < length; i++) {
      times[i] = i;
    }
    TimeAxis time =
        new TimeAxis(
            DoubleColumn.create("time", times),
            TimeAxis.Kind.ELAPSED,
            OptionalDouble.empty(),
            Optional.empty(),
            1,
            1);
    DoubleUnaryOperator water =
        t -> Math.min(98.31, 15 + Math.max(0, t - 60) * (98.31 - 15) / (boilAt - 60));
    DoubleUnaryOperator flame = t -> t < 30 ? 20 + 10 * t : flame(build, burn) + Math.sin(t);
    return new OpenedLog(
        Optional.of(
            new Log(
                source,
                time,
                List.of(
                    channel("flame", Role.FLAME, times, flame),
                    channel("water", Role.WATER, times, water)),
                new Ledger<RowFate>(length, length, Map.of()))),
        Optional.of(source),
        List.of());
  }

  private static Channel channel(
      String name, Role role, double[] times, DoubleUnaryOperator temperature) {
    double[] values = new double[times.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = temperature.applyAsDouble(times[i]);
    }
    return new Channel(
        name,
        role,
        Optional.empty(),
        Unit.CELSIUS,
        DoubleColumn.create(name, values),
        0.1,
        0,
        0,
        Place.of("logs/x.csv").column(name));
  }

  @Test
  void everythingComesBack() {
    Study study = study();
    Results results = StudyAnalysis.of(study, KnownStudyTest::open);
    assertThat(results.findings()).noneMatch(finding -> finding.severity() == Severity.ERROR);
    assertThat(results.runs()).hasSize(15);
    for (int i = 0; i < 15; i++) {
      assertThat(results.runs().get(i).flame().peak().orNaN())
          .isCloseTo(flame(i / 3, i % 3), within(1.5));
      assertThat(results.runs().get(i).boil().boilTime().orNaN())
          .isCloseTo(boilSeconds(i / 3, i % 3), within(4.0));
    }
    for (int build = 0; build < BUILDS; build++) {
      assertThat(results.rings().get(build).rms().orNaN() * 1e3)
          .isCloseTo(holeErrorInMillimetres(build), within(0.01 * holeErrorInMillimetres(build)));
      assertThat(results.builds().get(build).boils().boiled()).isEqualTo(3);
    }
    assertThat(results.claims())
        .extracting(claim -> claim.verdict())
        .containsExactly(Verdict.SUPPORTED, Verdict.CONTRADICTED);
  }

  /**
   * The slope through the known means: x 0.5, 1 to 2.5 mm, y = 660 − 12 x + (3, −4, 2, −3, 2), by
   * hand: −12 + Σ(x − 1.5)(scatter)/2.5 = −12 + (−3 + 2 − 1.5 + 2)/2.5 = −12.2 °C/mm.
   */
  @Test
  void theHoleEffectIsTheLineThroughTheMeans() {
    Results results = StudyAnalysis.of(study(), KnownStudyTest::open);
    var effect = results.holeEffects().get(0);
    assertThat(effect.response()).isEqualTo(Measure.NORMALISED_PEAK);
    assertThat(effect.ring()).isEqualTo("upper");
    assertThat(effect.verdict()).isEqualTo(EffectVerdict.FALLS);
    EffectRow slope = effect.headline().orElseThrow();
    assertThat(slope.estimate() / 1e3).isCloseTo(-12.2, within(0.2));
    assertThat(slope.degreesOfFreedom()).isEqualTo(3);
  }

  @Test
  void oneProcessorOrFourGiveTheSame() {
    Study study = study();
    Results one = StudyAnalysis.of(study, KnownStudyTest::open, 1);
    Results four = StudyAnalysis.of(study, KnownStudyTest::open, 4);
    assertThat(four.findings()).isEqualTo(one.findings());
    assertThat(four.claims()).isEqualTo(one.claims());
    assertThat(four.builds()).isEqualTo(one.builds());
    assertThat(four.holeEffects().get(2).rows()).isEqualTo(one.holeEffects().get(2).rows());
  }
}
