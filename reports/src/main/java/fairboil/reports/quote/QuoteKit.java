package fairboil.reports.quote;

import fairboil.analysis.Results;
import fairboil.analysis.fault.Faults;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.Fingerprint;
import fairboil.ingest.grid.InputOpener;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.chart.ChartBook;
import fairboil.reports.chart.Press;
import fairboil.reports.chart.Print;
import fairboil.reports.output.OutputFolder;
import fairboil.reports.output.OutputFolder.Written;
import fairboil.reports.words.Display;
import fairboil.reports.words.QuoteWords;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Puts the writer's kit of a study into an output folder, as {@value #FOLDER}. */
public final class QuoteKit {

  /** The folder of the kit within the report. */
  public static final String FOLDER = "quote/";

  private final Results results;
  private final OutputFolder folder;
  private final String version;
  private final String citation;
  private final CaptionText captions;
  private final Set<String> captioned = new HashSet<>();
  private final Faults faults;

  /**
   * A kit of those results, made with that version of the program.
   *
   * @param faults takes parts at which the program failed
   */
  public QuoteKit(Results results, OutputFolder folder, String version, Faults faults) {
    this.faults = faults;
    this.results = results;
    this.folder = folder;
    this.version = version;
    this.citation = QuoteWords.of(results).citation(version, Fingerprint.of(results.sources()));
    this.captions = new CaptionText(results, citation);
  }

  /**
   * Writes the kit.
   *
   * @param press draws the charts
   * @param threads how many may be drawn at once
   * @param inputs gives the files of the study as they were read
   * @throws IOException if something cannot be written, or a file of the study was changed
   */
  public void write(Press press, int threads, InputOpener inputs) throws IOException {
    contain("data.zip", () -> addData(inputs));
    contain("about.md", () -> add("about.md", About.TEXT));
    contain("citation.txt", () -> add("citation.txt", citation + "\n"));
    contain("claims.md", () -> add("claims.md", ClaimSentences.of(results, citation)));
    contain("critic.md", () -> add("critic.md", CriticAnswers.of(results, citation)));
    Display display = Display.in(results.study().settings().get(Settings.SHOW_UNITS));
    Optional<ChartBook> charts =
        contain("the charts", () -> ChartBook.of(results, display, faults));
    if (charts.isPresent()) {
      charts.get().print(press, threads, this::take);
    }
  }

  private <R> Optional<R> contain(String part, Faults.Work<R, IOException> work)
      throws IOException {
    return faults.contain(part + " of the writer's kit", Place.of(FOLDER + part), work);
  }

  private Written addData(InputOpener inputs) throws IOException {
    DataArchive data = new DataArchive(results.study().name(), results.sources(), version);
    return folder.add(FOLDER + "data.zip", out -> data.write(inputs, out));
  }

  private void take(Print print) throws IOException {
    String name = "charts/" + print.name();
    if (captioned.add(print.name())) {
      contain(name + ".txt", () -> add(name + ".txt", captions.of(print)));
    }
    String sized = FOLDER + name + "-" + print.format().label();
    folder.add(sized + ".png", out -> out.write(print.png()));
    folder.add(sized + "-grey.png", out -> out.write(print.grey()));
    folder.add(sized + ".pdf", out -> out.write(print.pdf()));
  }

  private Written add(String name, String text) throws IOException {
    return folder.add(FOLDER + name, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }
}
