package fairboil.ingest;

import fairboil.ingest.grid.InputOpener;
import fairboil.ingest.log.LogOpener;
import java.util.Objects;

/**
 * A study folder, opened: its sheets, and the ways to its logs and to the bytes of its files.
 *
 * @param study the sheets
 * @param logs opens the log of each run of the study
 * @param inputs opens the files that were read once more, to pass them on as they are
 */
public record OpenedStudy(Study study, LogOpener logs, InputOpener inputs) {

  /** Checks that all are there. */
  public OpenedStudy {
    Objects.requireNonNull(study, "study");
    Objects.requireNonNull(logs, "logs");
    Objects.requireNonNull(inputs, "inputs");
  }
}
