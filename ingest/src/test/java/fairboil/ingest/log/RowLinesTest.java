package fairboil.ingest.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.opencsv.ICSVParser;
import com.opencsv.RFC4180ParserBuilder;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.TextLines;
import fairboil.ingest.grid.UnreadableException;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** The reference for splitting is OpenCSV's RFC 4180 parser. */
class RowLinesTest {

  private static List<List<String>> rows(String text, Separator separator) throws IOException {
    TextLines lines = new TextLines(Place.of("log.csv"), new StringReader(text));
    RowLines source = new RowLines(lines, separator);
    List<List<String>> rows = new ArrayList<>();
    while (source.advance()) {
      rows.add(source.split().strings());
    }
    return rows;
  }

  @Provide
  Arbitrary<String> unquotedLines() {
    return Arbitraries.strings()
        .withChars("0123456789.-+eE,;\t|abc °\u00a0")
        .ofMinLength(1)
        .ofMaxLength(40);
  }

  @Provide
  Arbitrary<String> quotedLines() {
    Arbitrary<String> plain =
        Arbitraries.strings().withChars("0123456789.,;").ofMaxLength(6).map(s -> "\"" + s + "\"");
    Arbitrary<String> doubled = Arbitraries.of("\"a \"\"b\"\" c\"", "\"\"", "12", "x");
    return Arbitraries.oneOf(plain, doubled)
        .list()
        .ofMinSize(1)
        .ofMaxSize(6)
        .map(cells -> String.join(",", cells));
  }

  @Property
  void splitsAsOpenCsvDoes(@ForAll("unquotedLines") String line) throws IOException {
    for (Separator separator :
        List.of(Separator.COMMA, Separator.SEMICOLON, Separator.TAB, Separator.PIPE)) {
      assertThat(rows(line, separator)).containsExactly(byOpenCsv(line, separator.mark()));
    }
  }

  @Property
  void splitsQuotedCellsAsOpenCsvDoes(@ForAll("quotedLines") String line) throws IOException {
    assertThat(rows(line, Separator.COMMA)).containsExactly(byOpenCsv(line, ','));
  }

  private static List<String> byOpenCsv(String line, char separator) throws IOException {
    ICSVParser parser = new RFC4180ParserBuilder().withSeparator(separator).build();
    return Arrays.stream(parser.parseLine(line)).map(RowLinesTest::trimmed).toList();
  }

  private static String trimmed(String cell) {
    int start = 0;
    int end = cell.length();
    while (start < end && LineCells.isBlank(cell.charAt(start))) {
      start++;
    }
    while (end > start && LineCells.isBlank(cell.charAt(end - 1))) {
      end--;
    }
    return cell.substring(start, end);
  }

  @Test
  void joinsLinesWithinQuotationMarks() throws IOException {
    assertThat(rows("a,\"b\nc\",d\n1,2,3\n", Separator.COMMA))
        .containsExactly(List.of("a", "b\nc", "d"), List.of("1", "2", "3"));
  }

  @Test
  void goesOnAfterAQuotationMarkThatIsNeverClosed() throws IOException {
    assertThat(rows("1,\"2\n3,4\n", Separator.COMMA))
        .containsExactly(List.of("1,\"2"), List.of("3", "4"));
  }

  @Test
  void keepsAQuotationMarkWithinACell() throws IOException {
    assertThat(rows("1,5\" pot,3", Separator.COMMA)).containsExactly(List.of("1", "5\" pot", "3"));
  }

  @Test
  void takesAQuotedCellAfterABlank() throws IOException {
    assertThat(rows("1, \"2\",3", Separator.COMMA)).containsExactly(List.of("1", "2", "3"));
    assertThat(rows("1,  \"2,5\", \"a, \"\"b\"\"\", c", Separator.COMMA))
        .containsExactly(List.of("1", "2,5", "a, \"b\"", "c"));
  }

  @Test
  void splitsAtRunsOfBlanks() throws IOException {
    assertThat(rows("  1  2.0\t3 ", Separator.BLANKS)).containsExactly(List.of("1", "2.0", "3"));
    assertThat(rows("a b, c,,d", Separator.COMMA_OR_BLANKS))
        .containsExactly(List.of("a", "b", "c", "", "d"));
  }

  @Test
  void refusesMoreThanAThousandCells() {
    assertThatThrownBy(() -> rows("1,".repeat(1000) + "1", Separator.COMMA))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining("1,000");
  }

  @Test
  void refusesACellAbove64KiB() {
    assertThatThrownBy(() -> rows("1," + "2".repeat(65_537), Separator.COMMA))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining("64 KiB");
  }
}
