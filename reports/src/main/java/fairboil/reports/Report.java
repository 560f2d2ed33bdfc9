package fairboil.reports;

import fairboil.analysis.Results;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.chart.ChartBook;
import fairboil.reports.chart.Painter;
import fairboil.reports.chart.Picture;
import fairboil.reports.output.OutputFolder;
import fairboil.reports.output.OutputFolder.Written;
import fairboil.reports.page.Page;
import fairboil.reports.page.PageModel;
import fairboil.reports.page.RunNames;
import fairboil.reports.table.DataPackage;
import fairboil.reports.table.ResultTable;
import fairboil.reports.table.ResultTables;
import fairboil.reports.words.AnswerWords;
import fairboil.reports.words.Display;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * One report on its way into its folder. Pictures of runs are kept only where the page holds them;
 * where runs have pages of their own, each is written and dropped.
 */
final class Report {

  private final Results results;
  private final OutputFolder folder;
  private final boolean runsStandBeside;
  private final Page runPages;
  private final RunNames names;
  private final Map<String, RunResult> unwritten = new LinkedHashMap<>();
  private final List<Picture> ofStudy = new ArrayList<>();
  private final Map<String, Picture> ofRuns = new LinkedHashMap<>();

  Report(Results results, OutputFolder folder) {
    PageModel withoutPictures =
        new PageModel(results, List.of(), run -> Optional.empty(), Program.version());
    this.results = results;
    this.folder = folder;
    this.runsStandBeside = withoutPictures.runsStandBeside();
    this.runPages = Page.of(withoutPictures);
    this.names = RunNames.of(results);
    results.runs().forEach(run -> unwritten.put(run.run().key().name(), run));
  }

  void write(Painter painter, int threads) throws IOException {
    FutureTask<Void> tables = new FutureTask<>(this::writeTables);
    new Thread(tables, "tables").start(); // while the charts are drawn
    Display display = Display.in(results.study().settings().get(Settings.SHOW_UNITS));
    ChartBook.of(results, display).draw(painter, threads, this::take);
    if (runsStandBeside) {
      for (RunResult run : List.copyOf(unwritten.values())) {
        writeBeside(run, Optional.empty());
      }
    }
    Page page = Page.of(new PageModel(results, ofStudy, this::trace, Program.version()));
    folder.add("index.html", page::write);
    await(tables);
  }

  private Void writeTables() throws IOException {
    List<DataPackage.Resource> resources = new ArrayList<>();
    for (ResultTable table : ResultTables.of(results)) {
      Written written = folder.addText("tables/" + table.schema().file(), table::writeCsv);
      resources.add(new DataPackage.Resource(table, written.bytes(), written.sha256()));
    }
    folder.addText("tables/" + DataPackage.FILE, tables(resources)::write);
    return null;
  }

  private DataPackage tables(List<DataPackage.Resource> resources) {
    return DataPackage.of(
        AnswerWords.of(results).title(), "fairboil " + Program.version(), resources);
  }

  private static void await(FutureTask<Void> task) throws IOException {
    try {
      task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while tables were written", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException told) {
        throw told;
      }
      throw new IllegalStateException(e.getCause());
    }
  }

  private void take(Picture picture) throws IOException {
    folder.add("charts/" + picture.name() + ".png", out -> out.write(picture.png()));
    if (picture.kind() != Picture.Kind.RUN) {
      ofStudy.add(picture);
    } else if (runsStandBeside) {
      writeBeside(Objects.requireNonNull(unwritten.get(picture.subject())), Optional.of(picture));
    } else {
      ofRuns.put(picture.subject(), picture);
    }
  }

  private void writeBeside(RunResult run, Optional<Picture> trace) throws IOException {
    unwritten.remove(run.run().key().name());
    folder.add(names.file(run), out -> runPages.writeRun(run, trace, out));
  }

  private Optional<Picture> trace(RunResult run) {
    return Optional.ofNullable(ofRuns.get(run.run().key().name()));
  }
}
