package fairboil.reports;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.Results;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.Summary;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.choice.DisplayUnits;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SampleResultsTest {

  @Test
  void theTypicalSampleHasWhatReportsMustShow() {
    Results results = SampleResults.typical(DisplayUnits.METRIC);

    assertThat(results.builds()).hasSize(10);
    assertThat(results.runs()).hasSize(39);
    assertThat(results.holeEffects()).hasSize(6).allMatch(effect -> effect.headline().isPresent());
    assertThat(results.runs()).filteredOn(run -> run.sketch().curves().isEmpty()).hasSize(1);
    assertThat(results.runs()).filteredOn(run -> !run.inclusion().included()).hasSize(1);
    assertThat(results.runs()).filteredOn(run -> !run.boiled()).hasSize(2);
  }

  @Test
  void oneSampleIsLikeTheNext() {
    assertThat(summaries(SampleResults.twoBuilds()))
        .isEqualTo(summaries(SampleResults.twoBuilds()));
    assertThat(SampleResults.empty().runs()).isEmpty();
  }

  private static List<Map<Measure, Summary>> summaries(Results results) {
    return results.builds().stream().map(BuildResult::summaries).toList();
  }
}
