package fairboil.reports;

import fairboil.analysis.Results;
import fairboil.analysis.fault.Fault;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.finding.Place;
import fairboil.ingest.sheet.Key;
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
  private final Map<Key, RunResult> unwritten = new LinkedHashMap<>();
  private final List<Picture> ofStudy = new ArrayList<>();
  private final Map<Key, Picture> ofRuns = new LinkedHashMap<>();
  private final Faults faults = new Faults();

  Report(Results results, OutputFolder folder) {
    PageModel withoutPictures =
        new PageModel(results, List.of(), run -> Optional.empty(), Program.version());
    this.results = results;
    this.folder = folder;
    this.runsStandBeside = withoutPictures.runsStandBeside();
    this.runPages = Page.of(withoutPictures, faults);
    this.names = RunNames.of(results);
    results.runs().forEach(run -> unwritten.put(run.run().key(), run));
  }

  /** Writes everything but that at which the program fails, and tells what that is. */
  List<Fault> write(Painter painter, int threads) throws IOException {
    FutureTask<List<Fault>> tables = new FutureTask<>(() -> writeTables(results));
    new Thread(tables, "tables").start(); // while the charts are drawn
    Display display = Display.in(results.study().settings().get(Settings.SHOW_UNITS));
    Optional<ChartBook> charts =
        faults.contain(
            "all charts", Place.of("charts"), () -> ChartBook.of(results, display, faults));
    if (charts.isPresent()) {
      charts.get().draw(painter, threads, this::take);
    }
    if (runsStandBeside) {
      for (RunResult run : List.copyOf(unwritten.values())) {
        writeBeside(run, Optional.empty());
      }
    }
    faults.addAll(await(tables));
    writePage();
    if (!faults.all().isEmpty()) {
      writeTablesAgain();
    }
    return faults.all();
  }

  private void writePage() throws IOException {
    Results known = results.with(faults.all());
    Page page = Page.of(new PageModel(known, ofStudy, this::trace, Program.version()), faults);
    write("the page", "index.html", "", page::write);
  }

  /** Writes a page, or in its place one that says that the program failed at it. */
  private void write(String part, String file, String home, OutputFolder.Content page)
      throws IOException {
    if (faults.contain(part, Place.of(file), () -> folder.add(file, page)).isEmpty()) {
      folder.add(file, out -> runPages.writeLost("Missing: " + part, home, out));
    }
  }

  /** The findings among them were not all known when they were first written. */
  private void writeTablesAgain() throws IOException {
    for (ResultTables.Part table : ResultTables.parts(results)) {
      folder.remove(table.file());
    }
    folder.remove("tables/" + DataPackage.FILE);
    faults.addAll(writeTables(results.with(faults.all())));
  }

  private List<Fault> writeTables(Results known) throws IOException {
    Faults own = new Faults();
    List<DataPackage.Resource> resources = new ArrayList<>();
    for (ResultTables.Part part : ResultTables.parts(known)) {
      String name = "the table " + part.schema().file();
      own.contain(name, Place.of(part.file()), () -> resource(part)).ifPresent(resources::add);
    }
    String description = "tables/" + DataPackage.FILE;
    own.contain(
        "the description of the tables",
        Place.of(description),
        () -> folder.addText(description, tables(resources)::write));
    return own.all();
  }

  private DataPackage.Resource resource(ResultTables.Part part) throws IOException {
    ResultTable table = part.filled().get();
    Written written = folder.addText(part.file(), table::writeCsv);
    return new DataPackage.Resource(table, written.bytes(), written.sha256());
  }

  private DataPackage tables(List<DataPackage.Resource> resources) {
    return DataPackage.of(
        AnswerWords.of(results).title(), "fairboil " + Program.version(), resources);
  }

  private static <R> R await(FutureTask<R> task) throws IOException {
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while tables were written", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException told) {
        throw told;
      }
      if (e.getCause() instanceof Error fatal) {
        throw fatal;
      }
      throw new IllegalStateException(e.getCause());
    }
  }

  private void take(Picture picture) throws IOException {
    if (picture.isDrawn()) {
      folder.add("charts/" + picture.name() + ".png", out -> out.write(picture.png()));
    }
    if (picture.kind() != Picture.Kind.RUN) {
      ofStudy.add(picture);
      return;
    }
    Key run = picture.key().run().orElseThrow();
    if (runsStandBeside) {
      writeBeside(Objects.requireNonNull(unwritten.get(run)), Optional.of(picture));
    } else {
      ofRuns.put(run, picture);
    }
  }

  private void writeBeside(RunResult run, Optional<Picture> trace) throws IOException {
    unwritten.remove(run.run().key());
    write(
        "the page of run " + run.run().key(),
        names.file(run),
        "../",
        out -> runPages.writeRun(run, trace, out));
  }

  private Optional<Picture> trace(RunResult run) {
    return Optional.ofNullable(ofRuns.get(run.run().key()));
  }
}
