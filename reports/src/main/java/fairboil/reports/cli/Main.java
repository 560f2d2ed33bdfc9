package fairboil.reports.cli;

import fairboil.analysis.fault.Fault;
import fairboil.analysis.fault.Faults;
import fairboil.ingest.StudyException;
import fairboil.ingest.finding.Place;
import fairboil.reports.ReportWriter;
import fairboil.reports.chart.ChartException;
import fairboil.reports.words.Plural;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program: parses what was typed, calls the command, and exits with its status. */
@Command(
    name = "fairboil",
    mixinStandardHelpOptions = true,
    scope = ScopeType.INHERIT,
    versionProvider = VersionFromManifest.class,
    sortOptions = false,
    usageHelpAutoWidth = true,
    description =
        "Turns a folder of sheets and logs from burns of wood-gas camp stoves into fair, honest and"
            + " publishable results.",
    footer = {
      "",
      "Examples:",
      "  fairboil new my-study                        a study to fill in, with a guide",
      "  fairboil check my-study                      what is unclear, and what would mend it",
      "  fairboil report my-study --out my-report     the page, charts and tables",
      "",
      "Exit status: 0 done; 1 done, but errors in the data left something out;",
      "2 wrong usage; 3 the study cannot be read; 4 the report could not be written, or memory",
      "ran out; 5 done, but a fault of the program cost a part, which is named; its trace is in a",
      "file, which is named too.",
      "",
      "Burn stoves outdoors only. Nothing here measures carbon monoxide or smoke."
    })
public final class Main implements Runnable {

  @Spec private CommandSpec spec;

  private Main() {}

  /** Runs the command line and ends the process with its exit status. */
  public static void main(String[] args) {
    int code = run(writer(System.out), writer(System.err), args);
    System.exit(code);
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
  }

  /**
   * Runs one command line.
   *
   * @param out where results go
   * @param err where messages to people go
   * @param args what was typed
   * @return the exit status
   */
  static int run(PrintWriter out, PrintWriter err, String... args) {
    ReportWriter writer = new ReportWriter();
    if (Commands.isReport(args)) {
      writer.warmUp(); // the parser needs a tenth of a second too
    }
    CommandLine line = new CommandLine(new Main());
    Commands.add(line, writer, args);
    line.setOut(out)
        .setErr(err)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler(Main::explainUsage)
        .setExecutionExceptionHandler(Main::explain);
    try {
      return line.execute(args);
    } catch (OutOfMemoryError e) {
      return say(
          line,
          ExitStatus.NOT_WRITTEN,
          "the memory ran out; give the program more, for instance with"
              + " FAIRBOIL_JAVA_OPTS=-Xmx2g, or split the study.");
    } catch (Error e) {
      return crashed(e, line, first(args));
    }
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "say what to do: new, check, report, plan or print.");
  }

  private static int explainUsage(ParameterException e, String[] args) {
    CommandLine line = e.getCommandLine();
    line.getErr().println("fairboil: " + usage(e));
    line.getErr().println("For help: " + line.getCommandSpec().qualifiedName() + " --help");
    line.getErr().flush();
    return ExitStatus.USAGE.code();
  }

  private static String usage(ParameterException e) {
    if (e instanceof UnmatchedArgumentException unmatched) {
      List<String> likely = unmatched.getSuggestions();
      return Plural.list(unmatched.getUnmatched().stream().map(word -> "“" + word + "”").toList())
          + (unmatched.getUnmatched().size() == 1 ? " is" : " are")
          + " no command or option here"
          + (likely.isEmpty() ? "." : "; did you mean " + String.join(" or ", likely) + "?");
    }
    return said(e);
  }

  private static int explain(Exception e, CommandLine line, CommandLine.ParseResult parsed) {
    if (e instanceof StudyException) {
      return say(line, ExitStatus.STUDY_UNREADABLE, said(e));
    }
    if (e instanceof IOException || e instanceof ChartException) {
      return say(line, ExitStatus.NOT_WRITTEN, said(e));
    }
    return crashed(e, line, parsed.originalArgs().get(0));
  }

  private static String first(String... args) {
    return args.length == 0 ? "fairboil" : args[0];
  }

  /** What nobody foresaw, outside of all parts: nothing was written. */
  private static int crashed(Throwable thrown, CommandLine line, String command) {
    Fault fault = Faults.of("the whole of “" + command + "”", Place.of(command), thrown);
    FaultFile.temporary(List.of(fault)).tell(line.getErr());
    return ExitStatus.NOT_WRITTEN.code();
  }

  /** What an exception says; those of Java that say nothing have a name at least. */
  static String said(Exception e) {
    return Objects.requireNonNullElseGet(e.getMessage(), e::toString);
  }

  private static int say(CommandLine line, ExitStatus status, String sentence) {
    line.getErr().println("fairboil: " + sentence);
    line.getErr().flush();
    return status.code();
  }
}
