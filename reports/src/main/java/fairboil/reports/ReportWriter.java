package fairboil.reports;

import fairboil.analysis.Results;
import fairboil.analysis.fault.Fault;
import fairboil.analysis.fault.Faults;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.InputOpener;
import fairboil.reports.chart.ChartException;
import fairboil.reports.chart.Press;
import fairboil.reports.chart.Rehearsal;
import fairboil.reports.chart.xchart.XChartPainter;
import fairboil.reports.output.OutputFolder;
import fairboil.reports.page.PageModel;
import fairboil.reports.quote.QuoteKit;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** Puts the tables, charts and pages of results into an output folder. */
public final class ReportWriter {

  private static final int OTHER_FILES = 20;

  private final FutureTask<XChartPainter> painter =
      new FutureTask<>(ReportWriter::rehearsedPainter);
  private final int threads = Runtime.getRuntime().availableProcessors();

  /**
   * Gets ready in a thread of its own, while something else is done: charts take a third of a
   * second to start. A writer that was not told to gets ready when it writes.
   */
  public void warmUp() {
    Thread thread = new Thread(painter, "warm-up");
    thread.setDaemon(true);
    thread.start();
  }

  private static XChartPainter rehearsedPainter() throws ChartException {
    XChartPainter painter = XChartPainter.withBundledFont();
    Rehearsal.of(painter);
    return painter;
  }

  /**
   * About how many files a report of those results has: the chart of each run, its page, others.
   */
  public static int files(Results results) {
    int runs = results.runs().size();
    return (runs > PageModel.MOST_RUNS_IN_PAGE ? 2 * runs : runs) + OTHER_FILES;
  }

  /**
   * Writes everything; the folder is left to be committed.
   *
   * @return parts at which the program failed, in their order
   * @throws ChartException if charts cannot be drawn on this machine
   * @throws IOException if something cannot be written
   */
  public List<Fault> write(Results results, OutputFolder folder)
      throws ChartException, IOException {
    return new Report(results, folder).write(painter(), threads);
  }

  /**
   * Writes the writer's kit; the folder is left to be committed.
   *
   * @param inputs gives the files of the study as they were read
   * @return parts at which the program failed, in their order
   * @throws ChartException if charts cannot be drawn on this machine
   * @throws IOException if something cannot be written, or a file of the study was changed
   */
  public List<Fault> writeQuote(Results results, OutputFolder folder, InputOpener inputs)
      throws ChartException, IOException {
    Press press = painter();
    Faults faults = new Faults();
    Place place = Place.of(QuoteKit.FOLDER);
    Optional<QuoteKit> kit =
        faults.contain(
            "the writer's kit",
            place,
            () -> new QuoteKit(results, folder, Program.version(), faults));
    if (kit.isPresent()) {
      kit.get().write(press, threads, inputs);
    }
    return faults.all();
  }

  private XChartPainter painter() throws ChartException {
    painter.run();
    try {
      return painter.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while the fonts were read", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof ChartException told) {
        throw told;
      }
      if (e.getCause() instanceof Error fatal) {
        throw fatal;
      }
      throw new IllegalStateException(e.getCause());
    }
  }
}
