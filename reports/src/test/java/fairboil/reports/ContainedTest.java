package fairboil.reports;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.Results;
import fairboil.analysis.fault.Fault;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.reports.chart.Painter;
import fairboil.reports.output.OutputFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What nobody foresaw costs the part of the report in which it happens, and no other. */
class ContainedTest {

  private static final Results SAMPLE = SampleResults.typical(DisplayUnits.METRIC);
  private static final Painter EASY = sheet -> new byte[] {1, 2, 3};

  @TempDir private Path temp;

  /** Fails at all charts that are about the peak. */
  private static final Painter BROKEN =
      sheet -> {
        if (sheet.title().contains("peak")) {
          throw new IllegalStateException("unforeseen");
        }
        return new byte[] {1, 2, 3};
      };

  private List<Fault> write(Results results, Painter painter, int threads, String name)
      throws IOException {
    try (OutputFolder folder = OutputFolder.open(temp.resolve(name), List.of())) {
      List<Fault> faults = new Report(results, folder).write(painter, threads);
      folder.commit();
      return faults;
    }
  }

  private String read(String file) throws IOException {
    return Files.readString(temp.resolve(file));
  }

  private long charts(String report) throws IOException {
    try (Stream<Path> charts = Files.list(temp.resolve(report).resolve("charts"))) {
      return charts.count();
    }
  }

  @Test
  void aChartAtWhichTheProgramFailsLeavesASentenceInItsPlace() throws IOException {
    assertThat(write(SAMPLE, EASY, 1, "whole")).isEmpty();
    List<Fault> faults = write(SAMPLE, BROKEN, 2, "report");
    assertThat(faults).isNotEmpty();
    assertThat(faults)
        .allSatisfy(fault -> assertThat(fault.part().toString()).startsWith("the chart "));
    assertThat(charts("report")).isPositive().isEqualTo(charts("whole") - faults.size());
    assertThat(read("whole/index.html")).doesNotContain("This chart is missing");
    assertThat(read("report/index.html")).contains("This chart is missing", "Beware: this program");
    assertThat(read("report/tables/findings.csv"))
        .contains(faults.get(0).finding().problem().toString());
    assertThat(read("report/tables/runs.csv")).isEqualTo(read("whole/tables/runs.csv"));
    assertThat(write(SAMPLE, BROKEN, 1, "report")).isEqualTo(faults);
  }

  private static RunResult withoutFuel(RunResult run) {
    return new RunResult(
        run.run(),
        run.build(),
        run.inclusion(),
        run.state(),
        run.conditions(),
        run.timeline(),
        run.flame(),
        run.boil(),
        run.energy(),
        null,
        run.sketch(),
        run.source(),
        run.rows(),
        run.samples(),
        run.findings());
  }

  @Test
  void aRunAndATableAtWhichTheProgramFailsCostThemselvesOnly() throws IOException {
    Results broken = Altered.runs(SAMPLE, ContainedTest::withoutFuel);
    List<Fault> faults = write(broken, EASY, 2, "report");
    String run = SAMPLE.runs().get(0).run().key().name();
    assertThat(faults)
        .extracting(fault -> fault.part().toString())
        .contains("the table runs.csv", "run " + run + " on the page");
    assertThat(temp.resolve("report/tables/runs.csv")).doesNotExist();
    assertThat(read("report/tables/builds.csv")).contains("mean");
    assertThat(read("report/index.html"))
        .contains("The program failed at this part of the page", "id=\"cautions\"");
    assertThat(read("report/tables/datapackage.json"))
        .contains("findings.csv")
        .doesNotContain("\"runs.csv\"");
  }
}
