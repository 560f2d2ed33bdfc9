package fairboil.ingest.log;

import fairboil.ingest.sheet.Run;

/** Opens the log of a run. Safe to call from several threads at once, for different runs. */
@FunctionalInterface
public interface LogOpener {

  /** Reads the log of a run; never throws for what is in a file or for a file that is not there. */
  OpenedLog open(Run run);

  /** About how many bytes of text the log of a run has; 0 where that is not known. */
  default long bytes(Run run) {
    return 0;
  }
}
