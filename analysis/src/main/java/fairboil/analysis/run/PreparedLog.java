package fairboil.analysis.run;

import fairboil.analysis.trace.SampleFate;
import fairboil.analysis.trace.Screening;
import fairboil.analysis.trace.Trace;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Place;
import fairboil.ingest.log.Channel;
import fairboil.ingest.log.Log;
import fairboil.ingest.log.TimeAxis;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The log of a run with its channels made ready.
 *
 * @param time when the readings were taken; empty if there is no log
 * @param channels the channels that results stand on, in the order of the file
 * @param lacking why there is none: a clause; empty if there is one
 */
record PreparedLog(Optional<TimeAxis> time, List<PreparedChannel> channels, String lacking) {

  private static final Set<Role> USED = EnumSet.of(Role.FLAME, Role.WATER, Role.AMBIENT);
  private static final double MANY_SPIKES = 0.05;

  /** A run without a log. */
  static final PreparedLog NONE = without("the run has no log");

  /** A run whose log could not be read, of which an error tells. */
  static final PreparedLog UNREAD = without("its log could not be read");

  private static PreparedLog without(String lacking) {
    return new PreparedLog(Optional.empty(), List.of(), lacking);
  }

  /** Makes the channels ready and tells what was set aside. */
  static PreparedLog of(Log log, RunContext context) {
    List<PreparedChannel> channels = new ArrayList<>();
    double[] seconds = log.time().seconds().asDoubleArray();
    Set<Role> seen = EnumSet.noneOf(Role.class);
    for (Channel channel : log.channels()) {
      Optional<Screening.Screened> screened =
          USED.contains(channel.role()) ? screen(log, seconds, channel, context) : Optional.empty();
      if (screened.isPresent()) {
        channels.add(prepare(log, screened.get(), channel, context));
        if (!seen.add(channel.role())) {
          context
              .findings()
              .warning(
                  channel.place(),
                  "there is more than one " + channel.role().label() + " column",
                  "the first is used; give the others the role “other” in sensors.csv");
        }
      }
    }
    return new PreparedLog(Optional.of(log.time()), List.copyOf(channels), "");
  }

  private static Optional<Screening.Screened> screen(
      Log log, double[] seconds, Channel channel, RunContext context) {
    double interval = log.time().interval();
    if (channel.unit().measures(Dimension.TEMPERATURE)) {
      return Optional.of(Screening.screen(seconds, interval, channel));
    }
    return Voltages.celsius(log, channel, context.findings())
        .map(celsius -> Screening.screenConverted(seconds, interval, channel, celsius));
  }

  private static PreparedChannel prepare(
      Log log, Screening.Screened screened, Channel channel, RunContext context) {
    Probe probe = new Probe(channel, Voltages.coldJunction(log, channel, context), context);
    tell(screened, channel, context.findings());
    tellIfTooHot(probe, screened.trace(), channel, context.findings());
    Trace trace = screened.trace().plus(probe.correction());
    return new PreparedChannel(
        channel.name(),
        channel.role(),
        channel.place(),
        probe,
        trace,
        screened.samples(),
        Lag.of(probe, trace, channel.place(), context.findings()));
  }

  private static void tell(Screening.Screened screened, Channel channel, Findings findings) {
    Place place = channel.place();
    if (screened.zeros() > 0) {
      findings.note(
          place,
          screened.zeros() + " readings of exactly 0 amid warm ones were set aside as faults",
          "look for a loose plug if there are many");
    }
    long spikes = screened.samples().setAside(SampleFate.SPIKE);
    if (spikes > MANY_SPIKES * screened.samples().read()) {
      findings.warning(
          place,
          spikes + " of " + screened.samples().read() + " readings are lone spikes",
          "the probe is unsteady: look for a loose wire before trusting its figures");
    } else if (spikes > 0) {
      findings.note(
          place,
          (spikes == 1 ? "1 lone spike was" : spikes + " lone spikes were") + " set aside",
          "");
    }
    UnsteadyProbe.tell(screened, channel, findings);
    if (screened.samples().read() > 0 && screened.samples().used() == 0) {
      findings.error(
          place,
          "none of its " + screened.samples().read() + " readings can be used",
          "check the probe and the column's unit");
    }
  }

  private static void tellIfTooHot(Probe probe, Trace trace, Channel channel, Findings findings) {
    if (probe.ratedTo().isEmpty()) {
      return;
    }
    double limit = probe.ratedTo().getAsDouble();
    int above = 0;
    for (int i = 0; i < trace.size(); i++) {
      above += trace.celsiusAt(i) > limit ? 1 : 0;
    }
    if (above > 0) {
      findings.warning(
          channel.place(),
          Findings.words(
              "%d readings are above the %.0f °C that the probe is rated to", above, limit),
          "its insulation may have burnt and its readings be false: check it against boiling water");
    }
  }

  /** The first channel of a role, if there is one. */
  Optional<PreparedChannel> channel(Role role) {
    return channels.stream().filter(each -> each.role() == role).findFirst();
  }

  /** The usual time between two readings, s; 0 without a log. */
  double interval() {
    return time.map(TimeAxis::interval).orElse(0.0);
  }

  /** The size of one step of the times, s; 0 without a log. */
  double timeResolution() {
    return time.map(TimeAxis::resolution).orElse(0.0);
  }
}
