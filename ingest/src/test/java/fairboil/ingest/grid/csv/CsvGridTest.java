package fairboil.ingest.grid.csv;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.grid.FileKind;
import fairboil.ingest.grid.Grid;
import fairboil.ingest.grid.GridRow;
import fairboil.ingest.grid.SourceText;
import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.quantity.DecimalMark;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvGridTest {

  @TempDir Path folder;

  private Grid read(String content) throws IOException {
    Files.write(folder.resolve("runs.csv"), content.getBytes(StandardCharsets.UTF_8));
    try (SourceText text = StudyFolder.at(folder).open("runs.csv", FileKind.SHEET)) {
      return CsvGrid.read(text);
    }
  }

  private List<List<String>> cells(String content) throws IOException {
    return read(content).rows().stream().map(GridRow::cells).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r", "\r\n"})
  void linesEndInAnyOfThreeWays(String end) throws IOException {
    Grid grid = read(String.join(end, "run,build", "1,A", "", "# late", "2,B"));

    assertThat(grid.rows())
        .containsExactly(
            new GridRow(1, List.of("run", "build")),
            new GridRow(2, List.of("1", "A")),
            new GridRow(5, List.of("2", "B")));
    assertThat(grid.blanks()).isEqualTo(1);
    assertThat(grid.comments()).isEqualTo(1);
    assertThat(grid.findings()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"run,build|1,A", "run;build|1;A", "run\tbuild|1\tA", "sep=;|run;build"})
  void theHeaderTellsTheDelimiter(String header, String row) throws IOException {
    List<List<String>> cells = cells(header + "\n" + row);
    assertThat(cells.get(cells.size() - 1)).hasSize(2);
  }

  @Test
  void semicolonsDoNotProveADecimalComma() throws IOException {
    assertThat(read("run;water\n1;1.5 kg\n").mark()).isEqualTo(DecimalMark.UNKNOWN);
    assertThat(read("run;water\n1;1,5 kg\n").mark()).isEqualTo(DecimalMark.COMMA);
    assertThat(read("run,water\n1,\"1,300 g\"\n").mark()).isEqualTo(DecimalMark.POINT);
    assertThat(read("run,water\n1,\"1,5 kg\"\n").mark()).isEqualTo(DecimalMark.UNKNOWN);
    assertThat(read("run;water\n1;1,250 kg\n").mark()).isEqualTo(DecimalMark.UNKNOWN);
  }

  // RFC 4180, section 2, rules 5 to 7.
  @Test
  void quotesFollowRfc4180() throws IOException {
    assertThat(cells("a,b\n\"x, y\",\"says \"\"hi\"\"\"\n\"two\nlines\",5\" pot\n"))
        .containsExactly(
            List.of("a", "b"), List.of("x, y", "says \"hi\""), List.of("two\nlines", "5\" pot"));
  }

  @Test
  void aQuoteNeverClosedCostsOneLineOnly() throws IOException {
    Grid grid = read("a,b\n1,\"open\n2,fine\n3,fine\n");

    assertThat(grid.rows()).extracting(GridRow::line).containsExactly(1, 3, 4);
    assertThat(grid.findings())
        .extracting(Finding::toString)
        .containsExactly(
            "runs.csv, line 2: error: a quotation mark is opened on this line and never closed, so"
                + " the line was set aside. Put the whole cell in quotation marks, and write each"
                + " one inside it twice.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1,at 5\"", "1,13 3/16\"", "\"1\",13 3/16\""})
  void inchMarksNeedNoQuoting(String row) throws IOException {
    assertThat(cells("run,width\n" + row + "\n2,3\n"))
        .hasSize(3)
        .element(1)
        .asString()
        .endsWith("\"]");
  }

  @Test
  void textAfterAClosingQuoteIsSaid() throws IOException {
    Grid grid = read("a,b\n\"x\" y,1\n2,3\n");

    assertThat(grid.rows()).extracting(GridRow::line).containsExactly(1, 3);
    assertThat(grid.findings()).singleElement().asString().contains("goes on after its closing");
  }

  @Test
  void aSheetFullOfOpenQuotesIsGivenUp() throws IOException {
    StringBuilder text = new StringBuilder("a,b\n");
    for (int i = 0; i < 200_000; i++) {
      text.append(i).append(i % 2 == 0 ? ",\"open\n" : ",x\n");
    }
    // Every other opening mark closes the one before; what remains must not be searched for ever.
    assertThat(read(text.toString()).findings()).isNotEmpty();
  }

  @Test
  void aCommentMayHoldAnOpenQuote() throws IOException {
    assertThat(cells("# see,\"note\na,b\n#x,\"y\n1,2\n"))
        .containsExactly(List.of("a", "b"), List.of("1", "2"));
  }

  @Test
  void aColumnNumberIsNotAComment() throws IOException {
    assertThat(cells("column,role\n#3,flame\n# 3,flame\n"))
        .containsExactly(List.of("column", "role"), List.of("#3", "flame"));
  }

  @Test
  void limitsHaveTheirSentences() throws IOException {
    assertThat(read("a,b\n1," + "x".repeat(70_000)).findings().toString())
        .contains("line 2: error: a cell of this row is longer than 64 KiB");
    assertThat(read("a,b\n" + "x".repeat(2_000_000)).findings().toString())
        .contains("line 2: error: this line is longer than 1 MiB");
    assertThat(read("a,b\n" + ",1".repeat(1_001)).findings().toString())
        .contains("line 2: error: this row has more than 1,000 cells");
  }

  @Test
  void rowsBeforeTheLimitAreKept() throws IOException {
    assertThat(cells("a,b\n1,2\n" + "x".repeat(2_000_000))).hasSize(2);
  }
}
