package fairboil.ingest;

import fairboil.ingest.log.LogOpener;
import java.util.Objects;

/**
 * A study folder, opened: its sheets, and the way to its logs.
 *
 * @param study the sheets
 * @param logs opens the log of each run of the study
 */
public record OpenedStudy(Study study, LogOpener logs) {

  /** Checks that both are there. */
  public OpenedStudy {
    Objects.requireNonNull(study, "study");
    Objects.requireNonNull(logs, "logs");
  }
}
