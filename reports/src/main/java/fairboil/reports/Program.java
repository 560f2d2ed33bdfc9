package fairboil.reports;

import java.util.Optional;

/** What the program knows of itself. */
public final class Program {

  private Program() {}

  /** The version, from the manifest of the jar; "(not built into a jar)" elsewhere. */
  public static String version() {
    return Optional.ofNullable(Program.class.getPackage().getImplementationVersion())
        .orElse("(not built into a jar)");
  }
}
