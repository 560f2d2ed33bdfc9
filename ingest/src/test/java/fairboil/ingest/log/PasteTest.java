package fairboil.ingest.log;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.OpenedStudy;
import fairboil.ingest.StudyException;
import fairboil.ingest.StudyReader;
import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.CellFix;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Fix;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.finding.Voice;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A person who only follows the messages gets a log: the rows that findings offer are pasted into
 * the sheets as they are, what they leave open is filled in, and the study is read again, with the
 * sheets' own reader.
 */
class PasteTest {

  private static final String CASES = "/fairboil/ingest/log/cases/";

  @TempDir private Path study;

  @ParameterizedTest
  @CsvSource({
    "unit-unstated, , FLAME",
    "unit-fahrenheit-unstated, , WATER",
    "unit-kelvin-unstated, , WATER",
    "unit-thousandths, , FLAME",
    "shape-several-channels, , WATER",
    "shape-no-header, s, FLAME",
    "shape-duplicate-names, , FLAME",
    "shape-runs-appended, , FLAME",
    "shape-long-form, , FLAME",
    "time-elapsed-unstated, s, FLAME",
    "time-elapsed-unstated-unclear, s, FLAME",
    "time-hmm-or-mss, h:mm, FLAME",
    "time-mss-mmm-unclear, , FLAME",
    "time-hole-of-hours, , FLAME",
    "role-two-flames, , FLAME"
  })
  void followingTheMessagesGivesALog(String name, String timeUnit, Role role)
      throws IOException, StudyException, URISyntaxException {
    copy(name);
    Map<String, String> run = run();
    List<Map<String, String>> sensors = new ArrayList<>();
    OpenedLog opened = open(run, sensors);
    assertThat(opened.findings()).anyMatch(finding -> finding.severity() == Severity.ERROR);
    for (int round = 0; round < 4 && needsMending(opened); round++) {
      follow(run, sensors, timeUnit);
      opened = open(run, sensors);
    }
    OpenedLog last = opened;
    assertThat(last.log()).as(() -> last.findings() + " " + sensors).isPresent();
    assertThat(last.log().orElseThrow().channel(role)).as(() -> last.findings() + "").isPresent();
    assertThat(last.findings()).noneMatch(finding -> finding.severity() == Severity.ERROR);
  }

  // The row that is there has the role; a second one would not be heeded.
  @Test
  void followingTheMessagesFillsInTheRowThatIsThere()
      throws IOException, StudyException, URISyntaxException {
    copy("unit-unstated");
    Map<String, String> run = run();
    List<Map<String, String>> sensors = new ArrayList<>();
    sensors.add(new LinkedHashMap<>(Map.of("column", "flame", "role", "flame")));
    follow(run, sensors, "");
    OpenedLog opened = open(run, sensors);
    assertThat(opened.log()).as(() -> opened.findings() + " " + sensors).isPresent();
    assertThat(sensors).hasSize(2);
  }

  private void copy(String name) throws IOException, URISyntaxException {
    Files.copy(
        Path.of(PasteTest.class.getResource(CASES + name + "/log.csv").toURI()),
        study.resolve("log.csv"));
  }

  private static Map<String, String> run() {
    Map<String, String> run = new LinkedHashMap<>();
    run.put("run", "A-1");
    run.put("build", "A");
    run.put("log", "log.csv");
    return run;
  }

  private void follow(Map<String, String> run, List<Map<String, String>> sensors, String timeUnit)
      throws IOException, StudyException {
    for (Finding finding : open(run, sensors).findings()) {
      finding.mend().ifPresent(row -> paste(row, timeUnit, run, sensors));
    }
  }

  private static boolean needsMending(OpenedLog opened) {
    return opened.findings().stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
  }

  private static void paste(
      Fix row, String timeUnit, Map<String, String> run, List<Map<String, String>> sensors) {
    Map<String, String> cells = new LinkedHashMap<>(row.texts(Voice.RAW));
    if (row.sheet().equals("runs.csv")) {
      run.putAll(cells);
      return;
    }
    if (cells.getOrDefault("unit", "x").isEmpty()) {
      cells.put("unit", "time".equals(cells.get("role")) ? timeUnit : "°C");
    }
    if (row instanceof CellFix fix) {
      sensors.get(fix.row().line().orElseThrow() - 2).putAll(cells);
    } else if (!sensors.contains(cells)) {
      sensors.add(cells);
    }
  }

  private OpenedLog open(Map<String, String> run, List<Map<String, String>> sensors)
      throws IOException, StudyException {
    Files.writeString(study.resolve("runs.csv"), sheet(List.of(run)));
    if (!sensors.isEmpty()) {
      Files.writeString(study.resolve("sensors.csv"), sheet(sensors));
    }
    OpenedStudy opened = StudyReader.open(study);
    assertThat(opened.study().findings())
        .noneMatch(finding -> finding.severity() == Severity.ERROR);
    return opened.logs().open(opened.study().runs().get(0));
  }

  private static String sheet(List<Map<String, String>> rows) {
    Set<String> columns = new LinkedHashSet<>();
    rows.forEach(row -> columns.addAll(row.keySet()));
    return String.join(",", columns)
        + "\n"
        + rows.stream().map(row -> line(columns, row)).collect(Collectors.joining("\n", "", "\n"));
  }

  private static String line(Set<String> columns, Map<String, String> row) {
    return columns.stream()
        .map(column -> row.getOrDefault(column, ""))
        .map(cell -> cell.indexOf(',') >= 0 ? '"' + cell + '"' : cell)
        .collect(Collectors.joining(","));
  }
}
