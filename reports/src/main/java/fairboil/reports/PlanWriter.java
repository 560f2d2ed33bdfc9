package fairboil.reports;

import fairboil.analysis.Results;
import fairboil.analysis.plan.Plan;
import fairboil.reports.output.OutputFolder;
import fairboil.reports.page.PlanPage;
import fairboil.reports.table.PlanTables;
import fairboil.reports.table.ResultTable;
import fairboil.reports.template.RunsToFill;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;

/** Puts the page, tables and running order of a plan into an output folder. */
public final class PlanWriter {

  private PlanWriter() {}

  /** Writes everything; the folder is left to be committed. */
  public static void write(Results results, Plan plan, OutputFolder folder) throws IOException {
    add(folder, "index.html", new PlanPage(results, plan, Program.version())::write);
    for (ResultTable table : PlanTables.of(plan)) {
      add(folder, "tables/" + table.schema().file(), table::writeCsv);
    }
    String runs = RunsToFill.of(results.study(), plan);
    add(folder, "sheets/runs.csv", writer -> writer.write(runs));
  }

  private static void add(OutputFolder folder, String name, Text text) throws IOException {
    folder.add(
        name,
        out -> {
          Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
          text.writeTo(writer);
          writer.flush();
        });
  }

  /** Writes a text. */
  @FunctionalInterface
  private interface Text {
    void writeTo(Writer writer) throws IOException;
  }
}
