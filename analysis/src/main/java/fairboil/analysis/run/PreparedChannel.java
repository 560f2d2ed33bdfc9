package fairboil.analysis.run;

import fairboil.analysis.trace.SampleFate;
import fairboil.analysis.trace.Trace;
import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Ledger;
import fairboil.ingest.finding.Place;
import java.util.Optional;

/**
 * A channel made ready: screened, its correction added. What was read of it is not kept.
 *
 * @param name its name in the log
 * @param role what it holds
 * @param place the file and column
 * @param probe the probe behind it
 * @param trace its clean trace, °C
 * @param samples what became of its readings
 * @param lag the lag of the probe, if it is known: not undone in the trace
 */
record PreparedChannel(
    String name,
    Role role,
    Place place,
    Probe probe,
    Trace trace,
    Ledger<SampleFate> samples,
    Optional<Lag> lag) {}
