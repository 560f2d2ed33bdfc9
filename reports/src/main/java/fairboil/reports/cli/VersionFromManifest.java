package fairboil.reports.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the manifest of the jar. */
final class VersionFromManifest implements IVersionProvider {

  @Override
  public String[] getVersion() {
    return new String[] {"fairboil " + version()};
  }

  private static String version() {
    return Optional.ofNullable(Main.class.getPackage().getImplementationVersion())
        .orElse("(not built into a jar)");
  }
}
