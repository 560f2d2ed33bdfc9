package fairboil.ingest.log;

import fairboil.ingest.sheet.Run;

/** Opens the log of a run. Safe to call from several threads at once, for different runs. */
@FunctionalInterface
public interface LogOpener {

  /** Reads the log of a run; never throws for what is in a file or for a file that is not there. */
  OpenedLog open(Run run);
}
