package fairboil.reports.cli;

import fairboil.analysis.fault.Fault;
import fairboil.reports.Program;
import fairboil.reports.output.OutputFolder;
import fairboil.reports.words.FaultWords;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The file with the traces of what the program failed at: in the folder that is written, or among
 * the system's temporary files where none is.
 */
final class FaultFile {

  private static final String NAME = "faults.txt";

  private final List<Fault> faults;
  private final Optional<Path> file;

  private FaultFile(List<Fault> faults, Optional<Path> file) {
    this.faults = List.copyOf(faults);
    this.file = file;
  }

  /** Adds the file to a folder, if there are faults. */
  static FaultFile in(OutputFolder folder, Path out, List<Fault> faults) throws IOException {
    if (!faults.isEmpty()) {
      folder.addText(NAME, writer -> writer.write(text(faults)));
    }
    return new FaultFile(faults, Optional.of(out.resolve(NAME)));
  }

  /** Writes a temporary file, if there are faults; without one, what else is told must do. */
  static FaultFile temporary(List<Fault> faults) {
    if (faults.isEmpty()) {
      return new FaultFile(faults, Optional.empty());
    }
    try {
      Path file = Files.createTempFile("fairboil-", "-" + NAME);
      Files.writeString(file, text(faults));
      return new FaultFile(faults, Optional.of(file));
    } catch (IOException e) {
      return new FaultFile(faults, Optional.empty());
    }
  }

  private static String text(List<Fault> faults) {
    return FaultWords.file(Program.version(), faults);
  }

  /** How a command ends that would otherwise end with the given status. */
  ExitStatus status(ExitStatus otherwise) {
    return faults.isEmpty() ? otherwise : ExitStatus.PART_LOST;
  }

  /** Says what was lost and where the trace is, if anything was. */
  void tell(PrintWriter err) {
    if (!faults.isEmpty()) {
      err.println(
          Terminal.oneLine(
              "fairboil: the program failed at " + FaultWords.parts(faults) + "; " + where()));
      err.flush();
    }
  }

  private String where() {
    return file.map(it -> "what helps to mend it is in " + it + ".")
        .orElse("what helps to mend it could not be written to a file.");
  }
}
