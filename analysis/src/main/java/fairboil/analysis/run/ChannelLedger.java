package fairboil.analysis.run;

import fairboil.analysis.trace.SampleFate;
import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Ledger;

/**
 * What became of the readings of one channel.
 *
 * @param channel the channel's name
 * @param role what it holds
 * @param samples readings = used + fault + spike + gap
 */
public record ChannelLedger(String channel, Role role, Ledger<SampleFate> samples) {}
