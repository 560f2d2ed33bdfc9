package fairboil.reports.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairboil.analysis.Results;
import fairboil.analysis.fault.Faults;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.InputOpener;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.grid.UnreadableException;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.Altered;
import fairboil.reports.SampleResults;
import fairboil.reports.chart.Format;
import fairboil.reports.chart.Press;
import fairboil.reports.chart.Sheet;
import fairboil.reports.chart.Tint;
import fairboil.reports.output.OutputException;
import fairboil.reports.output.OutputFolder;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The kit's texts and its archive, without drawing. */
class QuoteKitTest {

  private static final Press NO_PRESS =
      new Press() {
        @Override
        public byte[] png(Sheet sheet, Format format, Tint tint) {
          return new byte[0];
        }

        @Override
        public byte[] pdf(Sheet sheet, Format format, String title) {
          return new byte[0];
        }
      };

  private static final InputOpener INPUTS =
      file -> new ByteArrayInputStream(file.name().getBytes(StandardCharsets.UTF_8));

  @TempDir private Path temp;

  private SortedMap<String, String> texts(Results results) throws IOException {
    SortedMap<String, String> texts = new TreeMap<>();
    Path out = Files.createTempDirectory(temp, "kit").resolve("out");
    try (OutputFolder folder = OutputFolder.open(out, List.of())) {
      new QuoteKit(results, folder, "1.2.3", new Faults()).write(NO_PRESS, 2, INPUTS);
      folder.commit();
    }
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.filter(it -> it.toString().matches(".*\\.(md|txt)")).toList()) {
        texts.put(out.relativize(file).toString().replace('\\', '/'), Files.readString(file));
      }
    }
    return texts;
  }

  private static Results hostile(String text) {
    Row settings =
        Row.at(Place.of("study.csv"))
            .put(Settings.TITLE, text)
            .put(Settings.QUESTION, text)
            .build();
    Results named =
        Altered.settings(
            SampleResults.named(text, text, text + " 2", text + " 3", text + " 4"), settings);
    Results noted =
        Altered.rows(
            named,
            row -> Row.at(row.place()).put(RunsSheet.RUN, text).put(RunsSheet.FUEL, text).build());
    return Altered.findings(noted, List.of(Finding.error(Place.of(text, 1, text), text, text)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "a | b || c",
        "# x\n## y\r\n- z\n```\n> q\n\n---",
        "[x](javascript:alert(1)) ![y](http://example.org/z.png)",
        "*a* _b_ `c` ~~d~~ $e$ \\",
        "&lt;b&gt; &amp;",
        "\u202egnp.exe\u2066 \u05d0\u05d1",
        "nul\u0000bell\u0007\u2028line"
      })
  void hostileTextsChangeNothingButTheirOwnPlaces(String text) throws IOException {
    SortedMap<String, String> harmless = texts(hostile("harmless"));
    SortedMap<String, String> kit = texts(hostile(text));

    assertThat(kit).hasSameSizeAs(harmless);
    assertThat(kit.keySet()).allMatch(name -> name.matches("[a-z0-9./-]+"));
    for (String name : List.of("quote/critic.md", "quote/claims.md", "quote/citation.txt")) {
      assertThat(kit.get(name).lines()).hasSameSizeAs(harmless.get(name).lines().toList());
      assertThat(kit.get(name).chars())
          .noneMatch(it -> Character.isISOControl(it) && it != '\n')
          .noneMatch(it -> it == 0x202e || it == 0x2028);
    }
    for (String name : List.of("quote/critic.md", "quote/claims.md")) {
      assertThat(bare(kit.get(name))).doesNotContain("<", "[", "`", "$", "~", "&");
      assertThat(cells(kit.get(name))).isEqualTo(cells(harmless.get(name)));
    }
  }

  /** Without what a backslash makes plain: CommonMark 0.31, 2.4. */
  private static String bare(String markdown) {
    return markdown.replaceAll("\\\\[!-/:-@\\[-`{-~]", "");
  }

  private static List<Long> cells(String markdown) {
    return bare(markdown)
        .lines()
        .map(line -> line.chars().filter(it -> it == '|').count())
        .toList();
  }

  @Test
  void lineStartsAreNoMarks() {
    assertThat(Markdown.plain("- x")).isEqualTo("\\- x");
    assertThat(Markdown.plain("3. x")).isEqualTo("3\\. x");
    assertThat(Markdown.plain("3.5 s")).isEqualTo("3.5 s");
    assertThat(Markdown.plain("=== x")).startsWith("\\=");
  }

  @Test
  void captionsTellWhatHowManyConditionsIntervalAndNormalising() throws IOException {
    SortedMap<String, String> texts = texts(SampleResults.typical(DisplayUnits.METRIC));
    String peak = texts.get("quote/charts/hole-effect-upper-normalised-peak.txt");

    assertThat(peak)
        .startsWith("Normalised peak against hole error, ring upper\n")
        .contains("10 builds, ", " burns", "95\u00a0%", "Conditions of the ", "air temperature")
        .contains("restated for air of 20.0 °C", "For those who cannot see it", "1.2.3");
    assertThat(texts.get("quote/charts/builds-boil-time.txt")).contains("Not normalised");
    assertThat(texts.get("quote/charts/builds-normalised-boil-time.txt"))
        .contains("energy scaling", "800 g of water");
  }

  @Test
  void usUnitsReachTheTexts() throws IOException {
    assertThat(
            texts(SampleResults.typical(DisplayUnits.US))
                .get("quote/charts/builds-normalised-peak.txt"))
        .contains("68.0 °F")
        .doesNotContain("°C");
  }

  @Test
  void criticsAreToldWhatWasLeftOutAndWhatFailed() throws IOException {
    Results results = Altered.withExcluded(SampleResults.typical(DisplayUnits.METRIC));
    String critic = texts(results).get("quote/critic.md");

    results.runs().stream()
        .filter(run -> !run.inclusion().included())
        .forEach(run -> assertThat(critic).contains("| " + run.run().key().name() + " | "));
    assertThat(critic)
        .contains("## What failed?", "went out", "did not boil", "## Was it a fair comparison?")
        .contains("| without, as reported | with |", "not told");
    assertThat(texts(SampleResults.empty()).get("quote/critic.md"))
        .contains("No run was left out.", "Nothing was compared.");
  }

  private static List<String> entries(String study, List<SourceFile> sources) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new DataArchive(study, sources, "1").write(INPUTS, out);
    List<String> names = new ArrayList<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        names.add(entry.getName());
      }
    }
    return names;
  }

  @Test
  void archivesHoldEachFileOnceAndNeverLeaveTheirFolder() throws IOException {
    SourceFile runs = new SourceFile("runs.csv", 8, "00");
    SourceFile roundabout = new SourceFile("logs/../logs//./a.csv", 21, "01");
    SourceFile direct = new SourceFile("logs/a.csv", 10, "01");

    assertThat(entries("my study", List.of(runs, roundabout, direct)))
        .containsExactly("remake.md", "hashes.txt", "my study/logs/a.csv", "my study/runs.csv");
    for (String study : List.of("..", "a/b", "x$(reboot)", "\"", "CON.", "a\nb", "-rf", "")) {
      assertThat(entries(study, List.of(runs)))
          .as(study)
          .allMatch(name -> name.matches("[a-z0-9.-]+(/runs\\.csv)?"))
          .noneMatch(name -> name.startsWith("."));
    }
  }

  @Test
  void aChangedFileIsOneSentence() {
    InputOpener changed =
        file -> {
          throw new UnreadableException(
              Place.of(file.name()),
              "this file was changed while the report was made",
              "run the command again");
        };
    DataArchive archive = new DataArchive("s", List.of(new SourceFile("runs.csv", 1, "00")), "1");

    assertThatThrownBy(() -> archive.write(changed, new ByteArrayOutputStream()))
        .isInstanceOf(OutputException.class)
        .hasMessageContaining("runs.csv")
        .hasMessageContaining("changed while the report was made")
        .hasMessageContaining("Run the command again.");
  }
}
