package fairboil.reports.cli;

import fairboil.analysis.Results;
import fairboil.analysis.StudyAnalysis;
import fairboil.ingest.OpenedStudy;
import fairboil.ingest.Study;
import fairboil.ingest.log.LogOpener;
import fairboil.ingest.log.OpenedLog;
import fairboil.ingest.sheet.Run;

/** Works a study out while the terminal shows how far it has come. */
final class Analysis {

  private Analysis() {}

  static Results of(OpenedStudy opened) {
    Study study = opened.study();
    try (Progress progress = Progress.of("Runs", study.runs().size())) {
      return StudyAnalysis.of(study, new Counted(opened.logs(), progress));
    }
  }

  /** Shows each log that is opened. */
  private record Counted(LogOpener logs, Progress progress) implements LogOpener {

    @Override
    public OpenedLog open(Run run) {
      progress.step();
      return logs.open(run);
    }

    @Override
    public long bytes(Run run) {
      return logs.bytes(run);
    }
  }
}
