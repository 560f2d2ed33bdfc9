package fairboil.analysis.group;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.TestRun;
import fairboil.analysis.TestStudy;
import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.claim.Claims;
import fairboil.analysis.compare.Comparisons;
import fairboil.analysis.compare.RankComparison;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.measure.Measure.Level;
import fairboil.analysis.measure.WithoutBoil;
import fairboil.analysis.precision.Repeatabilities;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Message;
import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Selection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * No mean of survivors: P1 and P2 always boiled, Q1 and Q2 now and then. Every measure there is,
 * and any that is added.
 */
class SurvivorsTest {

  private static final List<String> BUILDS = List.of("P1", "P2", "Q1", "Q2");
  private static final int BURNS = 4;

  /** What became of the later burns of Q1 and Q2. */
  private enum Fate {
    FAILED,
    NOT_SEEN
  }

  private static Study study(Measure measure) {
    TestStudy study = new TestStudy();
    for (String build : BUILDS) {
      study.build(build, "design " + build.charAt(0));
      for (int i = 0; i < BURNS; i++) {
        study.run(build + "-" + i, build, row -> row);
      }
    }
    study.claim("mean", row -> claim(row, measure));
    study.claim(
        "difference",
        row -> claim(row, measure).put(ClaimsSheet.AGAINST, new Selection.Named("design P")));
    return study.finish();
  }

  private static Row.Builder claim(Row.Builder row, Measure measure) {
    return row.put(ClaimsSheet.CLAIM, "c")
        .put(ClaimsSheet.TEXT, "as it says")
        .put(ClaimsSheet.MEASURE, measure.label())
        .put(ClaimsSheet.ABOUT, new Selection.Named("design Q"))
        .put(ClaimsSheet.RELATION, Relation.AT_LEAST)
        .put(ClaimsSheet.VALUE, new Amount(0, 0, Optional.of(unit(measure))));
  }

  private static Unit unit(Measure measure) {
    return switch (measure.dimension()) {
      case DURATION -> Unit.SECOND;
      case TEMPERATURE -> Unit.CELSIUS;
      case POWER -> Unit.WATT;
      case MASS -> Unit.GRAM;
      default -> {
        assertThat(measure.dimension()).isEqualTo(Dimension.RATIO);
        yield Unit.PERCENT;
      }
    };
  }

  private static List<RunResult> runs(Study study, Fate fate) {
    List<RunResult> runs = new ArrayList<>();
    for (String build : BUILDS) {
      for (int i = 0; i < BURNS; i++) {
        TestRun run = TestRun.of(study, build + "-" + i);
        double value = 500 + 10 * i + BUILDS.indexOf(build);
        if (build.startsWith("P") || i < 2) {
          runs.add(run.everything(value).result());
        } else {
          run.everythingButABoil(value);
          runs.add(
              (fate == Fate.FAILED ? run.outcome(Outcome.DID_NOT_BOIL) : run.notSeen()).result());
        }
      }
    }
    return runs;
  }

  @ParameterizedTest
  @EnumSource(Measure.class)
  void failuresAreNeverSkipped(Measure measure) {
    if (measure.level() != Level.RUN) {
      return;
    }
    boolean only =
        measure.withoutBoil() == WithoutBoil.WOULD_TAKE_LONGER
            || measure.withoutBoil() == WithoutBoil.HAS_NONE;
    Study study = study(measure);
    List<RunResult> runs = runs(study, Fate.FAILED);
    RunGroup ofQ = RunGroup.of(runs).where(run -> run.build().key().name().startsWith("Q"));
    assertThat(ofQ.hidesFailures(measure)).isEqualTo(only);
    assertThat(ofQ.values(measure)).hasSize(only ? 0 : 2 * BURNS);

    List<BuildResult> builds = BuildSummaries.of(study.builds(), runs, 0.95, new Faults());
    assertThat(builds.get(0).summaries()).containsKey(measure);
    assertThat(builds.get(2).summaries().containsKey(measure)).isEqualTo(!only);
    assertThat(builds.get(2).lacksForFailures(measure)).isEqualTo(only);

    Comparisons.Outcome compared = Comparisons.of(study, runs, 0.95);
    if (only) {
      assertThat(compared.differences())
          .filteredOn(pair -> pair.measure() == measure)
          .allSatisfy(pair -> assertThat(pair.a() + pair.b()).doesNotContain("Q"));
      assertThat(Repeatabilities.of(runs, 0.95).scatter())
          .filteredOn(scatter -> scatter.measure() == measure)
          .allSatisfy(scatter -> assertThat(scatter.builds()).isEqualTo(2));
    }
    boolean ranked = measure.withoutBoil() == WithoutBoil.WOULD_TAKE_LONGER;
    assertThat(compared.ranks())
        .filteredOn(pair -> !ranked)
        .extracting(RankComparison::measure)
        .doesNotContain(measure);

    for (ClaimResult claim : Claims.of(study, runs, List.of(), 0.95).results()) {
      assertThat(claim.measure()).contains(measure);
      assertThat(claim.estimate().isPresent()).as(said(claim)).isEqualTo(!only);
    }
  }

  /** What nobody saw is missing, not failed: means stay, and say of how many they are. */
  @ParameterizedTest
  @EnumSource(Measure.class)
  void whatWasNotSeenIsCountedAndNoFailure(Measure measure) {
    if (measure.level() != Level.RUN) {
      return;
    }
    Study study = study(measure);
    List<RunResult> runs = runs(study, Fate.NOT_SEEN);
    BuildResult build = BuildSummaries.of(study.builds(), runs, 0.95, new Faults()).get(2);
    assertThat(build.boils()).isEqualTo(new BoilCount(2, 0, 2));
    assertThat(build.summaries()).containsKey(measure);
    Summary share = build.summaries().get(Measure.SHARE_THAT_BOILED);
    assertThat(share.n()).isEqualTo(2);
    assertThat(share.mean()).isEqualTo(1);
    assertThat(Comparisons.of(study, runs, 0.95).ranks()).isEmpty();
    boolean only =
        measure.withoutBoil() == WithoutBoil.WOULD_TAKE_LONGER
            || measure.withoutBoil() == WithoutBoil.HAS_NONE;
    for (ClaimResult claim : Claims.of(study, runs, List.of(), 0.95).results()) {
      assertThat(claim.estimate()).isPresent();
      assertThat(said(claim).contains("in 4 more runs nobody saw")).isEqualTo(only);
    }
  }

  private static String said(ClaimResult claim) {
    return claim.reason().map(Message::toString).orElse("");
  }
}
