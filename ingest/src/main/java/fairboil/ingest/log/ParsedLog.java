package fairboil.ingest.log;

import fairboil.ingest.finding.Ledger;
import fairboil.ingest.grid.SourceFile;
import java.util.List;

/**
 * A log whose file's fingerprint is not known yet.
 *
 * @param time when each reading was taken
 * @param channels the channels
 * @param rows what became of the lines
 */
record ParsedLog(TimeAxis time, List<Channel> channels, Ledger<RowFate> rows) {

  Log from(SourceFile source) {
    return new Log(source, time, channels, rows);
  }
}
