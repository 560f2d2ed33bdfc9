package fairboil.reports.quote;

import fairboil.analysis.Results;
import fairboil.ingest.grid.Fingerprint;
import fairboil.ingest.grid.InputOpener;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.chart.ChartBook;
import fairboil.reports.chart.Press;
import fairboil.reports.chart.Print;
import fairboil.reports.output.OutputFolder;
import fairboil.reports.words.Display;
import fairboil.reports.words.QuoteWords;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
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

  /** A kit of those results, made with that version of the program. */
  public QuoteKit(Results results, OutputFolder folder, String version) {
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
    DataArchive data = new DataArchive(results.study().name(), results.sources(), version);
    folder.add(FOLDER + "data.zip", out -> data.write(inputs, out));
    add("about.md", About.TEXT);
    add("citation.txt", citation + "\n");
    add("claims.md", ClaimSentences.of(results, citation));
    add("critic.md", CriticAnswers.of(results, citation));
    Display display = Display.in(results.study().settings().get(Settings.SHOW_UNITS));
    ChartBook.of(results, display).print(press, threads, this::take);
  }

  private void take(Print print) throws IOException {
    String name = "charts/" + print.name();
    if (captioned.add(print.name())) {
      add(name + ".txt", captions.of(print));
    }
    String sized = FOLDER + name + "-" + print.format().label();
    folder.add(sized + ".png", out -> out.write(print.png()));
    folder.add(sized + "-grey.png", out -> out.write(print.grey()));
    folder.add(sized + ".pdf", out -> out.write(print.pdf()));
  }

  private void add(String name, String text) throws IOException {
    folder.add(FOLDER + name, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }
}
