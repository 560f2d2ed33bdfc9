package fairboil.reports.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.ingest.Study;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.sheet.RingsSheet;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PrintsTest {

  @Test
  void filesAreNamedForWhatTheyAre() {
    PrintJob job = Prints.of(Demo.study(), List.of(Paper.values()));
    assertThat(job.files())
        .extracting(Printed::name)
        .containsExactly(
            "run-sheet-a4.pdf",
            "hole-form-a4.pdf",
            "strip-upper-a4.pdf",
            "base-disc-a4.pdf",
            "run-sheet-letter.pdf",
            "hole-form-letter.pdf",
            "strip-upper-letter.pdf",
            "base-disc-letter.pdf");
    assertThat(job.findings()).isEmpty();
  }

  /** A4 is 210 mm by 297 mm (ISO 216); Letter is 8.5 in by 11 in, 612 by 792 points. */
  @ParameterizedTest
  @EnumSource(Paper.class)
  void pagesAreOfTheirPaper(Paper paper) throws IOException {
    double shortSide = paper == Paper.A4 ? 210 / 25.4 * 72 : 612;
    double longSide = paper == Paper.A4 ? 297 / 25.4 * 72 : 792;
    for (Printed file : Prints.of(Demo.study(), paper).files()) {
      try (PDDocument document = Loader.loadPDF(file.pdf())) {
        for (PDPage page : document.getPages()) {
          PDRectangle box = page.getMediaBox();
          double low = Math.min(box.getWidth(), box.getHeight());
          double high = Math.max(box.getWidth(), box.getHeight());
          assertThat(low).as(file.name()).isEqualTo(shortSide, within(0.01));
          assertThat(high).as(file.name()).isEqualTo(longSide, within(0.01));
        }
      }
    }
  }

  @Test
  void viewersAreAskedNotToScale() throws IOException {
    for (Printed file : Prints.of(Demo.study(), Paper.A4).files()) {
      try (PDDocument document = Loader.loadPDF(file.pdf())) {
        assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
            .isEqualTo("None");
        assertThat(document.getDocumentInformation().getCreationDate()).isNull();
      }
    }
  }

  @Test
  void everyFontIsEmbedded() throws IOException {
    List<PDFont> fonts = new ArrayList<>();
    for (Printed file : Prints.of(Demo.study(), Paper.A4).files()) {
      try (PDDocument document = Loader.loadPDF(file.pdf())) {
        for (PDPage page : document.getPages()) {
          for (COSName name : page.getResources().getFontNames()) {
            fonts.add(page.getResources().getFont(name));
          }
        }
      }
    }
    assertThat(fonts)
        .isNotEmpty()
        .allMatch(PDFont::isEmbedded)
        .allMatch(font -> font.getName().contains("+DejaVuSans"));
  }

  @Test
  void sameStudySameBytesWhateverTheLocaleAndZone() {
    List<byte[]> first = bytes();
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("th-TH-u-nu-thai"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      List<byte[]> second = bytes();
      assertThat(second).hasSameSizeAs(first);
      for (int i = 0; i < first.size(); i++) {
        assertThat(second.get(i)).isEqualTo(first.get(i));
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  private static List<byte[]> bytes() {
    return Prints.of(Demo.study(), List.of(Paper.values())).files().stream()
        .map(Printed::pdf)
        .toList();
  }

  @Test
  void missingWrapIsToldInWordsAndTheRestIsPrinted() {
    PrintJob job =
        Prints.of(
            Sheets.study()
                .ring("bare", 8, r -> r)
                .ring("good", 8, r -> r.put(RingsSheet.WRAP, Sheets.mm(200)))
                .read(),
            List.of(Paper.values()));
    assertThat(job.findings()).hasSize(1);
    Finding finding = job.findings().get(0);
    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.toString())
        .contains("rings.csv, line 2, column wrap", "ring bare has no wrap", "Put a strip");
    assertThat(job.files()).extracting(Printed::name).contains("strip-good-a4.pdf");
  }

  @Test
  void whatCannotBeDrawnIsRefusedInWords() {
    PrintJob job =
        Prints.of(
            Sheets.study()
                .ring("nought", 8, r -> r.put(RingsSheet.WRAP, Sheets.mm(0)))
                .ring("vast", 8, r -> r.put(RingsSheet.WRAP, Sheets.mm(31_400)))
                .ring("dense", 400, r -> r.put(RingsSheet.WRAP, Sheets.mm(314)))
                .ring("odd", 8, r -> r.put(RingsSheet.DIVISIONS, 12))
                .ring("none", 0, r -> r.put(RingsSheet.WRAP, Sheets.mm(314)))
                .ring("many", 5, r -> r.put(RingsSheet.DIVISIONS, Integer.MAX_VALUE))
                .ring("floor", 6, r -> r.put(RingsSheet.SURFACE, Surface.BASE))
                .read(),
            Paper.A4);
    assertThat(job.findings())
        .extracting(finding -> finding.place().toString())
        .containsExactly(
            "rings.csv, line 2, column wrap",
            "rings.csv, line 3, column wrap",
            "rings.csv, line 4, column wrap",
            "rings.csv, line 5, column holes",
            "rings.csv, line 6, column holes",
            "rings.csv, line 7, column divisions",
            "rings.csv, line 8, column circle");
    assertThat(job.files()).extracting(Printed::name).containsExactly("run-sheet-a4.pdf");
  }

  @Test
  void aPrintAtWhichTheProgramFailsCostsThatPrintOnly() {
    Sheets sheets = Sheets.study().build("A", "a");
    Study study = sheets.ring("upper", 4, r -> r.put(RingsSheet.WRAP, Sheets.mm(200))).read();
    Study broken =
        new Study(
            study.name(),
            null, // which the run sheet alone asks
            study.builds(),
            study.rings(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    PrintJob job = Prints.of(broken, List.of(Paper.values()));
    assertThat(job.files())
        .extracting(Printed::name)
        .contains("strip-upper-a4.pdf", "hole-form-letter.pdf")
        .noneMatch(name -> name.startsWith("run-sheet"));
    assertThat(job.faults())
        .extracting(fault -> fault.part().toString())
        .containsExactly("the run sheet", "the run sheet");
    assertThat(job.findings())
        .extracting(finding -> finding.problem().toString())
        .contains("this program failed at the run sheet, so that is left out");
  }

  @Test
  void studyWithoutRingsStillGetsItsRunSheet() {
    PrintJob job = Prints.of(Sheets.study().read(), Paper.A4);
    assertThat(job.files()).extracting(Printed::name).containsExactly("run-sheet-a4.pdf");
    assertThat(job.findings()).extracting(Finding::severity).containsExactly(Severity.WARNING);
  }

  @Test
  void namesOfAnyKindAreDrawnAndMakeSafeFileNames() {
    List<String> names =
        List.of("../../etc", "con", "环", "حلقة", "a\u0000b\nc", "😀".repeat(40), "x".repeat(500));
    Sheets sheets = Sheets.study();
    for (String name : names) {
      sheets.build(name, name);
      sheets.ring(name, 4, r -> r.put(RingsSheet.WRAP, Sheets.mm(200)));
    }
    PrintJob job = Prints.of(sheets.read(), Paper.LETTER);
    assertThat(job.files())
        .extracting(Printed::name)
        .hasSize(names.size() + 2)
        .doesNotHaveDuplicates()
        .allMatch(name -> name.matches("[a-z0-9-]{1,120}\\.pdf"));
  }
}
