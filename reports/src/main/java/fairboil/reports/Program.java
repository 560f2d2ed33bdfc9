package fairboil.reports;

import java.util.Optional;

/** What the program knows of itself. */
public final class Program {

  private Program() {}

  /** The version, from the manifest of the jar; {@code unreleased} where there is no jar. */
  public static String version() {
    return Optional.ofNullable(Program.class.getPackage().getImplementationVersion())
        .orElse("unreleased");
  }
}
