package fairboil.reports.template;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.Study;
import fairboil.ingest.StudyException;
import fairboil.ingest.StudyReader;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import fairboil.ingest.sheet.SheetSchema;
import fairboil.reports.words.Cautions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudyTemplateTest {

  @TempDir private Path folder;

  @Test
  void holdsEverySheetAndAGuide() {
    assertThat(StudyTemplate.files())
        .containsKey(StudyTemplate.GUIDE)
        .containsKeys(StudyReader.SHEETS.stream().map(SheetSchema::file).toArray(String[]::new));
  }

  @Test
  void unfilledItHasNoRunAndNoOtherFault() throws Exception {
    Study study = read(StudyTemplate.files());
    assertThat(study.runs()).isEmpty();
    assertThat(study.findings())
        .singleElement()
        .satisfies(
            finding ->
                assertThat(finding.problem().toString())
                    .isEqualTo("there are no burns in runs.csv yet"));
  }

  /** The example of each column is one that the column itself can read. */
  @Test
  void everyExampleReadsAsItsColumnMeansIt() throws Exception {
    for (Map.Entry<String, String> file : StudyTemplate.files().entrySet()) {
      String text = file.getValue();
      boolean isSettings = file.getKey().equals(Settings.SCHEMA.file());
      Files.writeString(
          folder.resolve(file.getKey()), isSettings ? settings() : text.replace("\n# ", "\n"));
    }
    Study study = StudyReader.open(folder).study();
    assertThat(study.findings())
        .filteredOn(finding -> finding.severity() == Severity.ERROR)
        .filteredOn(finding -> finding.place().line().isPresent())
        .extracting(Object::toString)
        .noneMatch(text -> text.contains("has no unit") || text.contains("is not a"));
    assertThat(study.settings().value(Settings.HOLE_RING)).contains("upper");
    assertThat(study.runs())
        .singleElement()
        .satisfies(
            run -> {
              for (Column<?> column : RunsSheet.SCHEMA.columns()) {
                assertThat(run.row().value(column)).as(column.name()).isPresent();
              }
            });
  }

  @Test
  void theGuideHoldsEveryCautionAndTheRule() {
    String guide = StudyTemplate.files().get(StudyTemplate.GUIDE);
    assertThat(guide).contains(Cautions.RULE);
    Cautions.POINTS.forEach(point -> assertThat(guide).contains(point.text()));
  }

  private static String settings() {
    StringBuilder text = new StringBuilder("setting,value\n");
    for (Column<?> setting : Settings.SCHEMA.columns()) {
      text.append(setting.name()).append(",\"").append(setting.example()).append("\"\n");
    }
    return text.toString();
  }

  private Study read(Map<String, String> files) throws IOException, StudyException {
    for (Map.Entry<String, String> file : files.entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue());
    }
    return StudyReader.open(folder).study();
  }
}
