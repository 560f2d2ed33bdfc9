package fairboil.analysis.claim;

import fairboil.analysis.run.RunResult;
import fairboil.ingest.sheet.Claim;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.RunsSheet;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Whether a claim was written down before anyone could know how the tests would come out. */
public enum WrittenDown {
  /** Before the first run. */
  BEFORE_THE_TESTS,
  /** On the day of the first run: before or after it is not told. */
  ON_THE_FIRST_DAY,
  /** After the first run. */
  AFTER_SEEING_RESULTS,
  /** A date is missing. */
  NOT_TOLD;

  /**
   * When a claim was written down, by its date and those of all runs.
   *
   * @param runs all runs of the study, counted or not
   */
  public static WrittenDown of(Claim claim, List<RunResult> runs) {
    Optional<LocalDate> written = claim.row().value(ClaimsSheet.WRITTEN_ON);
    Optional<LocalDate> first = firstDay(runs);
    if (written.isEmpty() || first.isEmpty()) {
      return NOT_TOLD;
    }
    if (written.get().isAfter(first.get())) {
      return AFTER_SEEING_RESULTS;
    }
    boolean allDated =
        runs.stream().allMatch(run -> run.run().row().value(RunsSheet.DATE).isPresent());
    if (!allDated) {
      return NOT_TOLD;
    }
    return written.get().equals(first.get()) ? ON_THE_FIRST_DAY : BEFORE_THE_TESTS;
  }

  /** The day of the first run of those whose day is told. */
  public static Optional<LocalDate> firstDay(List<RunResult> runs) {
    return runs.stream()
        .flatMap(run -> run.run().row().value(RunsSheet.DATE).stream())
        .min(Comparator.naturalOrder());
  }
}
