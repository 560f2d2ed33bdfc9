package fairboil.ingest.grid.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.grid.Grid;
import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.grid.UnreadableException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is done to a workbook: rows and findings, or one sentence; no other exception. */
class WorkbookFuzzTest {

  private static final String NAME = "study.xlsx";

  private static final String[] LIKELY = {
    "<",
    ">",
    "/",
    "\"",
    "&",
    "\0",
    "9",
    "-1",
    "99999999",
    "1E999",
    "r=\"ZZ9\"",
    "t=\"s\"",
    "t=\"shared\"",
    "si=\"7\"",
    "<v>",
    "</c>",
    "<row>",
    "<f>",
    "&#0;",
    "]]>",
    "<!--",
    "\uFFFF"
  };

  private static final String[] WORDS = {
    "", "9", "-1", "99999999", "1E999", "ZZ9", "s", "str", "shared", "array", "e", "0.5", "1904"
  };

  private static final Pattern WORD = Pattern.compile("(?<=[\">])[A-Za-z0-9.]+(?=[\"<])");

  @TempDir Path folder;
  private final Random random = new Random(11);

  @Test
  void mutatedWorkbooksGiveFindingsOnly() throws IOException {
    fuzz(600);
  }

  @Test
  @Tag("long")
  void manyMutatedWorkbooksGiveFindingsOnly() throws IOException {
    fuzz(20_000);
  }

  private void fuzz(int count) throws IOException {
    byte[] workbook = workbook();
    Map<String, String> parts = Parts.unzip(workbook);
    int read = 0;
    for (int i = 0; i < count; i++) {
      byte[] bytes = i % 4 == 0 ? mutated(workbook) : Parts.zip(mutated(parts));
      read += Assertions.assertTimeout(Duration.ofSeconds(10), () -> read(bytes)) ? 1 : 0;
    }
    assertThat(read).isBetween(count / 10, count); // not all of them are refused at the door
  }

  private boolean read(byte[] bytes) throws IOException {
    Files.write(folder.resolve(NAME), bytes);
    try (Workbook workbook = Workbook.open(StudyFolder.at(folder), NAME)) {
      for (Tab tab : workbook.tabs()) {
        Grid grid = workbook.grid(tab);
        assertThat(grid.findings())
            .allSatisfy(finding -> assertThat(finding.problem().toString()).isNotBlank());
        workbook.text(tab, new ArrayList<>()).close();
      }
      return true;
    } catch (UnreadableException e) {
      assertThat(e.getMessage()).startsWith(NAME);
      return false;
    }
  }

  private Map<String, String> mutated(Map<String, String> parts) {
    List<String> names = new ArrayList<>(parts.keySet());
    names.removeIf(name -> name.startsWith("docProps"));
    Map<String, String> changed = new java.util.LinkedHashMap<>(parts);
    for (int i = random.nextInt(3); i >= 0; i--) {
      String name = names.get(random.nextInt(names.size()));
      changed.computeIfPresent(name, (key, xml) -> mutated(xml));
    }
    return changed;
  }

  private String mutated(String xml) {
    int at = random.nextInt(xml.length() + 1);
    Matcher word = WORD.matcher(xml);
    if (random.nextInt(3) > 0 && word.find(at)) { // the XML stays as well formed as it was
      String other = WORDS[random.nextInt(WORDS.length)];
      return xml.substring(0, word.start()) + other + xml.substring(word.end());
    }
    int end = Math.min(xml.length(), at + random.nextInt(random.nextBoolean() ? 3 : 40));
    String put = random.nextInt(4) == 0 ? "" : LIKELY[random.nextInt(LIKELY.length)];
    return xml.substring(0, at) + put + xml.substring(end);
  }

  private byte[] mutated(byte[] bytes) {
    byte[] changed = bytes.clone();
    for (int i = random.nextInt(4); i >= 0; i--) {
      changed[random.nextInt(changed.length)] = (byte) random.nextInt();
    }
    return random.nextInt(5) == 0
        ? Arrays.copyOf(changed, random.nextInt(changed.length))
        : changed;
  }

  private static byte[] workbook() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      XSSFSheet sheet = book.createSheet("runs");
      CellStyle date = book.createCellStyle();
      date.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd hh:mm"));
      String text = "°C, ½ and “”";
      for (int i = 0; i < 8; i++) {
        var row = sheet.createRow(i);
        row.createCell(0).setCellValue("run " + i);
        row.createCell(1).setCellValue(46095.25 + i);
        row.getCell(1).setCellStyle(date);
        row.createCell(2).setCellValue(i * 1.1);
        row.createCell(3).setCellFormula("C" + (i + 1) + "*2");
        row.createCell(4).setCellValue(i % 2 == 0);
        row.createCell(5).setCellValue(text);
      }
      sheet.addMergedRegion(CellRangeAddress.valueOf("F2:F4"));
      book.createSheet("builds").createRow(3).createCell(2).setCellErrorValue((byte) 42);
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      book.write(out);
      return out.toByteArray();
    }
  }
}
