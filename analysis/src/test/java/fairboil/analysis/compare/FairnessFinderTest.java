package fairboil.analysis.compare;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.TestRun;
import fairboil.analysis.TestStudy;
import fairboil.analysis.compare.Fairness.Tied;
import fairboil.ingest.Study;
import fairboil.ingest.sheet.RunsSheet;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Invented stoves of three towns, two burns each. */
class FairnessFinderTest {

  private static final int BUILDS = 3;

  private static Fairness of(IntFunction<String> site, IntFunction<String> tester) {
    TestStudy sheets = new TestStudy();
    IntStream.range(0, BUILDS).forEach(build -> sheets.build("B" + build, "plain"));
    for (int run = 0; run < 2 * BUILDS; run++) {
      int each = run;
      sheets.run(
          "R" + run,
          "B" + run / 2,
          row ->
              row.put(RunsSheet.SITE, site.apply(each)).put(RunsSheet.TESTER, tester.apply(each)));
    }
    Study study = sheets.finish();
    return FairnessFinder.of(
        study,
        IntStream.range(0, 2 * BUILDS)
            .mapToObj(run -> TestRun.of(study, "R" + run).boilTime(400).ambient(15).result())
            .toList());
  }

  @Test
  void buildsWithSitesOfTheirOwnAreTiedToThem() {
    assertThat(of(run -> "town " + run / 2, run -> run % 2 == 0 ? "Ida" : "Jon").tied())
        .containsExactly(new Tied(Comparison.BUILD, "site"));
  }

  @Test
  void oneValueInCommonUnties() {
    assertThat(of(run -> "town " + (run + 1) / 2, run -> "Ida").tied()).isEmpty();
  }
}
