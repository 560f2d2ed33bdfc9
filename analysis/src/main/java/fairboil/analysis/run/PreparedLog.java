package fairboil.analysis.run;

import fairboil.analysis.trace.SampleFate;
import fairboil.analysis.trace.Screening;
import fairboil.analysis.trace.Trace;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
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
record PreparedLog(Optional<TimeAxis> time, List<PreparedChannel> channels, Message lacking) {

  private static final Set<Role> USED = EnumSet.of(Role.FLAME, Role.WATER, Role.AMBIENT);
  private static final double MANY_SPIKES = 0.05;

  /** A run without a log. */
  static final PreparedLog NONE = without(RunSays.NO_LOG);

  /** A run whose log could not be read, of which an error tells. */
  static final PreparedLog UNREAD = without(LogSays.UNREAD);

  private static PreparedLog without(Template lacking) {
    return new PreparedLog(Optional.empty(), List.of(), lacking.with());
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
                  LogSays.MORE_THAN_ONE.with(Argument.word(channel.role().label())),
                  LogSays.OTHER_ROLE.with(RunSays.SENSORS));
        }
      }
    }
    return new PreparedLog(Optional.of(log.time()), List.copyOf(channels), Message.NONE);
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
          place, LogSays.ZEROS.with(Argument.count(screened.zeros())), LogSays.IF_MANY.with());
    }
    long spikes = screened.samples().setAside(SampleFate.SPIKE);
    if (spikes > MANY_SPIKES * screened.samples().read()) {
      findings.warning(
          place,
          LogSays.MANY_SPIKES.with(
              Argument.count(spikes), Argument.count(screened.samples().read())),
          LogSays.LOOSE_WIRE.with());
    } else if (spikes > 0) {
      findings.note(place, LogSays.SPIKES.with(Argument.count(spikes)), Message.NONE);
    }
    UnsteadyProbe.tell(screened, channel, findings);
    if (screened.samples().read() > 0 && screened.samples().used() == 0) {
      findings.error(
          place,
          LogSays.NONE_USED.with(Argument.count(screened.samples().read())),
          LogSays.CHECK_UNIT.with());
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
          LogSays.TOO_HOT.with(
              Argument.count(above), Argument.value(limit, 2, Dimension.TEMPERATURE)),
          LogSays.BURNT.with());
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
