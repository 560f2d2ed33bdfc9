package fairboil.reports.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import fairboil.analysis.Results;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.reports.Altered;
import fairboil.reports.SampleResults;
import fairboil.reports.chart.ChartKey;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.Html.Attribute;
import fairboil.reports.words.Cautions;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PageTest {

  private static final Results SAMPLE = SampleResults.typical(DisplayUnits.METRIC);

  private final String page = SamplePages.written(SamplePages.pictured(SAMPLE));
  private final Html html = new Html(page);

  @Test
  void sectionsStandInTheirOrder() {
    List<String> wanted =
        List.of(
            "answer",
            "chart-effect-1",
            "fair",
            "trust",
            "builds",
            "holes",
            "runs",
            "claims",
            "methods",
            "cautions",
            "origin");
    assertThat(html.values("id").stream().filter(wanted::contains).toList()).isEqualTo(wanted);
  }

  @Test
  void everythingThatIsLinkedToIsThereOnce() {
    assertThat(html.values("id")).doesNotHaveDuplicates();
    List<String> targets =
        html.values("href").stream().map(href -> href.replaceFirst("^#", "")).toList();
    assertThat(html.values("id")).containsAll(targets);
    assertThat(html.values("id")).containsAll(html.values("aria-labelledby"));
  }

  /** HTML, "Fetching": these attributes load something; so do url() and import of CSS. */
  @Test
  void nothingIsLoadedFromElsewhere() {
    assertThat(html.values("src")).isNotEmpty().allMatch(it -> it.startsWith("data:image/png;"));
    assertThat(html.values("href")).isNotEmpty().allMatch(it -> it.startsWith("#"));
    assertThat(html.attributes())
        .extracting(Attribute::name)
        .doesNotContain("srcset", "poster", "data", "background", "action", "formaction", "ping");
    assertThat(html.tags()).doesNotContain("link", "iframe", "object", "embed", "base", "form");
    assertThat(html.inside("style")).doesNotContain("url(", "@import", "://");
    assertThat(html.inside("script")).doesNotContain("fetch", "XMLHttp", "import", "://");
  }

  @Test
  void noTagCarriesStyleOrScript() {
    assertThat(html.attributes())
        .extracting(Attribute::name)
        .noneMatch(name -> name.equals("style") || name.startsWith("on"));
  }

  /** Content Security Policy Level 3, section 6.7.3.3: the hash of what stands in the element. */
  @Test
  void thePolicyAllowsOurStyleAndScriptAlone() throws NoSuchAlgorithmException {
    Matcher policy =
        Pattern.compile("http-equiv=\"Content-Security-Policy\" content=\"([^\"]*)\"")
            .matcher(page);
    assertThat(policy.find()).isTrue();
    assertThat(policy.group(1).replace("&#39;", "'").split("; "))
        .contains(
            "default-src 'none'",
            "img-src data:",
            "style-src '" + hash(html.inside("style")) + "'",
            "script-src '" + hash(html.inside("script")) + "'");
  }

  private static String hash(String text) throws NoSuchAlgorithmException {
    byte[] hash =
        MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    return "sha256-" + Base64.getEncoder().encodeToString(hash);
  }

  /** WCAG 2.2, techniques H42 and G141: headings nest without leaving out a level. */
  @Test
  void headingsNest() {
    List<Integer> levels =
        html.tags().stream()
            .filter(tag -> tag.matches("h[1-6]"))
            .map(tag -> tag.charAt(1) - '0')
            .toList();
    assertThat(levels.get(0)).isEqualTo(1);
    assertThat(levels).filteredOn(level -> level == 1).hasSize(1);
    for (int i = 1; i < levels.size(); i++) {
      assertThat(levels.get(i)).isLessThanOrEqualTo(levels.get(i - 1) + 1);
    }
  }

  @Test
  void picturesAndTablesCanBeUnderstoodWithoutSight() {
    assertThat(html.attributes())
        .filteredOn(it -> it.tag().equals("img") && it.name().equals("alt"))
        .hasSize((int) html.tags().stream().filter("img"::equals).count())
        .allMatch(alt -> !alt.value().isBlank());
    long tables = html.tags().stream().filter("table"::equals).count();
    assertThat(html.tags().stream().filter("caption"::equals)).hasSize((int) tables);
    assertThat(html.attributes())
        .filteredOn(it -> it.tag().equals("th"))
        .allMatch(it -> !it.name().equals("scope") || it.value().matches("row|col"));
    assertThat(page).startsWith("<!DOCTYPE html>\n<html lang=\"en\">");
    assertThat(html.tags()).contains("main", "nav", "header", "footer");
  }

  @Test
  void everyRunHasItsPlaceAndItsTrace() {
    RunNames names = RunNames.of(SAMPLE);
    List<String> runs = SAMPLE.runs().stream().map(names::of).toList();
    assertThat(html.values("id")).containsAll(runs);
    assertThat(html.values("id")).containsAll(runs.stream().map(id -> "chart-" + id).toList());
    assertThat(html.values("href")).containsAll(runs.stream().map(id -> "#" + id).toList());
  }

  @Test
  void theAnswerLedgersClaimsAndOriginsAreThere() {
    assertThat(html.text())
        .contains("Does hole position matter for flame temperature?")
        .contains("38 of 39 runs")
        .contains("pot knocked over")
        .contains("every figure of the flame: the run has no log")
        .contains("Of 114,760 readings in them")
        .contains("Contradicted: the mean normalised peak, as a bare bead reads it, is 722 °C")
        .contains("fairboil 0.0-test")
        .contains("9f".repeat(32))
        .contains("seed of random numbers1");
  }

  @Test
  void everyCautionIsThere() {
    assertThat(html.text()).contains(Cautions.RULE);
    Cautions.POINTS.forEach(point -> assertThat(html.text()).contains(point.text()));
  }

  /** Words that promise what no interval holds. */
  @Test
  void nothingIsCorrectedOrSignificant() {
    assertThat(html.text().toLowerCase(Locale.ROOT))
        .doesNotContain("corrected", "significant", "p-value", "p value", "***", "optional[")
        .doesNotContainPattern("\\bp [=<] ?0?\\.")
        .doesNotContainPattern("\\b(nan|null)\\b");
  }

  @Test
  void timesReadAsAStopwatchShowsThem() {
    assertThat(html.text()).containsPattern("boil time \\(log\\)\\d+:\\d\\d min");
  }

  @Test
  void usUnitsReachEveryFigure() {
    String us =
        new Html(SamplePages.written(SamplePages.bare(SampleResults.typical(DisplayUnits.US))))
            .text();
    assertThat(us).contains("°F", "oz", "1/16 inch");
    assertThat(us.replaceAll("(?s)A (two|one)-wall stove peaks above \\d+ °C", ""))
        .doesNotContainPattern("[^(]°C[^)]");
  }

  @Test
  void equalFindingsAreOneLineWithACount() {
    List<Finding> findings =
        IntStream.rangeClosed(1, 500)
            .mapToObj(i -> Finding.note(Place.of("logs/a.csv", i), "the time stands still", ""))
            .toList();
    String text =
        new Html(SamplePages.written(SamplePages.bare(Altered.findings(SAMPLE, findings)))).text();
    assertThat(text.split("The time stands still", -1)).hasSize(2);
    assertThat(text).contains("500 times:", "and 497 more", "logs/a.csv, line 500");
  }

  @ParameterizedTest
  @EnumSource(DisplayUnits.class)
  void sameBytesWhateverTheMachineIsSetTo(DisplayUnits units) {
    String expected = SamplePages.written(SamplePages.bare(SampleResults.typical(units)));
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      assertThat(SamplePages.written(SamplePages.bare(SampleResults.typical(units))))
          .isEqualTo(expected);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void smallStudiesHaveAPage() {
    assertThat(new Html(SamplePages.written(SamplePages.bare(SampleResults.empty()))).text())
        .contains("There are no runs to stand on.", "There is no run in this study.");
    assertThat(new Html(SamplePages.written(SamplePages.bare(SampleResults.twoBuilds()))).text())
        .contains("2 builds: no line through 2 points can be tested; drill at least 2 more.");
  }

  @Test
  void manyRunsHavePagesOfTheirOwn() throws IOException {
    Results many = SampleResults.of(20, 4);
    PageModel model = SamplePages.pictured(many);
    assertThat(model.runsStandBeside()).isTrue();
    Html whole = new Html(SamplePages.written(model));
    List<String> files = many.runs().stream().map(run -> RunNames.of(many).file(run)).toList();
    assertThat(whole.values("href")).containsAll(files);
    assertThat(whole.values("id")).noneMatch(id -> id.startsWith("run-"));

    ByteArrayOutputStream own = new ByteArrayOutputStream();
    RunResult first = many.runs().get(0);
    ChartKey key = ChartKey.ofRun(Picture.Kind.RUN, first.run().key());
    Optional<Picture> trace = Optional.of(SamplePages.picture(key, "run-b1-1"));
    Page.of(model, new Faults()).writeRun(first, trace, own);
    Html run = new Html(own.toString(StandardCharsets.UTF_8));
    assertThat(run.inside("h1")).contains("B1-1");
    assertThat(run.values("href")).contains("../index.html#runs");
    assertThat(run.values("src")).hasSize(1);
  }

  @Test
  void namesOfRunsAreSafeAndUniqueIgnoringCase() {
    Results odd =
        SampleResults.named("d", "../../x", "CON", "A", "a", "é", "e", "\u05d0", "B".repeat(300));
    List<String> files = new ArrayList<>();
    odd.runs().forEach(run -> files.add(RunNames.of(odd).file(run)));
    assertThat(files)
        .doesNotHaveDuplicates()
        .allMatch(it -> it.matches("runs/run[-a-z0-9]*\\.html"));
    assertThat(files).allMatch(it -> it.length() < 80);
  }

  @Test
  void aStreamThatRefusesIsNotSilent() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int one) throws IOException {
            throw new IOException("no space left");
          }
        };
    assertThatIOException()
        .isThrownBy(() -> Page.of(SamplePages.bare(SAMPLE), new Faults()).write(full))
        .withMessageContaining("no space left");
  }
}
