package fairboil.reports.cli;

import fairboil.analysis.Results;
import fairboil.analysis.StudyAnalysis;
import fairboil.ingest.OpenedStudy;
import fairboil.ingest.Study;

/** Works a study out while the terminal shows how far it has come. */
final class Analysis {

  private Analysis() {}

  static Results of(OpenedStudy opened) {
    Study study = opened.study();
    try (Progress progress = Progress.of("Runs", study.runs().size())) {
      return StudyAnalysis.of(
          study,
          run -> {
            progress.step();
            return opened.logs().open(run);
          });
    }
  }
}
