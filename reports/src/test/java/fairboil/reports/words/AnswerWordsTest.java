package fairboil.reports.words;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.Results;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.reports.Altered;
import fairboil.reports.SampleResults;
import java.util.List;
import org.junit.jupiter.api.Test;

class AnswerWordsTest {

  private final Results sample = SampleResults.typical(DisplayUnits.METRIC);

  @Test
  void theAnswerHasItsIntervalsAndNamesWhatFailed() {
    List<String> answer = AnswerWords.of(sample).answer();
    assertThat(answer).hasSize(4).allSatisfy(sentence -> assertThat(sentence).endsWith("."));
    assertThat(answer.get(0)).contains("normalised peak", "interval", "10 builds");
    assertThat(answer.get(1)).contains("normalised boil time", "interval");
    assertThat(answer.get(2))
        .startsWith("Burns failed, so build S1 (boiled in 3 of 4) and build S4 (boiled in 3 of 4)")
        .contains("net power", "would make a stove look better than it is");
    assertThat(answer.get(3))
        .contains("38 of 39 runs", "10 builds", "boiled in 36", "1 run was left out")
        .contains("1 is supported", "1 is contradicted", "1 is not settled", "1 cannot be tested");
  }

  @Test
  void withoutHolesTheBuildsAreToldInstead() {
    List<String> answer = AnswerWords.of(Altered.holeEffects(sample, List.of())).answer();
    assertThat(answer).hasSize(4);
    assertThat(answer.get(0)).startsWith("Build by build, the mean normalised boil time runs from");
  }

  @Test
  void twoBuildsAreTooFew() {
    assertThat(AnswerWords.of(SampleResults.twoBuilds()).answer().get(0))
        .isEqualTo("2 builds: no line through 2 points can be tested; drill at least 2 more.");
  }

  @Test
  void anEmptyStudySaysSo() {
    assertThat(AnswerWords.of(SampleResults.empty()).answer())
        .containsExactly("There are no runs to stand on.");
  }
}
