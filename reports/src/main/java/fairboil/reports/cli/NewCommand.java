package fairboil.reports.cli;

import fairboil.reports.output.OutputException;
import fairboil.reports.template.StudyTemplate;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code fairboil new DIR}: an empty study to fill in. */
@Command(
    name = "new",
    description = "Makes a study to fill in: every sheet with an example row, and a guide.",
    footer = {"", "Example: fairboil new my-study"})
final class NewCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "DIR", description = "Folder to make; it must not exist, or be empty.")
  private Path folder;

  @Override
  public Integer call() throws OutputException {
    try {
      refuseUnlessEmpty();
      Files.createDirectories(folder.resolve("logs"));
      for (Map.Entry<String, String> file : StudyTemplate.files().entrySet()) {
        Files.writeString(
            folder.resolve(file.getKey()), file.getValue(), StandardOpenOption.CREATE_NEW);
      }
    } catch (OutputException e) {
      throw e;
    } catch (IOException e) {
      throw new OutputException(
          "the study could not be made in " + folder + " (" + e.getMessage() + ").", e);
    }
    PrintWriter out = spec.commandLine().getOut();
    out.println("A study to fill in: " + folder);
    out.println("Start with " + folder.resolve(StudyTemplate.GUIDE) + ".");
    return ExitStatus.DONE.code();
  }

  private void refuseUnlessEmpty() throws IOException {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (!Files.isDirectory(folder)) {
      throw new OutputException(folder + " is there already and is not a folder; name another.");
    }
    try (Stream<Path> entries = Files.list(folder)) {
      if (entries.findAny().isPresent()) {
        throw new OutputException(
            folder + " holds files already; name a new folder, so that nothing is overwritten.");
      }
    }
  }
}
