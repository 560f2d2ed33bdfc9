package fairboil.reports.cli;

import fairboil.analysis.Results;
import fairboil.ingest.StudyException;
import fairboil.ingest.StudyReader;
import fairboil.ingest.sheet.Settings;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code fairboil check STUDY}: findings only, each with what would mend it. */
@Command(
    name = "check",
    description = "Lists what is wrong or doubtful in a study and what would mend it.",
    footer = {"", "Example: fairboil check my-study"})
final class CheckCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private StudyParameter study;

  @Override
  public Integer call() throws StudyException {
    Results results = Analysis.of(StudyReader.open(study.folder()));
    FindingList list =
        new FindingList(results.findings(), results.study().settings().get(Settings.SHOW_UNITS));
    list.printAll(spec.commandLine().getOut());
    spec.commandLine().getOut().println(list.summary());
    spec.commandLine().getOut().flush();
    FaultFile faults = FaultFile.temporary(results.faults());
    faults.tell(spec.commandLine().getErr());
    return faults.status(list.status()).code();
  }
}
