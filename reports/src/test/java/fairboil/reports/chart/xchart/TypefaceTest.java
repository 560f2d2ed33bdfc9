package fairboil.reports.chart.xchart;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.reports.chart.ChartException;
import fairboil.reports.chart.ChartMark.Weight;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TypefaceTest {

  @TempDir Path folder;

  @Test
  void theBundledFontIsUsed() throws ChartException {
    Typeface typeface = Typeface.load();

    assertThat(typeface.of(Weight.PLAIN, 12).getFontName(Locale.ROOT)).isEqualTo("DejaVu Sans");
    assertThat(typeface.of(Weight.BOLD, 12).getFontName(Locale.ROOT)).isEqualTo("DejaVu Sans Bold");
    assertThat(Typeface.class.getResource("DejaVu-LICENSE.txt")).isNotNull();
  }

  /**
   * On a machine whose fontconfig knows no font, there is one sentence, or pictures all the same.
   */
  @Test
  void aMachineWithoutFontsIsToldInOneSentence() throws IOException, InterruptedException {
    Path none = Files.writeString(folder.resolve("fonts.conf"), "<fontconfig/>");
    ProcessBuilder child =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                Child.class.getName())
            .redirectErrorStream(true);
    child.environment().put("FONTCONFIG_FILE", none.toString());
    child.environment().put("XDG_CACHE_HOME", folder.toString());
    Process process = child.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as(said).isZero();
    assertThat(said.strip()).isIn("drawn", Typeface.SENTENCE);
  }

  /** Loads the font and tells how it went. */
  static final class Child {

    private Child() {}

    public static void main(String[] args) {
      try {
        XChartPainter.withBundledFont();
        System.out.println("drawn");
      } catch (ChartException e) {
        System.out.println(e.getMessage());
      }
    }
  }
}
