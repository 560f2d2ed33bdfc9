package fairboil.reports.cli;

import fairboil.analysis.Results;
import fairboil.ingest.OpenedStudy;
import fairboil.ingest.StudyException;
import fairboil.ingest.StudyPool;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.ReportWriter;
import fairboil.reports.chart.ChartException;
import fairboil.reports.output.OutputFolder;
import fairboil.reports.words.AnswerWords;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code fairboil report STUDY... --out DIR}: the report; several studies are read as one. */
@Command(
    name = "report",
    description = "Works a study out and writes a page, charts and tables.",
    footer = {
      "",
      "Several studies are read as one, in the order of their names. Builds that are marked as",
      "shared in two or more of them under one name are one stove that was sent round.",
      "The folder is replaced whole: it may hold nothing but an earlier report.",
      "Example: fairboil report my-study --out my-report",
      "For writers: fairboil report my-study --out my-report --quote"
    })
final class ReportCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "STUDY",
      description = {
        "Folder of a study: runs.csv, and whatever other sheets and logs there are.",
        "Several are pooled, such as those of groups that repeat each other's burns."
      })
  private List<Path> studies;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder to write the report to.")
  @SuppressWarnings("NullAway.Init") // it is required
  private Path out;

  @Option(
      names = "--quote",
      description =
          "Adds DIR/quote for writers: charts for print with captions, claims, answers for a"
              + " critic, a citation and the data.")
  private boolean quote;

  private final ReportWriter writer;

  /**
   * The command.
   *
   * @param writer writes the report
   */
  ReportCommand(ReportWriter writer) {
    this.writer = writer;
  }

  @Override
  public Integer call() throws StudyException, ChartException, IOException {
    OpenedStudy opened = StudyPool.open(studies);
    Results results;
    FaultFile faults;
    try (OutputFolder folder = OutputFolder.open(out, studies)) {
      results = Analysis.of(opened);
      try (Progress progress = Progress.of("Charts and tables", ReportWriter.files(results))) {
        folder.afterEach(progress::step);
        results = results.with(writer.write(results, folder));
        if (quote) {
          results = results.with(writer.writeQuote(results, folder, opened.inputs()));
        }
      }
      faults = FaultFile.in(folder, out, results.faults());
      folder.commit();
    }
    return tell(results, faults);
  }

  private int tell(Results results, FaultFile faults) {
    FindingList list =
        new FindingList(results.findings(), results.study().settings().get(Settings.SHOW_UNITS));
    PrintWriter err = spec.commandLine().getErr();
    list.printWorst(err);
    err.println(list.summary());
    err.flush();
    PrintWriter result = spec.commandLine().getOut();
    AnswerWords.of(results).answer().forEach(result::println);
    result.println("The report: " + out.resolve("index.html"));
    faults.tell(err);
    return faults.status(list.status()).code();
  }
}
