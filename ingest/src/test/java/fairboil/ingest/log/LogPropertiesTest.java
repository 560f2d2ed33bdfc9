package fairboil.ingest.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.ingest.choice.Role;
import fairboil.ingest.grid.StudyFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/** One table, written in many ways, is one log. */
class LogPropertiesTest {

  private static Path folder;

  @BeforeContainer
  static void makeFolder() throws IOException {
    folder = Files.createTempDirectory("fairboil-logs");
  }

  @AfterContainer
  static void removeFolder() throws IOException {
    Files.deleteIfExists(folder.resolve("log.csv"));
    Files.delete(folder);
  }

  private static Log read(String text) throws IOException {
    Files.writeString(folder.resolve("log.csv"), text, StandardCharsets.UTF_8);
    LogReader reader = new LogReader(StudyFolder.at(folder), Runs.STUDY, List.of());
    OpenedLog opened = reader.open(Runs.of("log.csv"));
    return opened.log().orElseThrow(() -> new AssertionError(opened.findings() + "\n" + text));
  }

  private static String table(String header, List<Double> flame, IntFunction<String> time) {
    StringBuilder text = new StringBuilder(header);
    for (int i = 0; i < flame.size(); i++) {
      text.append(time.apply(i));
      text.append(String.format(Locale.ROOT, ",%.1f\n", flame.get(i)));
    }
    return text.toString();
  }

  private static double[] flame(Log log) {
    return log.channel(Role.FLAME).orElseThrow().values().asDoubleArray();
  }

  private static double[] seconds(Log log) {
    return log.time().seconds().asDoubleArray();
  }

  @Property(tries = 100)
  void separatorsAndDecimalMarksDoNotMatter(
      @ForAll @Size(min = 5, max = 40) List<@DoubleRange(min = 20, max = 900) Double> readings)
      throws IOException {
    String text = table("time (s),flame (°C)\n", readings, Integer::toString);
    double[] expected = flame(read(text));
    String semicolons = text.replace(',', ';').replace('.', ',');
    for (String variant :
        List.of(
            text.replace(',', ';'),
            text.replace(',', '\t'),
            semicolons,
            semicolons.replace(';', '\t'),
            text.replace("\n", "\r\n"),
            text.replace("\n", "\r"),
            text.replace("time (s)", "time_s").replace("flame (°C)", "flame_C").replace(',', ' '),
            "\ufeff" + text,
            "# " + readings.size() + " readings\n" + text)) {
      assertThat(flame(read(variant))).as(variant).isEqualTo(expected);
    }
  }

  @Property(tries = 100)
  void aShiftOfAllTimesDoesNotMatter(
      @ForAll @Size(min = 5, max = 40) List<@DoubleRange(min = 20, max = 900) Double> readings,
      @ForAll @IntRange(min = -5000, max = 2_000_000) int shift)
      throws IOException {
    String header = "time (s),flame (°C)\n";
    Log log = read(table(header, readings, Integer::toString));
    Log shifted = read(table(header, readings, i -> Integer.toString(i + shift)));
    assertThat(seconds(shifted)).isEqualTo(seconds(log));
    assertThat(flame(shifted)).isEqualTo(flame(log));
  }

  @Property(tries = 100)
  void howTimeIsWrittenDoesNotMatter(
      @ForAll @Size(min = 5, max = 40) List<@DoubleRange(min = 20, max = 900) Double> readings,
      @ForAll @IntRange(min = 3600, max = 80_000) int start)
      throws IOException {
    String flame = ",flame (°C)\n";
    double[] expected = seconds(read(table("time (s)" + flame, readings, i -> "" + 5 * i)));
    List<IntFunction<String>> clocks =
        List.of(
            i -> Spell.elapsed(start + 5 * i),
            i -> "2026-03-14 " + padded(start + 5 * i),
            i -> "14.03.2026 " + padded(start + 5 * i),
            i -> "03/14/2026 " + padded(start + 5 * i));
    for (IntFunction<String> clock : clocks) {
      Log log = read(table("Time" + flame, readings, clock));
      assertThat(seconds(log)).isEqualTo(expected);
      assertThat(log.time().startSecondOfDay()).hasValue(start);
    }
    double[] millis = seconds(read(table("time (ms)" + flame, readings, i -> "" + 5000 * i)));
    assertThat(millis).isEqualTo(expected);
  }

  private static String padded(int seconds) {
    String text = Spell.elapsed(seconds);
    return text.indexOf(':') == 1 ? "0" + text : text;
  }

  // °F = 1.8 °C + 32: NIST SP 811, appendix B.9.
  @Property(tries = 100)
  void unitsAreConverted(
      @ForAll @Size(min = 5, max = 40) List<@DoubleRange(min = 20, max = 900) Double> readings)
      throws IOException {
    List<Double> fahrenheit = readings.stream().map(c -> 1.8 * c + 32).toList();
    double[] celsius = flame(read(table("time (s),flame (°C)\n", readings, Integer::toString)));
    double[] converted = flame(read(table("time (s),flame (°F)\n", fahrenheit, Integer::toString)));
    for (int i = 0; i < celsius.length; i++) {
      assertThat(converted[i]).isCloseTo(celsius[i], within(0.051 / 1.8 + 0.051));
    }
  }
}
