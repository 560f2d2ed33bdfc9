package fairboil.reports.cli;

import fairboil.ingest.Study;
import fairboil.ingest.StudyException;
import fairboil.ingest.StudyReader;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.output.OutputFolder;
import fairboil.reports.print.Paper;
import fairboil.reports.print.PrintJob;
import fairboil.reports.print.Printed;
import fairboil.reports.print.Prints;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code fairboil print STUDY --out DIR}: measuring strips, base discs and forms. */
@Command(
    name = "print",
    description = "Draws measuring strips, base discs and forms to print at true scale.",
    footer = {
      "",
      "Print at 100 %% (no fitting to the page) and check the 100 mm bar before use.",
      "Example: fairboil print my-study --out my-prints"
    })
final class PrintCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private StudyParameter study;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder to write the PDF files to.")
  @SuppressWarnings("NullAway.Init") // it is required
  private Path out;

  @Override
  public Integer call() throws StudyException, IOException {
    Study sheets = StudyReader.open(study.folder()).study();
    PrintJob job = Prints.of(sheets, List.of(Paper.values()));
    FaultFile faults;
    try (OutputFolder folder = OutputFolder.open(out, List.of(study.folder()))) {
      for (Printed file : job.files()) {
        folder.add(file.name(), file::writeTo);
      }
      faults = FaultFile.in(folder, out, job.faults());
      folder.commit();
    }
    FindingList list =
        new FindingList(findings(sheets, job), sheets.settings().get(Settings.SHOW_UNITS));
    PrintWriter err = spec.commandLine().getErr();
    list.printWorst(err);
    err.println(list.summary());
    err.flush();
    job.files().forEach(file -> spec.commandLine().getOut().println(out.resolve(file.name())));
    faults.tell(spec.commandLine().getErr());
    return faults.status(list.status()).code();
  }

  /** What could not be read of what is printed, and what could not be drawn. */
  private static List<Finding> findings(Study study, PrintJob job) {
    return Stream.concat(
            SheetFindings.of(study, Prints.SHEETS).stream(), study.told(job.findings()).stream())
        .distinct()
        .sorted()
        .toList();
  }
}
