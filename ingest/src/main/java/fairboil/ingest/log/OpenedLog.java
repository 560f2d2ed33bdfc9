package fairboil.ingest.log;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.grid.SourceFile;
import java.util.List;
import java.util.Optional;

/**
 * What came of opening the log of a run.
 *
 * @param log the log, or empty if the run has none or it could not be read; then a finding says why
 * @param source the file, if there was one that could be read to its end, understood or not
 * @param findings what a reader should know, in order of place; unmodifiable
 */
public record OpenedLog(Optional<Log> log, Optional<SourceFile> source, List<Finding> findings) {

  /** Copies the findings. */
  public OpenedLog {
    findings = List.copyOf(findings);
  }

  /** The same, told from outside the folder that holds the log. */
  public OpenedLog in(String folder) {
    return new OpenedLog(
        log,
        source.map(file -> file.in(folder)),
        findings.stream().map(finding -> finding.in(folder)).toList());
  }
}
