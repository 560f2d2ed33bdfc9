package fairboil.reports.cli;

import fairboil.analysis.Results;
import fairboil.analysis.StudyAnalysis;
import fairboil.ingest.OpenedStudy;
import fairboil.ingest.StudyException;
import fairboil.ingest.StudyReader;
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
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code fairboil report STUDY --out DIR}: the report. */
@Command(
    name = "report",
    description = "Works a study out and writes a page, charts and tables.",
    footer = {
      "",
      "The folder is replaced whole: it may hold nothing but an earlier report.",
      "Example: fairboil report my-study --out my-report",
      "For writers: fairboil report my-study --out my-report --quote"
    })
final class ReportCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private StudyParameter study;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder to write the report to.")
  private Path out;

  @Option(
      names = "--quote",
      description =
          "Adds DIR/quote for writers: charts for print with captions, claims, answers for a"
              + " critic, a citation and the data.")
  private boolean quote;

  @Override
  public Integer call() throws StudyException, ChartException, IOException {
    ReportWriter writer = ReportWriter.warmingUp();
    OpenedStudy opened = StudyReader.open(study.folder());
    Results results;
    try (OutputFolder folder = OutputFolder.open(out, List.of(study.folder()))) {
      results = StudyAnalysis.of(opened.study(), opened.logs());
      writer.write(results, folder);
      if (quote) {
        writer.writeQuote(results, folder, opened.inputs());
      }
      folder.commit();
    }
    return tell(results);
  }

  private int tell(Results results) {
    FindingList list = new FindingList(results.findings());
    PrintWriter err = spec.commandLine().getErr();
    list.printWorst(err);
    err.println(list.summary());
    err.flush();
    PrintWriter result = spec.commandLine().getOut();
    AnswerWords.of(results).answer().forEach(result::println);
    result.println("The report: " + out.resolve("index.html"));
    return list.status().code();
  }
}
