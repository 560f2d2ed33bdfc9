package fairboil.analysis.run;

import fairboil.analysis.clock.ClockJoin;
import fairboil.analysis.clock.CommonEvent;
import fairboil.analysis.run.StopwatchZero.MarkKind;
import fairboil.analysis.trace.FlameOut;
import fairboil.analysis.trace.Ignition;
import fairboil.analysis.trace.Sighting;
import fairboil.analysis.trace.Trace;
import fairboil.analysis.trace.WaterLevels;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.sheet.Mark;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Joins the clock of the stopwatch to that of the log by the events that both saw: lighting, the
 * flame going out, the pot going on and coming off. Never by the boil that a person marked.
 */
final class ClockJoiner {

  private static final Template CANNOT_BE_MATCHED =
      Template.of("the clocks of the stopwatch and the log cannot be matched");
  private static final double ROOT_12 = Math.sqrt(12);

  private final RunContext context;
  private final PreparedLog log;
  private final List<Mark> marks;
  private final StopwatchZero assumed;
  private final MarkKind kind;

  ClockJoiner(RunContext context, PreparedLog log, List<Mark> marks) {
    this.context = context;
    this.log = log;
    this.marks = marks;
    this.assumed = StopwatchZero.of(context, log, marks);
    boolean elapsed = marks.stream().anyMatch(mark -> MarkKind.ELAPSED.isOf(mark.time().value()));
    this.kind = elapsed ? MarkKind.ELAPSED : MarkKind.TIME_OF_DAY;
  }

  /**
   * What came of it.
   *
   * @param zero where stopwatch and clock stand on the time line
   * @param whyNot why times of marks and log may not be taken together; empty if they may
   */
  record Joined(StopwatchZero zero, Optional<Message> whyNot) {}

  Joined join() {
    Map<Event, Sighting> marked = marked();
    if (log.time().isEmpty() || marked.isEmpty()) {
      return new Joined(assumed, Optional.empty());
    }
    ClockJoin join = join(marked);
    new ClockFindings(context, log, marks, kind).tell(join);
    if (join.grounds() == ClockJoin.Grounds.NOTHING) {
      return new Joined(assumed, Optional.empty());
    }
    Optional<Message> whyNot =
        join.joins() ? Optional.empty() : Optional.of(CANNOT_BE_MATCHED.with());
    return new Joined(assumed.moved(join.shift(), kind, join.uncertaintyLeft()), whyNot);
  }

  /** When events were marked, as far as the marks can be placed. */
  private Map<Event, Sighting> marked() {
    Map<Event, Sighting> marked = new EnumMap<>(Event.class);
    for (Mark mark : marks) {
      if (kind.isOf(mark.time().value())) {
        mark.event().ifPresent(event -> put(marked, event, mark.time().value()));
      }
    }
    if (kind == MarkKind.ELAPSED && !context.asked().contains(StopwatchZero.startEvent(context))) {
      put(marked, StopwatchZero.startEvent(context), new ClockTime.Elapsed(0, 0));
    } else if (kind == MarkKind.TIME_OF_DAY) {
      StopwatchZero.litAt(context).ifPresent(lit -> put(marked, Event.LIT, lit));
    }
    return marked;
  }

  private void put(Map<Event, Sighting> marked, Event event, ClockTime time) {
    double pressed = Math.max(context.held(Settings.STOPWATCH_UNCERTAINTY), 0.1);
    double u = Math.hypot(pressed, time.resolution() / ROOT_12);
    assumed.place(time).ifPresent(at -> marked.putIfAbsent(event, new Sighting(at, u)));
  }

  /** The first rise of the flame is the lighting, or where the bead sat high, the gas. */
  private ClockJoin join(Map<Event, Sighting> marked) {
    List<CommonEvent> others = others(marked);
    Optional<Sighting> rise =
        flame().flatMap(flame -> Ignition.find(flame, context.number(RunsSheet.AMBIENT)));
    ClockJoin byLit = withRise(rise, Event.LIT, marked, others);
    if (!marked.containsKey(Event.GAS_LIT)) {
      return byLit;
    }
    ClockJoin byGas = withRise(rise, Event.GAS_LIT, marked, others);
    return ClockJoin.likelier(byLit, byGas);
  }

  private static ClockJoin withRise(
      Optional<Sighting> rise, Event event, Map<Event, Sighting> marked, List<CommonEvent> others) {
    List<CommonEvent> events = new ArrayList<>();
    add(events, event, rise, marked);
    events.addAll(others);
    return ClockJoin.of(events);
  }

  private List<CommonEvent> others(Map<Event, Sighting> marked) {
    List<CommonEvent> events = new ArrayList<>();
    add(events, Event.FLAME_OUT, flame().flatMap(this::flameOut), marked);
    Optional<PreparedChannel> water = log.channel(Role.WATER);
    if (water.isPresent()) {
      Trace trace = water.get().trace();
      double lag = water.get().lag().map(Lag::seconds).orElse(0.0);
      add(events, Event.POT_ON, WaterLevels.potOn(trace, lag), marked);
      if (cameOffFire(marked)) {
        add(events, Event.POT_OFF, WaterLevels.potOff(trace), marked);
      }
    }
    return events;
  }

  /** Over a fire that is out, water cools whether the pot is taken off or not. */
  private static boolean cameOffFire(Map<Event, Sighting> marked) {
    Sighting off = marked.get(Event.POT_OFF);
    Sighting out = marked.get(Event.FLAME_OUT);
    return off != null && out != null && off.seconds() < out.seconds();
  }

  private static void add(
      List<CommonEvent> events, Event event, Optional<Sighting> seen, Map<Event, Sighting> marked) {
    if (seen.isPresent() && marked.containsKey(event)) {
      events.add(new CommonEvent(event.label(), seen.get(), marked.get(event)));
    }
  }

  private Optional<Trace> flame() {
    return log.channel(Role.FLAME).map(PreparedChannel::trace);
  }

  private Optional<Sighting> flameOut(Trace flame) {
    double air = context.number(RunsSheet.AMBIENT).orElse(flame.lowest());
    return FlameOut.find(flame, Double.NEGATIVE_INFINITY, air);
  }
}
