package fairboil.reports;

import fairboil.analysis.Results;
import fairboil.analysis.fault.Fault;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.plan.Answer;
import fairboil.analysis.plan.Plan;
import fairboil.analysis.plan.Wish;
import fairboil.ingest.finding.Place;
import fairboil.reports.chart.ChartException;
import fairboil.reports.chart.Painter;
import fairboil.reports.chart.Picture;
import fairboil.reports.chart.PowerChart;
import fairboil.reports.chart.xchart.XChartPainter;
import fairboil.reports.output.OutputFolder;
import fairboil.reports.page.PlanPage;
import fairboil.reports.print.OrderForm;
import fairboil.reports.print.Paper;
import fairboil.reports.print.Printed;
import fairboil.reports.table.PlanTables;
import fairboil.reports.table.ResultTable;
import fairboil.reports.template.PlannedRun;
import fairboil.reports.template.RunsToFill;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts the page, tables and running order of a plan into an output folder. */
public final class PlanWriter {

  private final Results results;
  private final Plan plan;
  private final OutputFolder folder;
  private final Faults faults = new Faults();

  private PlanWriter(Results results, Plan plan, OutputFolder folder) {
    this.results = results;
    this.plan = plan;
    this.folder = folder;
  }

  /**
   * Writes everything; the folder is left to be committed.
   *
   * @return parts at which the program failed, in their order
   * @throws ChartException if charts cannot be drawn on this machine
   * @throws IOException if something cannot be written
   */
  public static List<Fault> write(Results results, Plan plan, OutputFolder folder)
      throws ChartException, IOException {
    PlanWriter writer = new PlanWriter(results, plan, folder);
    writer.write(XChartPainter.withBundledFont());
    return writer.faults.all();
  }

  private void write(Painter painter) throws IOException {
    Map<Wish.Kind, Picture> pictures = new EnumMap<>(Wish.Kind.class);
    for (Answer answer : plan.answers()) {
      pictures.put(answer.wish().kind(), picture(answer, pictures.size() + 1, painter));
    }
    contain("index.html", new PlanPage(results, plan, pictures, Program.version())::write);
    List<ResultTable> tables =
        faults
            .contain("the tables", Place.of("tables"), () -> PlanTables.of(plan))
            .orElse(List.of());
    for (ResultTable table : tables) {
      faults.contain(
          "the table " + table.schema().file(),
          Place.of("tables/" + table.schema().file()),
          () -> folder.addText("tables/" + table.schema().file(), table::writeCsv));
    }
    contain("sheets/runs.csv", out -> out.write(runs()));
    for (Paper paper : Paper.values()) {
      faults.contain(
          "the form of the running order on " + paper.slug(),
          Place.of("sheets"),
          () -> form(paper));
    }
  }

  private void contain(String file, OutputFolder.Content content) throws IOException {
    faults.contain(file, Place.of(file), () -> folder.add(file, content));
  }

  private byte[] runs() {
    return RunsToFill.of(results.study(), plan).getBytes(StandardCharsets.UTF_8);
  }

  private OutputFolder.Written form(Paper paper) throws IOException {
    List<PlannedRun> order = PlannedRun.of(results.study(), plan);
    Printed form = OrderForm.of(results.study().name(), order, paper);
    return folder.add("sheets/" + form.name(), form::writeTo);
  }

  /** The chart of a wish, added to the folder, or what stands in its place. */
  private Picture picture(Answer answer, int number, Painter painter) throws IOException {
    double power = plan.asked().power();
    Optional<Picture> picture =
        faults.contain(
            "the chart of wish " + number,
            Place.of("charts"),
            () -> PowerChart.of(answer, power, number, painter));
    if (picture.isPresent()) {
      folder.add("charts/" + picture.get().name() + ".png", out -> out.write(picture.get().png()));
    }
    return picture.orElseGet(() -> PowerChart.lost(number));
  }
}
