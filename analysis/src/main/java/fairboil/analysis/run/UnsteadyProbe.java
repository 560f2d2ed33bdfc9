package fairboil.analysis.run;

import fairboil.analysis.trace.SampleFate;
import fairboil.analysis.trace.Screening;
import fairboil.analysis.trace.Trace;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.log.Channel;

/**
 * Tells of probes that lose contact: many faults, or readings of water or air that jump to and fro
 * as neither can. A flame may do so, and is left to the spikes.
 */
final class UnsteadyProbe {

  private static final double MANY = 0.05;
  private static final int FEWEST = 5;

  /** Neither water nor air changes by more from one reading to the next and back again, K. */
  private static final double JUMP = 15;

  private UnsteadyProbe() {}

  static void tell(Screening.Screened screened, Channel channel, Findings findings) {
    long read = screened.samples().read();
    long faults = screened.samples().setAside(SampleFate.FAULT);
    if (isMany(faults, read) && screened.samples().used() > 0) {
      findings.warning(
          channel.place(),
          LogSays.FAULTS.with(Argument.count(faults), Argument.count(read)),
          LogSays.LOOSE.with());
    }
    int jumps = channel.role() == Role.FLAME ? 0 : jumps(screened.trace());
    if (isMany(jumps, read)) {
      findings.warning(
          channel.place(),
          LogSays.JUMPS.with(
              Argument.count(jumps),
              Argument.count(read),
              Argument.value(JUMP, 2, Dimension.TEMPERATURE_DIFFERENCE)),
          LogSays.LOOSE.with());
    }
  }

  private static boolean isMany(long some, long all) {
    return some >= FEWEST && some > MANY * all;
  }

  // A missing reading lies between no two readings: its NaN makes each comparison false.
  private static int jumps(Trace trace) {
    int jumps = 0;
    for (int i = 1; i + 1 < trace.size(); i++) {
      double to = trace.celsiusAt(i) - trace.celsiusAt(i - 1);
      double back = trace.celsiusAt(i + 1) - trace.celsiusAt(i);
      jumps += Math.min(Math.abs(to), Math.abs(back)) > JUMP && to * back < 0 ? 1 : 0;
    }
    return jumps;
  }
}
