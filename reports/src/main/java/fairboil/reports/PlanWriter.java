package fairboil.reports;

import fairboil.analysis.Results;
import fairboil.analysis.plan.Answer;
import fairboil.analysis.plan.Plan;
import fairboil.analysis.plan.Wish;
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
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Puts the page, tables and running order of a plan into an output folder. */
public final class PlanWriter {

  private PlanWriter() {}

  /**
   * Writes everything; the folder is left to be committed.
   *
   * @throws ChartException if charts cannot be drawn on this machine
   * @throws IOException if something cannot be written
   */
  public static void write(Results results, Plan plan, OutputFolder folder)
      throws ChartException, IOException {
    Map<Wish.Kind, Picture> pictures = pictures(plan);
    for (Picture picture : pictures.values()) {
      folder.add("charts/" + picture.name() + ".png", out -> out.write(picture.png()));
    }
    folder.add("index.html", new PlanPage(results, plan, pictures, Program.version())::write);
    for (ResultTable table : PlanTables.of(plan)) {
      folder.addText("tables/" + table.schema().file(), table::writeCsv);
    }
    String runs = RunsToFill.of(results.study(), plan);
    folder.addText("sheets/runs.csv", writer -> writer.write(runs));
    List<PlannedRun> order = PlannedRun.of(results.study(), plan);
    for (Paper paper : Paper.values()) {
      Printed form = OrderForm.of(results.study().name(), order, paper);
      folder.add("sheets/" + form.name(), form::writeTo);
    }
  }

  private static Map<Wish.Kind, Picture> pictures(Plan plan) throws ChartException {
    Painter painter = XChartPainter.withBundledFont();
    Map<Wish.Kind, Picture> pictures = new EnumMap<>(Wish.Kind.class);
    for (Answer answer : plan.answers()) {
      pictures.put(
          answer.wish().kind(),
          PowerChart.of(answer, plan.asked().power(), pictures.size() + 1, painter));
    }
    return pictures;
  }
}
