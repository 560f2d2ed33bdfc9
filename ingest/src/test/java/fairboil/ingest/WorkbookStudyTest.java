package fairboil.ingest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.log.Log;
import fairboil.ingest.log.OpenedLog;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Studies whose sheets are the tabs of a workbook, written by Apache POI. */
class WorkbookStudyTest {

  private static final Path DEMO = Path.of("../data-demo");
  private static final String READ_AS_TABS =
      "study.xlsx: note: the sheets were read from the tabs of this workbook.";

  @TempDir Path temp;
  private Path folder;
  private XSSFWorkbook book;

  @BeforeEach
  void makeFolder() throws IOException {
    folder = Files.createDirectories(temp.resolve("burns"));
    book = new XSSFWorkbook();
  }

  /** A tab of cells: what starts with = is a number and its format, parted by a blank. */
  private void tab(String name, String... rows) {
    var sheet = book.createSheet(name);
    for (String row : rows) {
      Row line = sheet.createRow(sheet.getPhysicalNumberOfRows());
      for (String text : row.split("\\|", -1)) {
        Cell cell = line.createCell(Math.max(0, line.getLastCellNum()));
        if (text.startsWith("=")) {
          int blank = text.indexOf(' ');
          number(cell, Double.parseDouble(text.substring(1, blank)), text.substring(blank + 1));
        } else if (!text.isEmpty()) {
          cell.setCellValue(text);
        }
      }
    }
  }

  private void number(Cell cell, double value, String format) {
    CellStyle style = book.createCellStyle();
    style.setDataFormat(book.createDataFormat().getFormat(format));
    cell.setCellStyle(style);
    cell.setCellValue(value);
  }

  private Path save(String name) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    try (XSSFWorkbook made = book;
        OutputStream out = Files.newOutputStream(file)) {
      made.write(out);
    }
    book = new XSSFWorkbook();
    return file;
  }

  private void write(String name, String text) throws IOException {
    Files.createDirectories(folder.resolve(name).getParent());
    Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
  }

  private Study read() throws StudyException {
    return StudyReader.open(folder).study();
  }

  private static List<String> findings(Study study) {
    return study.findings().stream().map(Finding::toString).toList();
  }

  /** The records of a study; its name and its findings aside. */
  private static List<String> records(Study study) {
    return StudyText.of(study).stream()
        .filter(line -> !line.contains(": note: ") && !line.contains(": warning: "))
        .map(line -> line.replace(study.name() + "/", ""))
        .toList();
  }

  @Test
  void theSameStudyAsCsvAndAsWorkbook() throws Exception {
    write("study.csv", "setting,value\naltitude,340 m\nconfidence,90 %\n");
    write(
        "runs.csv",
        """
        run,build,date,lit at,order,ambient (°C),water (g),water start,water left,lid,moisture wet basis,fuel loaded,log from,log to
        1,K1,2026-03-14,14:05,1,8.0,1000,12.5 °C,930 g,on,8 %,300 g,0:01:30,0:45:00
        2,K1,2026-03-15,9:30:15,2,9.5,1000.5,12 °C,931.5 g,off,8.7 %,301.5 g,,
        """);
    write(
        "stopwatch.csv",
        "run,lit,pot on,boil (min)\n1,0:00:00,0:01:30,9.5\n2,0:00:05,0:01:20.4,\n");
    List<String> asCsv = records(read());
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    tab("Study", "setting|value", "altitude|=340 0\" m\"", "confidence|=0.9 0%");
    tab(
        "runs",
        "# as it was typed in",
        "run|build|date|lit at|order|ambient (°C)|water (g)|water start|water left|lid"
            + "|moisture wet basis|fuel loaded|log from|log to",
        "=1 General|K1|=46095 m/d/yyyy|=0.586805555555556 h:mm|=1 0|=8 0.0|=1000 #,##0"
            + "|=12.5 0.0\" °C\"|=930 0\\ \"g\"|on|=0.08 0%|300 g"
            + "|=0.00104166666666667 [h]:mm:ss|=0.03125 h:mm:ss",
        "=2 General|K1|=46096 d.m.yy|=0.396006944444444 hh:mm:ss|=2 0|=9.5 General"
            + "|=1000.5 #,##0.0|12 °C|=931.5 0.0\" g\"|off|=0.087 0.0%|=301.5 0.0\" g\"||");
    tab(
        "stopwatch.csv",
        "run|lit|pot on|boil (min)",
        "=1 0|=0 [h]:mm:ss|=0.00104166666666667 [h]:mm:ss|=9.5 0.0",
        "=2 0|=5.78703703703704E-05 h:mm:ss|=0.000930555555555556 [h]:mm:ss.0|");
    Path file = save("study.xlsx");

    Study study = read();

    assertThat(records(study)).isEqualTo(asCsv);
    assertThat(findings(study)).containsExactly(READ_AS_TABS);
    assertThat(study.sources())
        .singleElement()
        .satisfies(
            source -> {
              assertThat(source.name()).isEqualTo("study.xlsx");
              assertThat(source.sha256()).isEqualTo(sha256(file));
            });
  }

  private static String sha256(Path file) throws Exception {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    return HexFormat.of().formatHex(digest.digest(Files.readAllBytes(file)));
  }

  /** Every sheet of the demonstration, its cells as text or as numbers. */
  @Test
  void theDemonstrationAsWorkbook() throws Exception {
    TreeMap<String, List<String>> sheets = new TreeMap<>();
    try (Stream<Path> files = Files.list(DEMO)) {
      for (Path file : files.filter(name -> name.toString().endsWith(".csv")).toList()) {
        sheets.put(file.getFileName().toString(), Files.readAllLines(file));
      }
    }
    for (var sheet : sheets.entrySet()) {
      String[] rows =
          sheet.getValue().stream().map(WorkbookStudyTest::cells).toArray(String[]::new);
      tab(sheet.getKey().replace(".csv", ""), rows);
    }
    save("study.xlsx");

    Study study = read();

    assertThat(records(study)).isEqualTo(records(StudyReader.open(DEMO).study()));
    assertThat(study.runs()).hasSizeGreaterThan(20);
  }

  // No cell of the demonstration has a quotation mark in it.
  private static String cells(String line) {
    StringBuilder cells = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      quoted ^= c == '"';
      cells.append(c == ',' && !quoted ? "|" : c == '"' ? "" : String.valueOf(c));
    }
    return Stream.of(cells.toString().split("\\|", -1))
        .map(text -> text.matches("-?\\d+(\\.\\d+)?") ? "=" + text + " " + format(text) : text)
        .reduce((a, b) -> a + "|" + b)
        .orElse("");
  }

  private static String format(String number) {
    int point = number.indexOf('.');
    return point < 0 ? "0" : "0." + "0".repeat(number.length() - point - 1);
  }

  @Test
  void findingsNameTabAndCell() throws Exception {
    tab("runs", "run|build|water|Temp", "1|A|=5 0|68 F", "|A|500 g|");
    tab("study", "setting|value", "altitude|high");
    save("study.xlsx");

    assertThat(findings(read()))
        .anyMatch(text -> text.startsWith("study.xlsx!runs, cell C2: error: “5” has no unit"))
        .anyMatch(
            text -> text.startsWith("study.xlsx!runs, cell D1: warning: I don't know this col"))
        .anyMatch(text -> text.startsWith("study.xlsx!runs, row 3, column run: error: this row"))
        .anyMatch(text -> text.startsWith("study.xlsx!study, cell B2: error: altitude: “high”"));
  }

  @Test
  void whatMendsALogIsARowOfATab() throws Exception {
    tab("runs", "run|build", "1|A");
    save("study.xlsx");
    write("logs/1.csv", "time (s),a,b\n0,20.1,500.2\n1,20.4,510.6\n2,20.9,515.1\n3,21.3,519.7\n");
    OpenedStudy opened = StudyReader.open(folder);

    List<Finding> found = opened.logs().open(opened.study().runs().get(0)).findings();

    assertThat(found)
        .anyMatch(finding -> finding.remedy().toString().contains("tab sensors of study.xlsx"));
    assertThat(found).noneMatch(finding -> finding.remedy().toString().contains("sensors.csv"));
    assertThat(found.stream().flatMap(finding -> finding.mend().stream()))
        .isNotEmpty()
        .allMatch(row -> row.sheet().equals("the tab sensors of study.xlsx"));
  }

  @Test
  void aSheetIsAFileOrATabButNotBoth() throws Exception {
    tab("runs", "run|build", "1|A");
    tab("builds", "build|label", "A|from the tab");
    save("study.xlsx");
    write("builds.csv", "build,label\nA,from the file\n");

    Study study = read();

    assertThat(records(study)).contains("build A: build = A; label = from the file");
    assertThat(findings(study))
        .contains(
            "study.xlsx!builds: error: there is a file builds.csv beside the workbook, which was"
                + " read, so this tab was left out. Keep one of the two, the file or the tab.");
  }

  @Test
  void tabsThatAreNoSheetsAreTold() throws Exception {
    tab("runs", "run|build", "1|A");
    tab("Stopwach", "run|event|time", "1|lit|0:00");
    tab("thoughts", "try larch next");
    tab("Sheet4");
    tab("pots", "pot|mass", "billy|214 g");
    book.setSheetVisibility(4, SheetVisibility.HIDDEN);
    save("study.xlsx");
    write("~$study.xlsx", "locked");

    assertThat(findings(read()))
        .containsExactly(
            "study.xlsx!Stopwach: warning: I don't know a sheet of this name, so the tab was"
                + " left out. Did you mean stopwatch?",
            READ_AS_TABS,
            "study.xlsx!pots: note: this tab is hidden, but was read. Delete it if it is not"
                + " meant.",
            "study.xlsx!thoughts: note: I don't know a sheet of this name, so the tab was left"
                + " out. Sheets are study, builds, rings, holes, pots, runs, stopwatch, sensors,"
                + " claims, protocol.",
            "~$study.xlsx: note: a spreadsheet program has the workbook open. Save it there before"
                + " it is read here.");
  }

  @Test
  void withoutATabOfRunsItIsSaidWhichItMayBe() throws Exception {
    tab("Sheet1", "run|build", "1|A");
    tab("Runs 2026", "run|build", "1|A");
    save("study.xlsx");
    assertThatThrownBy(this::read)
        .isInstanceOf(StudyException.class)
        .hasMessage(
            "There is neither runs.csv nor a tab runs in study.xlsx of burns (its tabs are Sheet1,"
                + " Runs 2026): rename Runs 2026 to runs.");
  }

  @Test
  void withoutRunsAWorkbookOfAnotherNameIsOffered() throws Exception {
    write("my burns.xlsx", "any");
    assertThatThrownBy(this::read)
        .hasMessageEndingWith(
            ": rename my burns.xlsx to study.xlsx and its sheet of runs to runs, or save that as"
                + " runs.csv.");
    Files.move(folder.resolve("my burns.xlsx"), folder.resolve("old.xls"));
    assertThatThrownBy(this::read)
        .hasMessageEndingWith(
            ": save old.xls as an Excel workbook, rename it to study.xlsx and its sheet of runs to"
                + " runs, or save that as runs.csv.");
    write("study.xlsx", "no workbook");
    assertThatThrownBy(this::read).hasMessageContaining("this is not an Excel workbook");
  }

  /** What a formula counts as, 5:43 typed as hours and minutes, dates made of 5-6. */
  @Test
  void whatSpreadsheetsTurnIntoDatesAndTimesIsAsked() throws Exception {
    tab("runs", "run|build|water|lit at", "1|A|=46148 d-mmm|=0.5 General");
    tab("stopwatch", "run|event|time", "1|boil|=0.238194444444444 h:mm:ss", "1|lit|=0.2 General");
    save("study.xlsx");

    assertThat(findings(read()))
        .anyMatch(text -> text.contains("runs, cell C2: error: “2026-05-06” is a date"))
        .anyMatch(text -> text.contains("runs, cell D2: error: “0.5” is not a time of day"))
        .anyMatch(text -> text.contains("cell C2: error: “5:43:00” could be hours and minutes"))
        .anyMatch(text -> text.contains("stopwatch, cell C3: error: "));
  }

  /** 1:30, 24:30 and 30:30 on a stopwatch, which workbooks keep as hours and days. */
  @Test
  void minutesAndSecondsKeptAsHoursAreAsked() throws Exception {
    tab("runs", "run|build", "1|A");
    tab(
        "stopwatch",
        "run|event|time",
        "1|lit|=0 h:mm:ss AM/PM",
        "1|pot on|=0.0625 h:mm:ss AM/PM",
        "1|boil|=1.02083333333333 [h]:mm:ss",
        "1|flame out|=1.27083333333333 m/d/yy h:mm");
    save("study.xlsx");

    assertThat(findings(read()))
        .anyMatch(text -> text.contains("cell C3: error: “1:30:00 AM”") && text.contains("1m30s"))
        .anyMatch(text -> text.contains("cell C4: error: ") && text.contains("24m30s"))
        .anyMatch(text -> text.contains("cell C5: error: ") && text.contains("into a date"));
  }

  /** A log that was saved as a workbook is read from its first tab, row for line. */
  @Test
  void aLogMayBeAWorkbook() throws Exception {
    write("runs.csv", "run,build,log\n1,A,logs/a.xlsx\n2,A,\n");
    tab("Data", "made, by hand", "", "Time|flame (°C)|water (°C)");
    for (int i = 0; i < 60; i++) {
      Row row = book.getSheet("Data").createRow(3 + i);
      number(row.createCell(0), 46095.5 + i / 86400.0, "yyyy-mm-dd hh:mm:ss");
      row.createCell(1).setCellValue(20.5 + i);
      row.createCell(2).setCellValue(12.25);
    }
    book.getSheet("Data").getRow(10).getCell(1).setCellErrorValue((byte) 42);
    tab("Chart");
    Path file = save("logs/a.xlsx");
    Files.copy(file, folder.resolve("logs/2.xlsx"));

    OpenedStudy opened = StudyReader.open(folder);
    OpenedLog first = opened.logs().open(opened.study().runs().get(0));
    Log log = first.log().orElseThrow();

    assertThat(log.time().seconds().size()).isEqualTo(60);
    assertThat(log.time().seconds().getDouble(59)).isEqualTo(59);
    assertThat(log.source().sha256()).isEqualTo(sha256(file));
    assertThat(log.source().name()).isEqualTo("logs/a.xlsx");
    assertThat(first.findings())
        .extracting(Finding::toString)
        .contains(
            "logs/a.xlsx: note: the log was read from the first of 2 tabs, “Data”. Save another"
                + " tab as CSV if the log is there.");
    assertThat(opened.logs().open(opened.study().runs().get(1)).log()).isPresent();
    assertThat(findings(opened.study())).isEmpty();
  }

  /** Whoever has no workbook waits for none of it. */
  @Test
  void aStudyOfCsvLoadsNoClassOfTheLibrary() throws Exception {
    write("runs.csv", "run,build\n1,A\n");
    write("logs/1.csv", "Time (s),flame (°C)\n0,20\n1,21\n2,22\n3,23\n");
    assertThat(loaded()).contains("fairboil.ingest.StudyReader").doesNotContain("fastexcel");

    tab("builds", "build", "A");
    save("study.xlsx");
    assertThat(loaded()).contains("org.dhatim.fastexcel.reader.ReadableWorkbook");
  }

  private String loaded() throws Exception {
    Process java =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load:file=" + temp.resolve("loaded.txt"),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                OpensStudy.class.getName(),
                folder.toString())
            .redirectErrorStream(true)
            .start();
    try (InputStream said = java.getInputStream()) {
      assertThat(new String(said.readAllBytes(), StandardCharsets.UTF_8)).isEmpty();
    }
    assertThat(java.waitFor()).isZero();
    return Files.readString(temp.resolve("loaded.txt"));
  }

  /** Reads a study and its logs. */
  static final class OpensStudy {

    public static void main(String... args) throws StudyException {
      OpenedStudy opened = StudyReader.open(Path.of(args[0]));
      opened.study().runs().forEach(opened.logs()::open);
    }
  }
}
