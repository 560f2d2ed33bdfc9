package fairboil.ingest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.finding.Voice;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the cases of {@link StudyCasesTest} cannot show: bytes, other files than text, size. */
class StudyReaderTest {

  private static final String RUNS = "run,build,ambient (°C)\nK1-1,K1,20\nK1-2,K1,21.5\n";

  @TempDir Path temp;
  private Path folder;

  @BeforeEach
  void makeFolder() throws IOException {
    folder = Files.createDirectories(temp.resolve("burns"));
  }

  private Study read() throws StudyException {
    return StudyReader.open(folder).study();
  }

  private void write(String name, String text) throws IOException {
    Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
  }

  private static List<String> errors(Study study) {
    return study.findings().stream()
        .filter(finding -> finding.severity() == Severity.ERROR)
        .map(Finding::toString)
        .toList();
  }

  @Test
  void whoWritesFahrenheitIsToldHowToReadIt() throws IOException, StudyException {
    write("runs.csv", "run,build,ambient (°F)\nK1-1,K1,68\nK1-2,K1,71.5\n");
    assertThat(read().findings())
        .anySatisfy(
            note ->
                assertThat(note.mend().orElseThrow().texts(Voice.RAW))
                    .containsEntry("setting", "show units")
                    .containsEntry("value", "US"));

    write("study.csv", "setting,value\nshow units,metric\n");
    assertThat(read().findings()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"UTF-8", "UTF-16", "UTF-16LE", "UTF-16BE", "windows-1252"})
  void theEncodingDoesNotMatter(String charset) throws Exception {
    Files.write(folder.resolve("runs.csv"), RUNS.getBytes(Charset.forName(charset)));

    Study study = read();

    assertThat(study.runs()).extracting(Run::key).extracting(Key::name).contains("K1-1", "K1-2");
    assertThat(study.runs().get(1).row().value(RunsSheet.AMBIENT).orElseThrow().value())
        .isEqualTo(21.5);
    assertThat(errors(study)).isEmpty();
  }

  @Test
  void namesTheStudyAfterItsFolderAndTakesFingerprints() throws Exception {
    write("runs.csv", RUNS);
    write("builds.csv", "build\nK1\n");

    Study study = read();

    assertThat(study.name()).isEqualTo("burns");
    assertThat(study.sources())
        .extracting("name")
        .containsExactlyInAnyOrder("runs.csv", "builds.csv");
    assertThat(study.sources()).allSatisfy(source -> assertThat(source.sha256()).hasSize(64));
  }

  @Test
  void aFolderThatIsNotThereIsAStudyThatCannotBeRead() {
    assertThatThrownBy(() -> StudyReader.open(temp.resolve("nowhere")))
        .isInstanceOf(StudyException.class)
        .hasMessageContaining("there is no such folder");
  }

  @Test
  void runsThatAreAWorkbookAreSaidSo() throws IOException {
    Files.write(folder.resolve("runs.csv"), new byte[] {'P', 'K', 3, 4, 20, 0});
    assertThatThrownBy(this::read)
        .isInstanceOf(StudyException.class)
        .hasMessageContaining("this is a spreadsheet workbook, not CSV");
  }

  @Test
  void anotherSheetThatCannotBeReadIsAFindingOnly() throws Exception {
    write("runs.csv", RUNS);
    Files.write(
        folder.resolve("pots.csv"), new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0});
    Files.writeString(temp.resolve("outside.csv"), "claim,text\n");
    Files.createSymbolicLink(folder.resolve("claims.csv"), temp.resolve("outside.csv"));

    Study study = read();

    assertThat(study.runs()).hasSize(2);
    assertThat(errors(study))
        .anyMatch(error -> error.startsWith("pots.csv: error: this is a spreadsheet workbook"))
        .anyMatch(error -> error.startsWith("claims.csv: error: this path leads out"));
  }

  @Test
  void aPipeInPlaceOfASheetDoesNotHang() throws Exception {
    write("runs.csv", RUNS);
    Process mkfifo = new ProcessBuilder("mkfifo", folder.resolve("holes.csv").toString()).start();
    Assumptions.assumeTrue(mkfifo.waitFor(10, TimeUnit.SECONDS) && mkfifo.exitValue() == 0);

    Study study = Assertions.assertTimeoutPreemptively(Duration.ofSeconds(10), this::read);

    assertThat(errors(study)).anyMatch(error -> error.contains("a pipe or a device"));
  }

  @Test
  void findsThingsByKey() throws Exception {
    write("runs.csv", RUNS);
    write("pots.csv", "pot,mass\nbilly,240 g\n");
    write("stopwatch.csv", "run,event,time\nK1-1,lit,0:00\nK1-2,lit,0:00\nK1-1,boil,5:00\n");

    Study study = read();

    assertThat(study.build(new Key("burns", "K1"))).isPresent();
    assertThat(study.build(new Key("other", "K1"))).isEmpty();
    assertThat(study.pot(new Key("burns", "billy"))).isPresent();
    assertThat(study.marksOf(new Key("burns", "K1-1"))).hasSize(2);
    assertThat(study.marksOf(new Key("burns", "K9"))).isEmpty();
  }

  /** A sheet of nothing but faults stays readable for a person. */
  @Test
  void tenThousandFaultsAreAHandfulOfFindings() throws Exception {
    StringBuilder runs = new StringBuilder("run,build,water\n");
    for (int i = 0; i < 10_000; i++) {
      runs.append('R').append(i).append(",A,").append(i + 1).append('\n');
    }
    write("runs.csv", runs.toString());

    Study study = read();

    assertThat(study.runs()).hasSize(10_000);
    assertThat(study.findings()).hasSize(6);
    assertThat(study.findings().get(5).problem().toString())
        .startsWith("likewise on 9995 more lines (7, 8,");
  }

  @Test
  void aSheetWithTooManyRowsIsReadUpToTheLimit() throws Exception {
    write("runs.csv", RUNS);
    write("holes.csv", "build,ring,hole\n" + "K1,upper,1\n".repeat(100_001));

    assertThat(errors(read()))
        .anyMatch(error -> error.contains("line 100001: error: reading ended here"));
  }

  /** Ample time for a slow machine; where this takes a second, something is quadratic. */
  @Test
  void aLargeStudyIsReadInNoTime() throws Exception {
    writeLargeStudy();
    Study study = Assertions.assertTimeout(Duration.ofSeconds(10), this::read);
    assertThat(study.runs()).hasSize(1_000);
    assertThat(study.marks()).hasSize(10_000);
    assertThat(study.holes()).hasSize(10_000);
    assertThat(study.findings()).isEmpty();
  }

  private void writeLargeStudy() throws IOException {
    StringBuilder runs = new StringBuilder("run,build,ambient (°C),water (g)\n");
    StringBuilder marks = new StringBuilder("run,event,time\n");
    StringBuilder holes = new StringBuilder("build,ring,hole,along (mm),height (mm)\n");
    for (int run = 0; run < 1_000; run++) {
      runs.append("R").append(run).append(",B").append(run % 100).append(",20.5,500\n");
      for (int mark = 0; mark < 10; mark++) {
        marks.append("R").append(run).append(",refuelled,").append(mark).append(":30\n");
      }
    }
    for (int hole = 0; hole < 10_000; hole++) {
      holes.append("B").append(hole / 100).append(",upper,").append(hole % 100 + 1);
      holes.append(",").append(hole % 100).append(".5,15.0\n");
    }
    write("runs.csv", runs.toString());
    write("stopwatch.csv", marks.toString());
    write("holes.csv", holes.toString());
    write("rings.csv", "ring,holes\nupper,100\n");
  }

  /** Patterns that try again and again on such cells would take minutes. */
  @ParameterizedTest
  @ValueSource(strings = {"9 ", "  ", "1/2 ", "(", "a ", "1,", "1 lb ", "may ", "x=;", "5'", "_ "})
  void cellsOfTheGreatestLengthCostNoTime(String part) throws Exception {
    String cell = "\"" + part.repeat(65_000 / part.length()) + "x\"";
    String names = String.join(",", RunsSheet.SCHEMA.columns().stream().map(Column::name).toList());
    int count = RunsSheet.SCHEMA.columns().size();
    write("study.csv", "setting,value\n" + cell + "," + cell + "\ncompare by," + cell + "\n");
    write("stopwatch.csv", "run,event,time\n1,boil," + cell + "\n1," + cell + ",5:00\n");
    String row = (cell + ",").repeat(14) + ",".repeat(count - 14);
    write("runs.csv", names + "," + cell + "\n" + row + "\n");

    Study study = Assertions.assertTimeout(Duration.ofSeconds(20), this::read);

    assertThat(study.findings()).isNotEmpty();
  }

  /** Whatever is done to a study's bytes: findings, or one sentence; no other exception. */
  @Test
  void mutatedSheetsGiveFindingsOnly() throws Exception {
    Random random = new Random(7);
    String[] names = {"runs.csv", "stopwatch.csv", "holes.csv", "study.csv", "rings.csv"};
    String[] texts = {
      """
      run,build,date,lit at,ambient (°C),water,pot,wind,lid
      1,A,2026-03-14,14:05,20,24 fl oz,240 g,B1,on
      2,"A, b",,,,1 lb 4 oz,,3 m/s,off
      """,
      "run,lit,pot on,boil\n1,0:00,1:30,9:40\n2,0:00,1:20,10:05\n",
      "build,ring,hole,along,height\nA,upper,1,13 3/16\",15 mm\nA,upper,2,20 mm,15 mm\n",
      "setting,value\naltitude,\"5,280 ft\"\ncompare by,lid\n",
      "ring,holes,skipped,wrap\nupper,16,4; 12,314 mm\n"
    };
    for (int i = 0; i < 400; i++) {
      for (int file = 0; file < names.length; file++) {
        byte[] bytes = texts[file].getBytes(StandardCharsets.UTF_8);
        Files.write(folder.resolve(names[file]), mutated(bytes, random));
      }
      try {
        Study study = read();
        assertThat(study.runs()).allSatisfy(run -> assertThat(rowOf(run)).isNotNull());
      } catch (StudyException e) {
        assertThat(e.getMessage()).isNotBlank();
      }
    }
  }

  private static Row rowOf(Run run) {
    return run.row();
  }

  private static byte[] mutated(byte[] bytes, Random random) {
    byte[] changed = bytes.clone();
    int changes = random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      int at = random.nextInt(changed.length);
      byte[] likely = {',', '"', '\n', '\r', ';', '\t', '#', 0, (byte) 0xC3, '-', '=', '.', ' '};
      changed[at] =
          random.nextBoolean() ? likely[random.nextInt(likely.length)] : (byte) random.nextInt();
    }
    return random.nextInt(5) == 0
        ? java.util.Arrays.copyOf(changed, random.nextInt(changed.length))
        : changed;
  }
}
