package fairboil.analysis.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.TestRun;
import fairboil.analysis.TestStudy;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

class BuildSummariesTest {

  /**
   * The control group of R's data set PlantGrowth, as if it were peaks: t.test of R 4.2.2 gives the
   * mean 5.032, the interval (4.61488156, 5.44911844) and sd 0.583091378.
   */
  @Test
  void meanAndIntervalAgreeWithR() {
    double[] values = {4.17, 5.58, 5.18, 6.11, 4.50, 4.61, 5.17, 4.53, 5.33, 5.14};
    Summary summary = Summary.of(values, 0.95);
    assertThat(summary.n()).isEqualTo(10);
    assertThat(summary.mean()).isCloseTo(5.032, within(1e-12));
    assertThat(summary.sd().orElseThrow()).isCloseTo(0.583091378, within(1e-9));
    assertThat(summary.interval().orElseThrow().low()).isCloseTo(4.61488156, within(1e-8));
    assertThat(summary.interval().orElseThrow().high()).isCloseTo(5.44911844, within(1e-8));
  }

  @Test
  void oneRunHasAMeanAndNoMore() {
    Summary summary = Summary.of(new double[] {431}, 0.95);
    assertThat(summary.mean()).isEqualTo(431);
    assertThat(summary.sd()).isEmpty();
    assertThat(summary.interval()).isEmpty();
  }

  /** R 4.2.2 binom.test(7, 10): 0.3475471 to 0.9332605. */
  @Test
  void shareHasItsExactInterval() {
    Summary share = BuildSummaries.share(7, 10, 0.95);
    assertThat(share.mean()).isEqualTo(0.7);
    assertThat(share.interval().orElseThrow().low()).isCloseTo(0.3475471, within(1e-7));
    assertThat(share.interval().orElseThrow().high()).isCloseTo(0.9332605, within(1e-7));
    assertThat(BuildSummaries.share(4, 4, 0.95).interval().orElseThrow().high()).isEqualTo(1);
  }

  @Test
  void runsAreCountedAndTimesOfFailuresAreNotAveraged() {
    Study study =
        new TestStudy()
            .build("A", "one")
            .build("B", "one")
            .build("C", "one")
            .run("A-1", "A", row -> row)
            .run("A-2", "A", row -> row)
            .run("A-3", "A", row -> row)
            .run("B-1", "B", row -> row)
            .run("B-2", "B", row -> row)
            .finish();
    List<RunResult> runs =
        List.of(
            TestRun.of(study, "A-1").peak(640).boilTime(400).result(),
            TestRun.of(study, "A-2").peak(650).boilTime(420).result(),
            TestRun.of(study, "A-3").peak(900).boilTime(90).excluded("door left open").result(),
            TestRun.of(study, "B-1").peak(600).boilTime(500).result(),
            TestRun.of(study, "B-2").peak(590).outcome(Outcome.WENT_OUT).result());
    List<BuildResult> builds = BuildSummaries.of(study.builds(), runs, 0.95, new Faults());
    assertThat(builds).extracting(BuildResult::runs).containsExactly(2, 2, 0);
    assertThat(builds).extracting(build -> build.boils().boiled()).containsExactly(2, 1, 0);
    assertThat(builds.get(0).summaries().get(Measure.BOIL_TIME).mean()).isEqualTo(410);
    assertThat(builds.get(0).summaries().get(Measure.NORMALISED_PEAK).mean()).isEqualTo(645);
    assertThat(builds.get(1).summaries())
        .containsKey(Measure.PEAK)
        .doesNotContainKeys(Measure.BOIL_TIME, Measure.NORMALISED_BOIL_TIME);
    assertThat(builds.get(1).summaries().get(Measure.SHARE_THAT_BOILED).mean()).isEqualTo(0.5);
    assertThat(builds.get(2).summaries()).isEmpty();
  }
}
