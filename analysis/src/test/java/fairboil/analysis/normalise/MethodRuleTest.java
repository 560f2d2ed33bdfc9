package fairboil.analysis.normalise;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.TestStudy;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.heat.Fire;
import fairboil.analysis.heat.Loss;
import fairboil.analysis.run.References;
import fairboil.analysis.run.RunResult;
import fairboil.analysis.trace.Trace;
import fairboil.analysis.water.Saturation;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Lid;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.sheet.PotGiven;
import fairboil.ingest.sheet.RunsSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/**
 * The rule by which one method is chosen for all boil times of a study: heat balance if every run
 * that counts and boiled has a loss of its own or of its like, known to under 2 % of the result;
 * else energy scaling for all.
 */
class MethodRuleTest {

  private static final SimulatedBurn BURN =
      new SimulatedBurn(
          1, 150, 12, 5, Saturation.temperature(95_000), new Fire(500, 0), new Loss(1.3, 0), 1);

  /** What a run of the study logged once its pot came off. */
  private enum Cooled {
    FULLY,
    NOT_AT_ALL
  }

  private record Asked(String pot, Cooled cooled, String excluded, boolean boiled) {

    Asked(String pot, Cooled cooled) {
      this(pot, cooled, "", true);
    }
  }

  private static Study study(List<Asked> runs) {
    TestStudy sheets = new TestStudy().build("A", "plain");
    for (int i = 0; i < runs.size(); i++) {
      Asked asked = runs.get(i);
      sheets.run(
          "A-" + i,
          "A",
          row -> {
            row.put(RunsSheet.LID, Lid.ON).put(RunsSheet.POT, new PotGiven.Named(asked.pot()));
            return asked.excluded().isEmpty()
                ? row
                : row.put(RunsSheet.EXCLUDE_BOIL, asked.excluded());
          });
    }
    return sheets.finish();
  }

  private static References references(double water, double ambient, NormaliseBy by) {
    return new References(water, 20, ambient, Saturation.temperature(101_325), 0, by);
  }

  private static Normalising.Outcome outcome(References references, Asked... asked) {
    Study study = study(List.of(asked));
    SimulatedBurn.Course course = BURN.run();
    List<RunResult> runs = new ArrayList<>();
    for (int i = 0; i < asked.length; i++) {
      RandomGenerator random = new SplittableRandom(50 + i);
      Told told = new Told(BURN, course, trace(course, asked[i].cooled(), random), random, 0.1);
      double boilTime = asked[i].boiled() ? course.boilAt() : Double.NaN;
      runs.add(told.result(study, study.runs().get(i), boilTime));
    }
    return Normalising.of(study, references, runs, 0.95);
  }

  private static Trace trace(SimulatedBurn.Course course, Cooled cooled, RandomGenerator random) {
    double length = cooled == Cooled.FULLY ? Double.POSITIVE_INFINITY : 60;
    Trace whole = course.read(0.05, 5, random);
    return whole.between(0, course.potOff() + length);
  }

  private static Normalising.Outcome auto(Asked... asked) {
    return outcome(references(1, 20, NormaliseBy.AUTO), asked);
  }

  private static void assertAllBy(Normalising.Outcome outcome, NormaliseBy method) {
    assertThat(outcome.normalisation().method()).isEqualTo(method);
    for (RunResult run : outcome.runs()) {
      boolean boiled = run.boil().boilTime().isKnown();
      assertThat(run.energy().normalisedBy())
          .isEqualTo(boiled ? Optional.of(method) : Optional.empty());
    }
  }

  @Test
  void heatBalanceWhereEveryPotWasLoggedAsItCooled() {
    Normalising.Outcome outcome = auto(new Asked("a", Cooled.FULLY), new Asked("b", Cooled.FULLY));
    assertAllBy(outcome, NormaliseBy.HEAT_BALANCE);
    assertThat(outcome.normalisation().lacking()).isEmpty();
    assertThat(outcome.findings()).isEmpty();
    for (RunResult run : outcome.runs()) {
      assertThat(run.energy().normalisedBoilTime()).isEqualTo(run.energy().heatBalanceBoilTime());
    }
  }

  @Test
  void heatBalanceWhereAnotherCoolingOfTheSamePotTellsTheLoss() {
    Normalising.Outcome outcome =
        auto(
            new Asked("a", Cooled.FULLY),
            new Asked("a", Cooled.FULLY),
            new Asked("a", Cooled.FULLY),
            new Asked("a", Cooled.NOT_AT_ALL));
    assertAllBy(outcome, NormaliseBy.HEAT_BALANCE);
  }

  @Test
  void energyScalingForAllWhereOneRunHasNoLoss() {
    Normalising.Outcome outcome =
        auto(new Asked("a", Cooled.FULLY), new Asked("b", Cooled.NOT_AT_ALL));
    assertAllBy(outcome, NormaliseBy.ENERGY_SCALING);
    assertThat(outcome.normalisation().lacking())
        .extracting(lacking -> lacking.run().name())
        .containsExactly("A-1");
    assertThat(outcome.findings())
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.NOTE);
              assertThat(finding.problem().toString()).contains("A-1", "not for air temperature");
            });
  }

  /** One cooling says little of another run, and the air of the reference is far colder. */
  @Test
  void energyScalingForAllWhereTheLossIsKnownTooPoorly() {
    Normalising.Outcome outcome =
        outcome(
            references(1, -75, NormaliseBy.AUTO),
            new Asked("a", Cooled.FULLY),
            new Asked("a", Cooled.NOT_AT_ALL));
    assertAllBy(outcome, NormaliseBy.ENERGY_SCALING);
    assertThat(outcome.normalisation().lacking())
        .singleElement()
        .matches(lacking -> lacking.reason().says(HeatSays.POOR_LOSS));
  }

  @Test
  void aRunThatDoesNotCountOrDidNotBoilDoesNotDecide() {
    Normalising.Outcome outcome =
        auto(new Asked("a", Cooled.FULLY), new Asked("b", Cooled.NOT_AT_ALL, "", false));
    assertAllBy(outcome, NormaliseBy.HEAT_BALANCE);
    Normalising.Outcome excluded =
        auto(
            new Asked("a", Cooled.FULLY),
            new Asked("b", Cooled.NOT_AT_ALL, "the pot was knocked over", true));
    assertThat(excluded.normalisation().method()).isEqualTo(NormaliseBy.HEAT_BALANCE);
  }

  @Test
  void energyScalingWhereNothingBoiled() {
    Normalising.Outcome outcome = auto(new Asked("a", Cooled.FULLY, "", false));
    assertAllBy(outcome, NormaliseBy.ENERGY_SCALING);
    assertThat(outcome.findings()).isEmpty();
  }

  @Test
  void aSettingDecides() {
    References scaled = references(1, 20, NormaliseBy.ENERGY_SCALING);
    assertAllBy(outcome(scaled, new Asked("a", Cooled.FULLY)), NormaliseBy.ENERGY_SCALING);
    References balanced = references(1, 20, NormaliseBy.HEAT_BALANCE);
    Normalising.Outcome outcome =
        outcome(balanced, new Asked("a", Cooled.FULLY), new Asked("b", Cooled.NOT_AT_ALL));
    assertThat(outcome.normalisation().method()).isEqualTo(NormaliseBy.HEAT_BALANCE);
    assertThat(outcome.runs().get(0).energy().normalisedBoilTime().isKnown()).isTrue();
    assertThat(reason(outcome.runs().get(1)))
        .contains("there is no heat balance", "no other run with the same pot, lid and wind");
  }

  /** 150 W boil the pot at 70 °C in mild air, but not at 100 °C in air of −20 °C. */
  @Test
  void unknownWhereThisFireCouldNotBoilTheReference() {
    SimulatedBurn weak =
        new SimulatedBurn(
            1, 150, 30, 30, Saturation.temperature(70_000), new Fire(150, 0), new Loss(1.5, 0), 1);
    Study study = study(List.of(new Asked("a", Cooled.FULLY)));
    SimulatedBurn.Course course = weak.run();
    RandomGenerator random = new SplittableRandom(60);
    RunResult run =
        new Told(weak, course, course.read(0.05, 5, random), random, 0.1)
            .result(study, course.boilAt());
    Normalising.Outcome outcome =
        Normalising.of(study, references(1, -20, NormaliseBy.HEAT_BALANCE), List.of(run), 0.95);
    assertThat(reason(outcome.runs().get(0))).contains("could", "boil the reference");
    assertThat(outcome.runs().get(0).energy().normalisedBy()).isEmpty();
  }

  private static String reason(RunResult run) {
    return ((Figure.Unknown) run.energy().normalisedBoilTime()).reason().toString();
  }
}
