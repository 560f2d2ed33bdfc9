package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Ledger;
import fairboil.ingest.grid.SourceFile;
import java.util.List;
import java.util.Optional;

/**
 * What a logger wrote during one run: times, and one or more channels of readings. Read once,
 * worked out and dropped; not for keeping. Its columns are not to be changed.
 *
 * @param source the file
 * @param time when each reading was taken
 * @param channels the channels, in the order of the file; unmodifiable
 * @param rows what became of the lines: those used are the readings of {@code time}
 */
public record Log(SourceFile source, TimeAxis time, List<Channel> channels, Ledger<RowFate> rows) {

  /** Copies the list of channels. */
  public Log {
    channels = List.copyOf(channels);
  }

  /** The first channel of that role, if there is one. */
  public Optional<Channel> channel(Role role) {
    return channels.stream().filter(channel -> channel.role() == role).findFirst();
  }
}
