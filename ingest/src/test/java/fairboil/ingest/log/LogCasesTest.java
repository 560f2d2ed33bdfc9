package fairboil.ingest.log;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.Sensor;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Odd logs, one for each trait, with what is to come of them. A case is a folder of {@code
 * src/test/resources/fairboil/ingest/log/cases}, found by scanning: {@code log.csv} is the log, all
 * of our invention, as bytes; {@code expected.txt} what is to come of it, first line the trait;
 * {@code sensors.txt}, where there is one, rows of sensors.csv; {@code run.txt} {@code log from}
 * and {@code log to}. To add a case, add such a folder: run with {@code -Dfairboil.cases=write} to
 * have what came of it written to {@code expected.txt}, and read that before you keep it.
 */
class LogCasesTest {

  private static final String CASES = "fairboil/ingest/log/cases";

  @TestFactory
  Stream<DynamicTest> cases() throws IOException, URISyntaxException {
    URI here = LogCasesTest.class.getClassLoader().getResource(CASES).toURI();
    try (Stream<Path> folders = Files.list(Path.of(here))) {
      return folders.filter(Files::isDirectory).sorted().toList().stream()
          .map(
              folder ->
                  DynamicTest.dynamicTest(folder.getFileName().toString(), () -> check(folder)));
    }
  }

  private static void check(Path folder) throws IOException {
    OpenedLog opened = open(folder);
    Path file = folder.resolve("expected.txt");
    List<String> lines = Files.exists(file) ? Files.readAllLines(file) : List.of("?");
    String actual = lines.get(0) + "\n" + LogText.of(opened);
    if ("write".equals(System.getProperty("fairboil.cases"))) {
      Files.writeString(source(folder).resolve("expected.txt"), actual);
      Assumptions.abort("written, not compared");
    }
    assertThat(actual).isEqualTo(Files.readString(file, StandardCharsets.UTF_8));
  }

  private static Path source(Path folder) {
    return Path.of("src/test/resources", CASES).resolve(folder.getFileName());
  }

  private static OpenedLog open(Path folder) throws IOException {
    List<Sensor> sensors = Runs.sensors(lines(folder.resolve("sensors.txt")));
    Map<String, String> cells = new TreeMap<>();
    for (String line : lines(folder.resolve("run.txt"))) {
      int equals = line.indexOf('=');
      cells.put(line.substring(0, equals).strip(), line.substring(equals + 1).strip());
    }
    Run run = Runs.of("log.csv", cells);
    return new LogReader(StudyFolder.at(folder), Runs.STUDY, sensors).open(run);
  }

  private static List<String> lines(Path file) throws IOException {
    return Files.exists(file) ? Files.readAllLines(file) : List.of();
  }
}
