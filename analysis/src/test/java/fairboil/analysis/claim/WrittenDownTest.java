package fairboil.analysis.claim;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.TestRun;
import fairboil.analysis.TestStudy;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.RunsSheet;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WrittenDownTest {

  private static final LocalDate FIRST = LocalDate.of(2025, 3, 1);

  private static WrittenDown written(Optional<LocalDate> on, boolean allDated) {
    Study study =
        new TestStudy()
            .build("A", "one")
            .run("A-1", "A", row -> row.put(RunsSheet.DATE, FIRST.plusDays(9)))
            .run("A-2", "A", row -> row.put(RunsSheet.DATE, FIRST))
            .run("A-3", "A", row -> allDated ? row.put(RunsSheet.DATE, FIRST) : row)
            .claim("c", row -> on.map(day -> row.put(ClaimsSheet.WRITTEN_ON, day)).orElse(row))
            .finish();
    List<RunResult> runs =
        study.runs().stream().map(run -> TestRun.of(study, run.key().name()).result()).toList();
    return WrittenDown.of(study.claims().get(0), runs);
  }

  @Test
  void beforeAndAfterTheFirstRun() {
    assertThat(written(Optional.of(FIRST.minusDays(1)), true))
        .isEqualTo(WrittenDown.BEFORE_THE_TESTS);
    assertThat(written(Optional.of(FIRST), true)).isEqualTo(WrittenDown.ON_THE_FIRST_DAY);
    assertThat(written(Optional.of(FIRST.plusDays(1)), true))
        .isEqualTo(WrittenDown.AFTER_SEEING_RESULTS);
  }

  @Test
  void withoutDatesNothingIsShown() {
    assertThat(written(Optional.empty(), true)).isEqualTo(WrittenDown.NOT_TOLD);
    assertThat(written(Optional.of(FIRST.minusDays(1)), false)).isEqualTo(WrittenDown.NOT_TOLD);
    // one run before it is enough to know
    assertThat(written(Optional.of(FIRST.plusDays(1)), false))
        .isEqualTo(WrittenDown.AFTER_SEEING_RESULTS);
  }
}
