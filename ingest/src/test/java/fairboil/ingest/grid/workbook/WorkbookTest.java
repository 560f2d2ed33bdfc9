package fairboil.ingest.grid.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.grid.Grid;
import fairboil.ingest.grid.GridRow;
import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.grid.UnreadableException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Workbooks written by Apache POI, or by hand as {@link Parts}. */
class WorkbookTest {

  private static final String NAME = "study.xlsx";

  @TempDir Path folder;

  private void write(XSSFWorkbook book) throws IOException {
    try (book;
        OutputStream out = Files.newOutputStream(folder.resolve(NAME))) {
      book.write(out);
    }
  }

  private void write(Map<String, String> parts) throws IOException {
    Files.write(folder.resolve(NAME), Parts.zip(parts));
  }

  private Grid first() throws IOException {
    try (Workbook workbook = Workbook.open(StudyFolder.at(folder), NAME)) {
      return workbook.grid(workbook.tabs().get(0));
    }
  }

  private static List<List<String>> cells(Grid grid) {
    return grid.rows().stream().map(GridRow::cells).toList();
  }

  private String shown(double value, String format, boolean from1904) throws IOException {
    XSSFWorkbook book = new XSSFWorkbook();
    book.getCTWorkbook().addNewWorkbookPr().setDate1904(from1904);
    Cell cell = book.createSheet("runs").createRow(0).createCell(0);
    CellStyle style = book.createCellStyle();
    style.setDataFormat(book.createDataFormat().getFormat(format));
    cell.setCellStyle(style);
    cell.setCellValue(value);
    write(book);
    Grid grid = first();
    assertThat(grid.findings()).isEmpty();
    return grid.rows().get(0).cell(0);
  }

  /** What spreadsheets show of these numbers; the days after ECMA-376 part 1, 18.17.4.1. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "20                | General              | 20",
        "1.1               | General              | 1.1",
        "0.30000000000000004 | General            | 0.3",
        "1e-7              | General              | 0.0000001",
        "1234567890123     | General              | 1234567890123",
        "-8.5              | General              | -8.5",
        "20                | 0.0                  | 20.0",
        "20.25             | 0.0                  | 20.25",
        "5280              | #,##0                | 5280",
        "0.08              | 0%                   | 8%",
        "0.087             | 0.0%                 | 8.7%",
        "0.08              | 0.00%                | 8.00%",
        "500               | 0` g`                | 500` g`",
        "1.5               | # ?/?                | 1.5",
        "12345             | 0.00E+00             | 12345",
        "240               | 0\\ \"g\"            | 240 g",
        "8                 | 0.0\" °C\"           | 8.0 °C",
        "-3.5              | 0.0 [$°C-407];[Red]-0.0 [$°C-407] | -3.5 °C",
        "12                | [$-409]0             | 12",
        "3                 | [<2]0\" cup\";0\" cups\" | 3",
        "0.238194444444444 | h:mm                 | 5:43",
        "0.003969907407407 | [h]:mm:ss            | 0:05:43",
        "0.003969907407407 | h:mm:ss              | 0:05:43",
        "0.003969907407407 | mm:ss                | 5:43",
        "0.003973379629630 | mm:ss.0              | 5:43.3",
        "0.003973379629630 | [mm]:ss.0            | 0:05:43.3",
        "0.238194444444444 | mm:ss                | 5:43:00",
        "0.25              | [h]:mm:ss            | 6h0m00s",
        "1.5               | [h]:mm               | 36h0m00s",
        "1.5               | h:mm                 | 36h0m00s",
        "0.586805555555556 | hh:mm                | 14:05",
        "0.587152777777778 | hh:mm                | 14:05:30",
        "0.586805555555556 | h:mm AM/PM           | 2:05 PM",
        "0.004             | h:mm:ss AM/PM        | 12:05:45.6 AM",
        "46095             | m/d/yy               | 2026-03-14",
        "46095             | dd.mm.yyyy           | 2026-03-14",
        "46095             | d-mmm                | 2026-03-14",
        "46095             | mmmm                 | 2026-03-14",
        "46095.5868055556  | m/d/yy h:mm          | 2026-03-14 14:05:00",
        "46095.5868055556  | yyyy-mm-dd\\ hh:mm:ss | 2026-03-14 14:05:00",
        "46095.5868055556  | h:mm                 | 2026-03-14 14:05",
        "46095.5868055556  | yyyy-mm-dd           | 2026-03-14",
        "1                 | yyyy-mm-dd           | 1900-01-01",
        "59                | yyyy-mm-dd           | 1900-02-28",
        "61                | yyyy-mm-dd           | 1900-03-01"
      })
  void writesNumbersAsTheirFormatShowsThem(double value, String format, String text)
      throws IOException {
    String plain = format.replace('`', '"');
    assertThat(shown(value, plain, false)).isEqualTo(text.replace("`", ""));
  }

  /** The same day, 1,462 days apart: ECMA-376 part 1, 18.17.4.1. */
  @Test
  void datesMayCountFrom1904() throws IOException {
    assertThat(shown(46095 - 1462, "yyyy-mm-dd", true)).isEqualTo("2026-03-14");
    assertThat(shown(0.5, "h:mm:ss", true)).isEqualTo("12:00:00");
    Map<String, String> parts = Parts.unzip(Files.readAllBytes(folder.resolve(NAME)));
    parts.replaceAll((name, xml) -> xml.replaceAll("date1904=\"[a-z0-9]+\"", "date1904=\"1\""));
    parts.computeIfPresent(
        "xl/worksheets/sheet1.xml", (name, xml) -> xml.replace("<v>0.5</v>", "<v>44633.5</v>"));
    write(parts);
    assertThat(first().rows().get(0).cell(0)).isEqualTo("2026-03-14 12:00:00");
  }

  @Test
  void truthFormulasAndErrors() throws IOException {
    XSSFWorkbook book = new XSSFWorkbook();
    XSSFSheet sheet = book.createSheet("runs");
    var row = sheet.createRow(2);
    row.createCell(0).setCellValue(true);
    row.createCell(1).setCellFormula("1+1");
    row.createCell(2).setCellFormula("\"a\"&\"b\"");
    row.createCell(3).setCellFormula("2>1");
    row.createCell(4).setCellErrorValue(FormulaError.NA.getCode());
    row.createCell(5).setCellFormula("1/0");
    book.getCreationHelper().createFormulaEvaluator().evaluateAll();
    row.createCell(6).setCellFormula("SUM(A9:B9)");
    row.createCell(7).setCellValue("end");
    write(book);

    Grid grid = first();

    assertThat(cells(grid)).containsExactly(List.of("TRUE", "2", "ab", "TRUE", "", "", "", "end"));
    assertThat(grid.rows().get(0).line()).isEqualTo(3);
    assertThat(grid.findings())
        .extracting(Finding::toString)
        .containsExactly(
            "study.xlsx!runs, cell E3: note: this cell shows “#N/A”, so it was read as empty.",
            "study.xlsx!runs, cell F3: error: this cell shows “#DIV/0!”, so it was read as empty."
                + " Correct its formula, or empty the cell if there is no value.",
            "study.xlsx!runs, cell G3: error: this cell holds a formula without its result, so it"
                + " was read as empty. Open the workbook in a spreadsheet program and save it"
                + " again.");
  }

  @Test
  void leavesOutBlankRowsAndComments() throws IOException {
    XSSFWorkbook book = new XSSFWorkbook();
    XSSFSheet sheet = book.createSheet("runs");
    sheet.createRow(0).createCell(0).setCellValue("# May, all of it");
    sheet.createRow(1).createCell(0).setCellValue("  ");
    sheet.createRow(4).createCell(1).setCellValue(" of the\u00A0day ");
    var numbered = sheet.createRow(5);
    numbered.createCell(0).setCellValue("#3");
    numbered.createCell(1).setCellValue("water");
    write(book);

    Grid grid = first();

    assertThat(cells(grid)).containsExactly(List.of("", "of the\u00A0day"), List.of("#3", "water"));
    assertThat(grid.comments()).isEqualTo(1);
    assertThat(grid.blanks()).isEqualTo(1);
  }

  @Test
  void mergedCellsHoldForEachOfTheirRows() throws IOException {
    XSSFWorkbook book = new XSSFWorkbook();
    XSSFSheet sheet = book.createSheet("runs");
    String[][] texts = {
      {"Burns of May", "", ""},
      {"run", "build", "notes"},
      {"1", "K1", ""},
      {"2", "", ""},
      {"3", "", "gusty"},
      {"", "", ""},
      {"4", "", ""}
    };
    for (int r = 0; r < texts.length; r++) {
      var row = sheet.createRow(r);
      for (int c = 0; c < texts[r].length; c++) {
        row.createCell(c).setCellValue(texts[r][c]);
      }
    }
    sheet.addMergedRegion(CellRangeAddress.valueOf("A1:C1"));
    sheet.addMergedRegion(CellRangeAddress.valueOf("B3:B6"));
    write(book);

    Grid grid = first();

    assertThat(cells(grid))
        .containsExactly(
            List.of("Burns of May"),
            List.of("run", "build", "notes"),
            List.of("1", "K1"),
            List.of("2", "K1"),
            List.of("3", "K1", "gusty"),
            List.of("4"));
    assertThat(grid.findings())
        .singleElement()
        .hasToString(
            "study.xlsx!runs: note: what stands in the merged cells B3:B6 was read for each of"
                + " their rows. Unmerge them if it does not hold for each.");
  }

  @Test
  void tabsInOrderHiddenOnesToo() throws IOException {
    XSSFWorkbook book = new XSSFWorkbook();
    book.createSheet("runs");
    book.createSheet("old");
    book.setSheetVisibility(1, SheetVisibility.VERY_HIDDEN);
    write(book);

    try (Workbook workbook = Workbook.open(StudyFolder.at(folder), NAME)) {
      assertThat(workbook.tabs())
          .containsExactly(new Tab(0, "runs", false), new Tab(1, "old", true));
      assertThat(workbook.isEmpty(workbook.tabs().get(0))).isTrue();
      assertThat(workbook.source().name()).isEqualTo(NAME);
      assertThat(workbook.source().bytes()).isEqualTo(Files.size(folder.resolve(NAME)));
    }
  }

  /** As some programs write them: no formats, no shared texts, no places of cells. */
  @Test
  void theLeastWorkbookThereMayBe() throws IOException {
    write(
        Parts.of(
            "<row r=\"1\">"
                + Parts.cell("A1", "run")
                + Parts.cell("C1", "wa<!-- -->ter &amp; pot")
                + "</row><row><c><v>7</v></c><c t=\"b\"><v>0</v></c><c t=\"str\"><v>x</v></c></row>"));
    assertThat(cells(first()))
        .containsExactly(List.of("run", "", "water & pot"), List.of("7", "FALSE", "x"));
  }

  @Test
  void saysWhatIsNoWorkbook() throws Exception {
    Files.writeString(folder.resolve(NAME), "run,build\n1,A\n");
    assertRefused("this is not an Excel workbook");

    try (HSSFWorkbook old = new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(folder.resolve(NAME))) {
      old.createSheet("runs");
      old.write(out);
    }
    assertRefused("this is a workbook of the old kind (.xls), which is not read");

    Map<String, String> parts = new TreeMap<>();
    parts.put("mimetype", "application/vnd.oasis.opendocument.spreadsheet");
    parts.put("content.xml", "<x/>");
    write(parts);
    assertRefused("this is an OpenDocument workbook (.ods)");

    write(Map.of("readme.txt", "hello"));
    assertRefused("this is not an Excel workbook");
    Files.write(folder.resolve(NAME), new byte[0]);
    assertRefused("this is not an Excel workbook");
    Files.write(folder.resolve(NAME), new byte[] {'P', 'K', 3, 4, 20, 0});
    assertRefused("this is not an Excel workbook");
  }

  @Test
  void saysWhatIsLocked() throws Exception {
    EncryptionInfo info = new EncryptionInfo(EncryptionMode.agile);
    Encryptor encryptor = info.getEncryptor();
    encryptor.confirmPassword("birch");
    try (POIFSFileSystem file = new POIFSFileSystem()) {
      try (XSSFWorkbook book = new XSSFWorkbook();
          OutputStream locked = encryptor.getDataStream(file)) {
        book.createSheet("runs");
        book.write(locked);
      }
      try (OutputStream out = Files.newOutputStream(folder.resolve(NAME))) {
        file.writeFilesystem(out);
      }
    }
    assertRefused("this workbook is locked with a password");
  }

  private void assertRefused(String sentence) {
    assertThatThrownBy(this::first)
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining(sentence);
  }

  /** 70 MB of nothing take 70 kB packed; the same as a picture that is never looked at. */
  @ParameterizedTest
  @ValueSource(strings = {"xl/worksheets/sheet2.xml", "xl/media/picture.png"})
  void refusesWhatUnpacksToMoreThan64Megabytes(String part) throws IOException {
    Map<String, String> parts = Parts.of("");
    parts.put(part, " ".repeat(70_000_000));
    write(parts);
    assertThat(Files.size(folder.resolve(NAME))).isLessThan(100_000);
    assertRefused("this workbook is larger than 64 MB once unpacked");
  }

  /** Each of these would cost the library memory or time without bound. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "<row r=\"1\"><c r=\"ZZZZZZ1\"><v>1</v></c></row>",
        "<row r=\"1\"><c r=\"A1\" t=\"s\"><v>2000000000</v></c></row>",
        "<row r=\"1\"><c r=\"A1\"><v>NINES</v></c></row>",
        "<row r=\"1\"><c r=\"A1\"><f t=\"shared\" si=\"0\" ref=\"A1:A9\">LONG</f></c></row>",
        "NESTED"
      })
  void refusesWhatWouldCostWithoutBound(String rows) throws IOException {
    write(
        Parts.of(
            rows.replace("NINES", "9".repeat(60_000))
                .replace("LONG", "A1+".repeat(5_000))
                .replace("NESTED", "<a>".repeat(5_000) + "</a>".repeat(5_000))));
    assertRefused("this workbook is damaged, or of a kind that is not read");
  }

  /** The bomb of a billion laughs: each entity is ten of the one before. */
  @Test
  void refusesEntities() throws IOException {
    Map<String, String> parts = Parts.of("<row>" + Parts.cell("A1", "&i;") + "</row>");
    StringBuilder entities = new StringBuilder("<!DOCTYPE x [<!ENTITY a \"ha\">");
    for (char name = 'b'; name <= 'i'; name++) {
      String before = "&" + (char) (name - 1) + ";";
      entities.append("<!ENTITY ").append(name).append(" \"").append(before.repeat(10));
      entities.append("\">");
    }
    parts.computeIfPresent("xl/worksheets/sheet1.xml", (name, xml) -> entities + "]>" + xml);
    write(parts);
    assertRefused("this workbook is damaged, or of a kind that is not read");
  }

  @Test
  void aTextMayBe64KibibytesLong() throws IOException {
    write(Parts.of("<row>" + Parts.cell("A1", "x".repeat(65_536)) + "</row>"));
    assertThat(first().rows().get(0).cell(0)).hasSize(65_536);
    write(Parts.of("<row>" + Parts.cell("A1", "x".repeat(65_537)) + "</row>"));
    assertRefused("longer than 64 KiB");
  }

  @Test
  void aTabIsReadUpToItsLimits() throws IOException {
    StringBuilder rows = new StringBuilder();
    for (int i = 1; i <= 100_001; i++) {
      rows.append("<row r=\"").append(i).append("\"><c><v>1</v></c></row>");
    }
    write(Parts.of(rows.toString()));
    Grid grid = first();
    assertThat(grid.rows()).hasSize(100_000);
    assertThat(grid.findings())
        .singleElement()
        .asString()
        .startsWith("study.xlsx!runs, row 100001: error: reading ended here");
    write(Parts.of("<row r=\"5\">" + Parts.cell("AML5", "x") + "</row>"));
    assertThat(first().findings())
        .singleElement()
        .asString()
        .startsWith("study.xlsx!runs, row 5: error: this row has more than 1,000 cells");
  }

  /** What stands before the damage is kept. */
  @Test
  void aDamagedTabIsReadUpToTheDamage() throws IOException {
    write(
        Parts.of(
            "<row r=\"1\">"
                + Parts.cell("A1", "run")
                + "</row><row r=\"2\"><c r=\"A2\" t=\"unheard of\"><v>1</v></c></row>"));
    Grid grid = first();
    assertThat(cells(grid)).containsExactly(List.of("run"));
    assertThat(grid.findings())
        .singleElement()
        .asString()
        .startsWith("study.xlsx!runs, row 1: error: reading ended here");
  }
}
