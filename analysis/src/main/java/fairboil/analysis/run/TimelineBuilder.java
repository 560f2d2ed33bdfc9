package fairboil.analysis.run;

import fairboil.analysis.trace.FlameOut;
import fairboil.analysis.trace.Ignition;
import fairboil.analysis.trace.Sighting;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.sheet.Mark;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Puts marks and what the trace shows on one time line. */
final class TimelineBuilder {

  private static final Template NO_CLOCK =
      Template.of(
          "this mark is a time of day, and the log has none to compare it with, so the mark is not"
              + " used");
  private static final Template GIVE_CLOCK =
      Template.of(
          "in the column lit at of {sheet}, type the time of day of lighting; or type the mark as"
              + " the time since the stopwatch was started, such as 8m15s");
  private static final double ROOT_12 = Math.sqrt(12);

  private final RunContext context;
  private final PreparedLog log;
  private final List<Mark> marks;
  private final Set<Event> asked;
  private final ClockJoiner.Joined joined;
  private final StopwatchZero zero;
  private final List<TimedEvent> events = new ArrayList<>();
  private final Map<Event, Double> uncertainties = new EnumMap<>(Event.class);

  private TimelineBuilder(RunContext context, PreparedLog log) {
    this.context = context;
    this.log = log;
    this.marks = context.study().marksOf(context.run().key());
    this.asked = context.asked();
    this.joined = new ClockJoiner(context, log, marks).join();
    this.zero = joined.zero();
  }

  /** The events of a run. */
  static EventTimes build(RunContext context, PreparedLog log) {
    TimelineBuilder builder = new TimelineBuilder(context, log);
    builder.addMarks();
    builder.addStart();
    builder.addFromTrace();
    builder.events.sort(Comparator.comparingDouble(TimedEvent::seconds));
    return new EventTimes(
        new Timeline(builder.events),
        builder.uncertainties,
        builder.zero.uncertainty(),
        builder.joined.whyNot(),
        builder.asked);
  }

  private void addMarks() {
    for (Mark mark : marks) {
      Optional<Double> seconds = zero.place(mark.time().value());
      if (seconds.isPresent()) {
        String text = mark.event().map(Event::label).orElse(mark.text());
        add(mark.event(), text, seconds.get(), mark.time().value().resolution());
      } else {
        context
            .findings()
            .error(mark.time().place(), NO_CLOCK.with(), GIVE_CLOCK.with(RunSays.RUNS));
      }
    }
  }

  /** The stopwatch was started at an event, whether somebody wrote that down or not. */
  private void addStart() {
    Event start = StopwatchZero.startEvent(context);
    boolean counts =
        marks.stream().anyMatch(mark -> mark.time().value() instanceof ClockTime.Elapsed);
    if (counts && !uncertainties.containsKey(start) && !asked.contains(start)) {
      add(Optional.of(start), start.label(), zero.seconds(), 0);
    }
    Optional<ClockTime.TimeOfDay> lit = StopwatchZero.litAt(context);
    if (lit.isPresent() && !uncertainties.containsKey(Event.LIT)) {
      zero.place(lit.get())
          .ifPresent(
              at -> add(Optional.of(Event.LIT), Event.LIT.label(), at, lit.get().resolution()));
    }
  }

  private void add(Optional<Event> event, String text, double seconds, double resolution) {
    events.add(new TimedEvent(event, text, seconds, TimedEvent.SeenBy.STOPWATCH));
    double pressed = context.held(Settings.STOPWATCH_UNCERTAINTY);
    event.ifPresent(
        known -> uncertainties.putIfAbsent(known, Math.hypot(pressed, resolution / ROOT_12)));
  }

  private void addFromTrace() {
    Optional<PreparedChannel> flame = log.channel(Role.FLAME);
    if (flame.isEmpty()) {
      return;
    }
    if (!uncertainties.containsKey(Event.LIT) && !uncertainties.containsKey(Event.POT_ON)) {
      seen(Event.LIT, Ignition.find(flame.get().trace(), context.number(RunsSheet.AMBIENT)));
    }
    if (!uncertainties.containsKey(Event.FLAME_OUT)) {
      double from = new Timeline(events).boilTimeStart().orElse(Double.NEGATIVE_INFINITY);
      double air = context.number(RunsSheet.AMBIENT).orElse(flame.get().trace().lowest());
      seen(Event.FLAME_OUT, FlameOut.find(flame.get().trace(), from, air));
    }
  }

  private void seen(Event event, Optional<Sighting> sighting) {
    if (sighting.isPresent()) {
      double seconds = sighting.get().seconds();
      events.add(
          new TimedEvent(Optional.of(event), event.label(), seconds, TimedEvent.SeenBy.TRACE));
      uncertainties.put(event, sighting.get().uncertainty());
    }
  }
}
