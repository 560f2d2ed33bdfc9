package fairboil.ingest.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairboil.ingest.finding.Place;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SourceTextTest {

  private static final Place PLACE = Place.of("runs.csv");

  private record Decoded(String text, List<String> notes) {}

  private static Decoded decode(byte[] bytes) throws IOException {
    try (SourceText text = open(new ByteArrayInputStream(bytes))) {
      StringWriter out = new StringWriter();
      text.transferTo(out);
      return new Decoded(
          out.toString(),
          text.notes().stream().map(finding -> finding.problem().toString()).toList());
    }
  }

  private static SourceText open(InputStream in) throws IOException {
    return SourceText.open(PLACE, in, FileKind.SHEET);
  }

  private static byte[] hex(String digits) {
    return HexFormat.ofDelimiter(" ").parseHex(digits);
  }

  @Test
  void stripsTheMarkOfUtf8() throws IOException {
    assertThat(decode(hex("EF BB BF 72 75 6E 2C C2 B0 43")))
        .isEqualTo(new Decoded("run,°C", List.of()));
  }

  @Test
  void readsUtf16ByItsMark() throws IOException {
    assertThat(decode(hex("FF FE 54 00 2C 00 B0 00")).text()).isEqualTo("T,°");
    assertThat(decode(hex("FE FF 00 54 00 2C 00 B0")).text()).isEqualTo("T,°");
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16LE", "UTF-16BE"})
  void readsUtf16WithoutAMarkByItsPattern(String charset) throws IOException {
    Decoded decoded = decode("run,water (g)\n1,300\n".getBytes(Charset.forName(charset)));

    assertThat(decoded.text()).isEqualTo("run,water (g)\n1,300\n");
    assertThat(decoded.notes()).singleElement().asString().contains("UTF-16");
  }

  @Test
  void readsBytesThatAreNotUtf8AsWindows1252() throws IOException {
    assertThat(decode("ambient (°C)\n1,20\n".getBytes(Charset.forName("windows-1252"))))
        .isEqualTo(
            new Decoded(
                "ambient (°C)\n1,20\n",
                List.of(
                    "the file is not all UTF-8: 1 byte was read as Windows-1252 (the first is B0,"
                        + " \u201c°\u201d)")));
  }

  @Test
  void losesNoByteWhereverItStands() throws IOException {
    byte[] bytes = ("a".repeat(70_000) + "\n").getBytes(StandardCharsets.US_ASCII);
    for (int at : new int[] {4094, 4095, 4096, 65_535, 65_536, 70_000}) {
      byte[] old = bytes.clone();
      old[at] = (byte) 0xE2; // starts a character of three bytes that never comes
      Decoded decoded = decode(old);
      assertThat(decoded.text()).hasSize(bytes.length);
      assertThat(decoded.text().charAt(at)).isEqualTo('â');
    }
  }

  @Property(tries = 200)
  void textSurvivesUtf8AndUtf16(@ForAll long seed) throws IOException {
    String text = "run,build\n" + randomText(new Random(seed));

    assertThat(decode(text.getBytes(StandardCharsets.UTF_8)).text()).isEqualTo(text);
    assertThat(decode(("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE)).text())
        .isEqualTo(text);
  }

  private static String randomText(Random random) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 9_000; i++) {
      text.appendCodePoint(new int[] {'a', 'é', '½', '″', 0x1F525, '\n'}[random.nextInt(6)]);
    }
    return text.toString();
  }

  @Test
  void givesPairsToReadersOfSingleCharacters() throws IOException {
    try (SourceText text = open(new ByteArrayInputStream("🔥!".getBytes(StandardCharsets.UTF_8)))) {
      assertThat(new int[] {text.read(), text.read(), text.read(), text.read()})
          .containsExactly(0xD83D, 0xDD25, '!', -1);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"50 4B 03 04 14 00", "D0 CF 11 E0 A1 B1 1A E1", "50 4B 05 06 00 00 00 00"})
  void refusesWorkbooks(String start) {
    assertThatThrownBy(() -> decode(hex(start)))
        .hasMessage(
            "runs.csv: error: this is a spreadsheet workbook, not CSV. Save the sheet as CSV.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "00 00 00 00",
        "89 50 4E 47 0D 0A 1A 0A",
        "25 50 44 46 2D 31 2E 34",
        "01 02 03 41 42",
        "1F 8B 08 00"
      })
  void refusesWhatIsNotText(String start) {
    assertThatThrownBy(() -> decode(hex(start))).hasMessageContaining("this is not a text file");
  }

  @Test
  void keepsBlocksThatAPowerCutLeft() throws IOException {
    byte[] bytes = new byte[3_000];
    System.arraycopy("Time,T\n0,20\n".getBytes(StandardCharsets.US_ASCII), 0, bytes, 0, 12);
    assertThat(decode(bytes).text()).startsWith("Time,T\n0,20\n\0").hasSize(3_000);
  }

  @Test
  void anEndlessStreamIsStopped() {
    InputStream endless =
        new InputStream() {
          @Override
          public int read() {
            return 'a';
          }

          @Override
          public int read(byte[] target, int offset, int length) {
            java.util.Arrays.fill(target, offset, offset + length, (byte) 'a');
            return length;
          }
        };
    assertThatThrownBy(() -> open(endless).source()).hasMessageContaining("larger than 64 MB");
  }
}
