package fairboil.reports.table;

import static org.assertj.core.api.Assertions.assertThat;

import com.univocity.parsers.csv.CsvFormat;
import com.univocity.parsers.csv.CsvParser;
import com.univocity.parsers.csv.CsvParserSettings;
import fairboil.analysis.Results;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.reports.Altered;
import fairboil.reports.SampleResults;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The tables, read back by another CSV library than the one that writes them (univocity-parsers).
 */
class ResultTablesTest {

  private final Results results = SampleResults.typical(DisplayUnits.METRIC);

  @Test
  void tablesHaveTheirColumns() {
    assertHeader(
        "runs.csv",
        "run, build, design, included, reason, outcome, ambient_C, pressure_kPa, boiling_point_C,"
            + " water_kg, water_start_C, peak_C, peak_u_C, peak_u_independent_C, peak_at_s,"
            + " peak_rise_C, peak_normalised_C, peak_normalised_u_C, flame_steady_C,"
            + " flame_steady_u_C, hottest_water_C, plateau_offset_C, boil_time_s, boil_time_u_s,"
            + " boil_time_from, boil_time_stopwatch_s, lit_to_boil_s, burn_time_s, net_power_W,"
            + " power_growth_per_s, loss_W_per_K, loss_u_W_per_K, boil_time_energy_scaled_s,"
            + " boil_time_heat_balance_s, boil_time_normalised_s, boil_time_normalised_u_s,"
            + " boil_time_normalised_u_independent_s, boil_time_normalised_by, dry_fuel_kg,"
            + " burning_rate_g_per_min, firepower_W, efficiency, efficiency_without_char,"
            + " specific_consumption, fuel_per_boil_kg");
    assertHeader(
        "holes.csv",
        "build, ring, hole, along_error_mm, height_error_mm, deviation_mm, true_position_mm");
    assertHeader(
        "hole_error.csv",
        "build, ring, holes_intended, holes_measured, rotation_deg, rms_mm, rms_floor_mm, max_mm,"
            + " spacing_sd_mm, height_offset_mm, open_area_mm2, open_area_intended_mm2");
    assertHeader(
        "hole_effect.csv",
        "response, ring, model, term, estimate, std_error, df, ci_low, ci_high, p_value, runs,"
            + " builds, headline, verdict");
    assertHeader(
        "comparisons.csv",
        "measure, level, a, b, difference, std_error, df, ci_low, ci_high, p_value, p_adjusted,"
            + " method, verdict");
    assertHeader("repeatability.csv", "measure, level, sd, ci_low, ci_high, df");
    assertHeader(
        "variation.csv",
        "measure, level, cv, cv_ci_low, cv_ci_high, limit, limit_ci_low, limit_ci_high");
    assertHeader(
        "claims.csv",
        "claim, text, measure, verdict, estimate, ci_low, ci_high, confidence, wording");
    assertHeader("findings.csv", "severity, file, line, column, what, remedy");
  }

  @Test
  void buildsHaveMeanScatterAndIntervalOfEachMeasure() {
    List<String> header = Arrays.asList(read(results, "builds.csv").get(0));
    assertThat(header).startsWith("build", "design", "runs", "boiled");
    assertThat(header)
        .containsSequence(
            "normalised_boil_time_mean_s",
            "normalised_boil_time_sd_s",
            "normalised_boil_time_ci_low_s",
            "normalised_boil_time_ci_high_s")
        .contains("peak_mean_C", "efficiency_mean", "fuel_per_boil_ci_high_kg", "net_power_sd_W");
    assertThat(header).doesNotHaveDuplicates();
  }

  @Test
  void numbersReadBackExactly() {
    List<Map<String, String>> rows = rows(results, "runs.csv");
    assertThat(rows).hasSameSizeAs(results.runs());
    for (int i = 0; i < rows.size(); i++) {
      RunResult run = results.runs().get(i);
      assertThat(rows.get(i)).containsEntry("run", run.run().key().name());
      assertSame(number(rows.get(i), "peak_C"), run.flame().peak());
      assertSame(number(rows.get(i), "ambient_C"), run.conditions().ambient());
      assertSame(number(rows.get(i), "boil_time_s"), run.boil().boilTime());
    }
  }

  /** Pascal to kilopascal and metre to millimetre: the SI prefixes. */
  @Test
  void unitsAreThoseOfTheHeader() {
    Map<String, String> run = rows(results, "runs.csv").get(0);
    assertThat(number(run, "pressure_kPa")).isCloseTo(97.4, Assertions.within(1e-9));
    Map<String, String> ring = rows(results, "hole_error.csv").get(0);
    assertThat(number(ring, "rms_mm"))
        .isCloseTo(1000 * results.rings().get(0).rms().orNaN(), Assertions.within(1e-12));
    Map<String, String> slope = rows(results, "hole_effect.csv").get(0);
    assertThat(slope).containsEntry("term", "hole error").containsEntry("headline", "yes");
    assertThat(number(slope, "estimate"))
        .isCloseTo(
            results.holeEffects().get(0).headline().orElseThrow().estimate() / 1000,
            Assertions.within(1e-9));
    Map<String, String> intercept = rows(results, "hole_effect.csv").get(1);
    assertThat(intercept).containsEntry("term", "intercept").containsEntry("headline", "no");
    assertThat(number(intercept, "estimate"))
        .isEqualTo(results.holeEffects().get(0).rows().get(1).estimate());
  }

  @Test
  void showingUsUnitsChangesNoNumber() {
    Results us = SampleResults.typical(DisplayUnits.US);
    for (String file : List.of("runs.csv", "builds.csv", "hole_effect.csv", "hole_error.csv")) {
      assertThat(csv(us, file)).isEqualTo(csv(results, file));
    }
  }

  @Test
  void whatIsNotKnownIsAnEmptyCell() {
    Map<String, String> stopwatchOnly =
        rows(results, "runs.csv").stream()
            .filter(row -> "stopwatch".equals(row.get("boil_time_from")))
            .findFirst()
            .orElseThrow();
    assertThat(stopwatchOnly.get("peak_C")).isNull();
    assertThat(stopwatchOnly.get("efficiency")).isNull();
    assertThat(csv(results, "runs.csv")).doesNotContain("NaN", "null", "Infinity", "Optional");
  }

  @Test
  void excludedRunsStayWithTheirReason() {
    assertThat(rows(results, "runs.csv"))
        .filteredOn(row -> row.get("included").equals("no"))
        .singleElement()
        .satisfies(row -> assertThat(row).containsEntry("reason", "pot knocked over"));
  }

  @Test
  void tooFewBuildsAreARowWithoutNumbers() {
    Map<String, String> row = rows(SampleResults.twoBuilds(), "hole_effect.csv").get(0);
    assertThat(row)
        .containsEntry("verdict", "too few builds")
        .containsEntry("builds", "2")
        .containsEntry("runs", "6");
    assertThat(row.get("estimate")).isNull();
  }

  @Test
  void comparisonsAndScatterAreAsWorkedOut() {
    List<Map<String, String>> pairs = rows(results, "comparisons.csv");
    assertThat(pairs)
        .hasSize(results.comparisons().size() + results.rankComparisons().size())
        .isNotEmpty();
    assertThat(number(pairs.get(0), "difference"))
        .isEqualTo(results.comparisons().get(0).difference());
    assertThat(pairs.get(0).get("verdict"))
        .isEqualTo(results.comparisons().get(0).verdict().label());
    List<Map<String, String>> scatter = rows(results, "repeatability.csv");
    assertThat(scatter).hasSameSizeAs(results.repeatability()).isNotEmpty();
    assertThat(number(scatter.get(0), "sd")).isEqualTo(results.repeatability().get(0).sd());
  }

  @Test
  void wordingOfClaimsIsThatOfThePage() {
    assertThat(rows(results, "claims.csv").get(0).get("wording"))
        .startsWith(
            ("Supported: the mean normalised peak, as a bare bead reads it, is 738 °C (98.8 %"
                    + " interval 732 to 744)")
                .replace(" %", "\u00a0%"));
  }

  /** OWASP, "CSV Injection": cells that start with one of these run as formulas. */
  @ParameterizedTest
  @ValueSource(
      strings = {"=1+1", "+1", "-1 degrees", "@SUM(A1)", "\tx", "\rx", "=cmd|' /C calc'!A0"})
  void wordsThatASpreadsheetWouldRunAreGuarded(String words) {
    Results hostile =
        Altered.findings(
            results, List.of(Finding.note(Place.of("runs.csv", 1), words, "remedy: " + words)));
    Map<String, String> row = rows(hostile, "findings.csv").get(0);
    assertThat(row.get("what")).isEqualTo("'" + words);
    assertThat(row.get("remedy")).isEqualTo("remedy: " + words);
  }

  @Test
  void numbersAreNotGuarded() {
    assertThat(csv(results, "runs.csv")).contains(",-").doesNotContain("'-");
  }

  @ParameterizedTest
  @ValueSource(strings = {"a \"quoted\" word", "one,two", "line\nbreak", "\"", ",\",\n", "ünï ☃"})
  void cellsReadBackAsTheyWere(String words) {
    Results odd =
        Altered.findings(
            results, List.of(Finding.note(Place.of("a, b.csv", 3, "c\"d"), words, "")));
    Map<String, String> row = rows(odd, "findings.csv").get(0);
    assertThat(row)
        .containsEntry("what", words)
        .containsEntry("file", "a, b.csv")
        .containsEntry("line", "3")
        .containsEntry("column", "c\"d");
  }

  @Test
  void linesEndWithALineFeedAlone() {
    assertThat(csv(results, "runs.csv")).doesNotContain("\r").endsWith("\n");
  }

  @Test
  void sameBytesWhateverTheLocale() {
    String expected = csv(results, "runs.csv");
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(csv(SampleResults.typical(DisplayUnits.METRIC), "runs.csv")).isEqualTo(expected);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void everyColumnSaysWhatItMeans() {
    for (ResultTable table : ResultTables.of(results)) {
      assertThat(table.schema().oneRowIs()).isNotBlank();
      assertThat(table.schema().columns()).allSatisfy(it -> assertThat(it.meaning()).isNotBlank());
    }
  }

  @Test
  void aWriterThatRefusesIsNotSilent() {
    Writer full =
        new Writer() {
          @Override
          public void write(char[] text, int from, int length) throws IOException {
            throw new IOException("no space left");
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    Assertions.assertThatIOException()
        .isThrownBy(() -> ResultTables.of(results).get(0).writeCsv(full))
        .withMessageContaining("no space left");
  }

  private void assertHeader(String file, String columns) {
    assertThat(read(results, file).get(0)).as(file).containsExactly(columns.split(", "));
  }

  private static void assertSame(double number, Figure figure) {
    assertThat(Double.valueOf(number)).isEqualTo(Double.valueOf(figure.orNaN()));
  }

  private static double number(Map<String, String> row, String column) {
    String cell = row.get(column);
    return cell == null ? Double.NaN : Double.parseDouble(cell);
  }

  private static List<Map<String, String>> rows(Results results, String file) {
    List<String[]> lines = read(results, file);
    return lines.stream().skip(1).map(line -> row(lines.get(0), line)).toList();
  }

  private static Map<String, String> row(String[] header, String[] line) {
    assertThat(line).hasSameSizeAs(header);
    Map<String, String> row = new HashMap<>();
    for (int i = 0; i < header.length; i++) {
      row.put(header[i], line[i]);
    }
    return row;
  }

  private static List<String[]> read(Results results, String file) {
    CsvParserSettings settings = new CsvParserSettings();
    CsvFormat format = new CsvFormat();
    format.setLineSeparator("\n");
    settings.setFormat(format);
    settings.setIgnoreLeadingWhitespaces(false);
    settings.setIgnoreTrailingWhitespaces(false);
    settings.setIgnoreLeadingWhitespacesInQuotes(false);
    settings.setNormalizeLineEndingsWithinQuotes(false);
    settings.setMaxCharsPerColumn(-1);
    return new CsvParser(settings).parseAll(new StringReader(csv(results, file)));
  }

  private static String csv(Results results, String file) {
    StringWriter writer = new StringWriter();
    try {
      ResultTables.of(results).stream()
          .filter(table -> table.schema().file().equals(file))
          .findFirst()
          .orElseThrow()
          .writeCsv(writer);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return writer.toString();
  }
}
