package fairboil.analysis.run;

import fairboil.analysis.trace.SampleFate;
import fairboil.analysis.trace.Trace;
import fairboil.ingest.finding.Ledger;
import fairboil.ingest.log.Channel;
import java.util.Optional;

/**
 * A channel made ready: screened, its correction added.
 *
 * @param channel the channel as read
 * @param probe the probe behind it
 * @param trace its clean trace, °C
 * @param samples what became of its readings
 * @param lag the lag of the probe, if it is known: not undone in the trace
 */
record PreparedChannel(
    Channel channel, Probe probe, Trace trace, Ledger<SampleFate> samples, Optional<Lag> lag) {}
