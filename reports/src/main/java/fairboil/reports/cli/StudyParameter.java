package fairboil.reports.cli;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** The study that a command works on. */
final class StudyParameter {

  @Parameters(
      paramLabel = "STUDY",
      description = "Folder of the study: runs.csv, and whatever other sheets and logs there are.")
  private Path folder;

  Path folder() {
    return folder;
  }
}
