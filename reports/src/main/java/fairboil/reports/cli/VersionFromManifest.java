package fairboil.reports.cli;

import fairboil.reports.Program;
import picocli.CommandLine.IVersionProvider;

/** What {@code --version} prints. */
final class VersionFromManifest implements IVersionProvider {

  @Override
  public String[] getVersion() {
    return new String[] {"fairboil " + Program.version()};
  }
}
