package fairboil.demo;

import fairboil.analysis.Results;
import fairboil.analysis.StudyAnalysis;
import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.OpenedStudy;
import fairboil.ingest.StudyException;
import fairboil.ingest.StudyReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;

/** A study read and worked out from end to end, as a report would. */
final class StudyRun {

  private final Results results;

  private StudyRun(Results results) {
    this.results = results;
  }

  /** Works out the study in a folder. */
  static StudyRun of(Path folder) throws StudyException {
    OpenedStudy opened = StudyReader.open(folder);
    return new StudyRun(StudyAnalysis.of(opened.study(), opened.logs()));
  }

  /** Writes a study into a folder and works it out. */
  static StudyRun of(Path folder, Map<String, String> files) throws IOException, StudyException {
    StudyFiles.write(folder, files);
    return of(folder);
  }

  /** Everything. */
  Results results() {
    return results;
  }

  /** The result of a run. */
  RunResult run(String name) {
    return results.runs().stream()
        .filter(run -> run.run().key().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** The hole effect of the upper ring on the normalised peak. */
  HoleEffect holeEffect() {
    return results.holeEffects().stream()
        .filter(effect -> effect.response() == Measure.NORMALISED_PEAK)
        .filter(effect -> effect.ring().equals("upper"))
        .findFirst()
        .orElseThrow();
  }

  /** The slope by a model. */
  EffectRow slope(EffectRow.Model model) {
    return holeEffect().rows().stream()
        .filter(row -> row.model() == model && row.term().equals(EffectRow.HOLE_ERROR))
        .findFirst()
        .orElseThrow();
  }
}
