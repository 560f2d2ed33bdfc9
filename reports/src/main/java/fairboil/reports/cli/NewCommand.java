package fairboil.reports.cli;

import fairboil.ingest.Study;
import fairboil.ingest.StudyException;
import fairboil.ingest.StudyReader;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.output.OutputException;
import fairboil.reports.template.GroupTemplate;
import fairboil.reports.template.StudyTemplate;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code fairboil new DIR}: an empty study to fill in. */
@Command(
    name = "new",
    description = "Makes a study to fill in: every sheet with an example row, and a guide.",
    footer = {
      "",
      "Example: fairboil new my-study",
      "For a group: fairboil new north-study --from my-study --site North"
    })
final class NewCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "DIR", description = "Folder to make; it must not exist, or be empty.")
  private Path folder;

  @Option(
      names = "--from",
      paramLabel = "STUDY",
      description = {
        "A study whose burns a group will repeat. Its settings, stoves (marked as shared), rings,",
        "pots, claims and protocol are copied; runs, marks, sensors and holes are not."
      })
  private @Nullable Path from;

  @Option(names = "--site", paramLabel = "NAME", description = "The group's site, with --from.")
  private @Nullable String site;

  @Override
  public Integer call() throws StudyException, OutputException {
    Optional<Study> copied = copied();
    Map<String, String> files =
        copied.isPresent()
            ? GroupTemplate.files(copied.get(), Objects.requireNonNull(site).strip())
            : StudyTemplate.files();
    try {
      refuseUnlessEmpty();
      Files.createDirectories(folder.resolve("logs"));
      for (Map.Entry<String, String> file : files.entrySet()) {
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
    if (from != null) {
      out.println(
          "Write yes under shared in the builds.csv of " + from + " too, for each stove that");
      out.println("is sent round, and no in both for each that is not. Then read them as one:");
      out.println("fairboil report " + from + " " + folder + " --out my-report");
    }
    return copied.map(this::tell).orElse(ExitStatus.DONE).code();
  }

  /** What is wrong with the sheets that were copied: it is wrong with the copies too. */
  private ExitStatus tell(Study study) {
    FindingList list =
        new FindingList(
            SheetFindings.of(study, GroupTemplate.SHEETS),
            study.settings().get(Settings.SHOW_UNITS));
    PrintWriter err = spec.commandLine().getErr();
    list.printWorst(err);
    err.println(list.summary());
    err.flush();
    return list.status();
  }

  /** The study whose burns a group will repeat, if one is named. */
  private Optional<Study> copied() throws StudyException {
    if (from == null && site == null) {
      return Optional.empty();
    }
    if (from == null || site == null || site.isBlank()) {
      throw new ParameterException(
          spec.commandLine(), "--from and --site go together: the study, and the group's site.");
    }
    return Optional.of(StudyReader.open(from).study());
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
