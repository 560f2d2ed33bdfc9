package fairboil.reports.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program: parses what was typed, calls the command, and exits with its code. */
@Command(
    name = "fairboil",
    mixinStandardHelpOptions = true,
    versionProvider = VersionFromManifest.class,
    description = "Fair, honest results from the burns of wood-gas camp stoves.")
public final class Main implements Runnable {

  @Spec private CommandSpec spec;

  private Main() {}

  /** Runs the command line and ends the process with its exit code. */
  public static void main(String[] args) {
    System.exit(new CommandLine(new Main()).execute(args));
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }
}
