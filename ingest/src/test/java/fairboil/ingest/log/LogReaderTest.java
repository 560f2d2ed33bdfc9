package fairboil.ingest.log;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.grid.UnreadableException;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of files that no logger writes, and of the reader's promises. */
class LogReaderTest {

  private static final String HEADER = "time (s),flame (°C),water (°C)\n";

  @TempDir private Path folder;

  private OpenedLog open(String log) throws UnreadableException {
    return new LogReader(StudyFolder.at(folder), Runs.STUDY, List.of()).open(Runs.of(log));
  }

  private OpenedLog openWritten(String text) throws IOException {
    Files.writeString(folder.resolve("log.csv"), text);
    return open("log.csv");
  }

  private static void assertRefused(OpenedLog opened, String... words) {
    assertThat(opened.log()).isEmpty();
    List<Finding> errors =
        opened.findings().stream().filter(f -> f.severity() == Severity.ERROR).toList();
    assertThat(errors).hasSize(1);
    assertThat(errors.get(0).toString()).contains(words);
    assertThat(errors.get(0).remedy().toString()).isNotBlank();
  }

  private static String rows(int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> i + "," + (600 + i % 7) + ".5," + (20 + i * 0.25) + "\n")
        .collect(Collectors.joining());
  }

  @Test
  void readsTheDefaultLogOfARun() throws IOException {
    Files.createDirectory(folder.resolve("logs"));
    Files.writeString(folder.resolve("logs/A-1.csv"), HEADER + rows(5));
    OpenedLog opened = open("");
    assertThat(opened.findings()).isEmpty();
    assertThat(opened.log().orElseThrow().time().size()).isEqualTo(5);
    assertThat(opened.source().orElseThrow().name()).isEqualTo("logs/A-1.csv");
  }

  @Test
  void takesARunWithoutALogAsItIs() throws IOException {
    OpenedLog opened = open("");
    assertThat(opened.log()).isEmpty();
    assertThat(opened.findings()).isEmpty();
  }

  @Test
  void refusesALogThatIsNotThere() throws IOException {
    assertRefused(open("logs/nowhere.csv"), "runs.csv, line 2, column log", "nowhere.csv");
  }

  @Test
  void refusesAPathThatLeavesTheStudy() throws IOException {
    assertRefused(open("../other/log.csv"), "runs.csv, line 2, column log", "out of the study");
    assertRefused(open("/etc/hostname"), "runs.csv, line 2, column log");
  }

  @Test
  void refusesAFolder() throws IOException {
    Files.createDirectory(folder.resolve("logs"));
    assertRefused(open("logs"), "folder");
  }

  @Test
  @Timeout(20)
  void refusesAPipe() throws IOException, InterruptedException {
    Path pipe = folder.resolve("pipe.csv");
    Process process;
    try {
      process = new ProcessBuilder("mkfifo", pipe.toString()).start();
    } catch (IOException e) {
      Assumptions.abort("no mkfifo here");
      return;
    }
    assertThat(process.waitFor(10, TimeUnit.SECONDS)).isTrue();
    assertRefused(open("pipe.csv"), "pipe");
  }

  @Test
  void refusesAFileAbove200Megabytes() throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(folder.resolve("log.csv").toFile(), "rw")) {
      file.setLength(200_000_001);
    }
    assertRefused(open("log.csv"), "200 MB");
  }

  @Test
  void refusesALineAboveOneMebibyte() throws IOException {
    assertRefused(openWritten(HEADER + rows(5) + "7".repeat(1 << 21) + "\n"), "1 MiB", "line 7");
  }

  @Test
  void refusesMoreThanAThousandColumns() throws IOException {
    assertRefused(openWritten("a,".repeat(1500) + "\n" + "1,".repeat(1500)), "1,000");
  }

  @Test
  void refusesMoreThanFiveMillionReadings() throws IOException {
    try (BufferedWriter out =
        Files.newBufferedWriter(folder.resolve("log.csv"), StandardCharsets.UTF_8)) {
      out.write("time (s),water (°C)\n");
      for (int i = 0; i <= 5_000_000; i++) {
        out.write(Integer.toString(i));
        out.write(",20\n");
      }
    }
    assertRefused(open("log.csv"), "5 million", "line 5000002");
  }

  @Test
  void namesTheFileEvenIfItIsNotUnderstood() throws IOException {
    OpenedLog opened = openWritten("time (s),flame\n0,600\n1,601\n2,602\n");
    assertThat(opened.log()).isEmpty();
    assertThat(opened.source()).isPresent();
  }

  // SHA-256 of "abc": FIPS 180-2, appendix B.1.
  @Test
  void givesTheFingerprintOfTheFile() throws IOException {
    assertThat(openWritten("abc").source().orElseThrow().sha256())
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }

  @Test
  void heedsTheSensorsOfItsStudyOnly() throws IOException {
    Files.writeString(folder.resolve("log.csv"), "time (s),T1 (°C)\n0,600\n1,601\n2,602\n");
    LogReader other =
        new LogReader(
            StudyFolder.at(folder), "other", Runs.sensors(List.of("column=T1; role=flame")));
    LogReader own =
        new LogReader(
            StudyFolder.at(folder), Runs.STUDY, Runs.sensors(List.of("column=T1; role=flame")));
    assertThat(other.open(Runs.of("log.csv")).log()).isEmpty();
    assertThat(own.open(Runs.of("log.csv")).log()).isPresent();
  }

  @Test
  void readsTheSameFromSeveralThreads() throws IOException {
    Files.writeString(folder.resolve("log.csv"), HEADER + rows(3000));
    LogReader reader = new LogReader(StudyFolder.at(folder), Runs.STUDY, List.of());
    String alone = LogText.of(reader.open(Runs.of("log.csv")));
    List<String> together =
        IntStream.range(0, 64)
            .parallel()
            .mapToObj(i -> LogText.of(reader.open(Runs.of("log.csv"))))
            .toList();
    assertThat(together).containsOnly(alone);
  }

  // Whatever is far behind what was read ahead is read by the same rules.
  @Test
  void findsWhatIsWrongFarDownALongLog() throws IOException {
    String text = HEADER + rows(150_000) + "boil\n150000,OL,99.9\n150001,601.0,99.9,7\n";
    OpenedLog opened = openWritten(text + "150002,602.0,99.9\nEnd of file\n");
    Log log = opened.log().orElseThrow();
    assertThat(log.time().size()).isEqualTo(150_002);
    assertThat(log.rows().setAside(RowFate.RAGGED)).isEqualTo(1);
    assertThat(log.rows().setAside(RowFate.NO_TIME)).isEqualTo(1);
    assertThat(log.rows().setAside(RowFate.FOOTER)).isEqualTo(1);
    assertThat(log.channels().get(0).faults()).isEqualTo(1);
    assertThat(opened.findings())
        .extracting(finding -> finding.place().line())
        .contains(
            java.util.OptionalInt.of(150_002),
            java.util.OptionalInt.of(150_004),
            java.util.OptionalInt.of(150_006));
  }

  @Test
  void givesNoStackTraceForAFileThatIsTakenAway() throws IOException {
    Optional<Log> log = open("gone.csv").log();
    assertThat(log).isEmpty();
  }
}
