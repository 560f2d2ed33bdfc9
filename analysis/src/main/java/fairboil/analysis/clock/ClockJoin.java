package fairboil.analysis.clock;

import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * How far the marks of a stopwatch stand from the log, by the events that both saw.
 *
 * <p>The offset is the mean of the offsets of the events that agree, each weighted by 1/u²; its
 * standard uncertainty is that of the weighted mean, times the Birge ratio where the offsets
 * scatter by more than their uncertainties (R. T. Birge, Phys. Rev. 40 (1932) 207).
 *
 * @param grounds what the join stands on
 * @param offset what has to be added to the times of the marks, s
 * @param uncertainty its standard uncertainty, s
 * @param agreeing the events that it stands on; unmodifiable
 * @param others events that tell another offset; unmodifiable
 */
public record ClockJoin(
    Grounds grounds,
    double offset,
    double uncertainty,
    List<CommonEvent> agreeing,
    List<CommonEvent> others) {

  /** An offset beyond this is taken for a fault of the record, s. */
  public static final double FAR_SECONDS = 60;

  /** Standard uncertainty added to an offset that no second event checks, s: a judgement. */
  private static final double UNCHECKED_SECONDS = 5;

  private static final double ROOT_3 = Math.sqrt(3);

  /** What a join stands on. */
  public enum Grounds {
    /** No event was seen by both. */
    NOTHING,
    /** One event was: nothing checks it. */
    ONE_EVENT,
    /** At least two events tell the same offset. */
    AGREEING_EVENTS,
    /** Events tell different offsets, and no two the same. */
    DISAGREEING_EVENTS
  }

  /** Copies the lists. */
  public ClockJoin {
    agreeing = List.copyOf(agreeing);
    others = List.copyOf(others);
  }

  /** The join that the events tell; of several sets that agree, the largest, then the tightest. */
  public static ClockJoin of(List<CommonEvent> events) {
    if (events.isEmpty()) {
      return new ClockJoin(Grounds.NOTHING, 0, 0, List.of(), List.of());
    }
    if (events.size() == 1) {
      CommonEvent only = events.get(0);
      double u = Math.hypot(only.uncertainty(), UNCHECKED_SECONDS);
      return new ClockJoin(Grounds.ONE_EVENT, only.offset(), u, events, List.of());
    }
    ClockJoin best = null;
    for (CommonEvent event : events) {
      ClockJoin join = around(event, events);
      best = best == null || join.isBetterThan(best) ? join : best;
    }
    return Objects.requireNonNull(best).agreeing.size() > 1 ? best : disagreeing(events);
  }

  /** The events that agree with one and with each other, the nearest to it first. */
  private static ClockJoin around(CommonEvent middle, List<CommonEvent> events) {
    Set<CommonEvent> agreeing = Collections.newSetFromMap(new IdentityHashMap<>());
    agreeing.add(middle);
    events.stream()
        .filter(event -> !agreeing.contains(event))
        .sorted(Comparator.comparingDouble(event -> Math.abs(event.offset() - middle.offset())))
        .filter(event -> agreeing.stream().allMatch(event::agreesWith))
        .forEach(agreeing::add);
    List<CommonEvent> inOrder = events.stream().filter(agreeing::contains).toList();
    List<CommonEvent> others = events.stream().filter(event -> !agreeing.contains(event)).toList();
    return weighted(inOrder, others);
  }

  private static ClockJoin weighted(List<CommonEvent> agreeing, List<CommonEvent> others) {
    double weights = 0;
    double sum = 0;
    for (CommonEvent event : agreeing) {
      double weight = 1 / (event.uncertainty() * event.uncertainty());
      weights += weight;
      sum += weight * event.offset();
    }
    double offset = sum / weights;
    double u = Math.max(1, birge(agreeing, offset)) / Math.sqrt(weights);
    return new ClockJoin(Grounds.AGREEING_EVENTS, offset, u, agreeing, others);
  }

  /** How much more the offsets scatter than their uncertainties tell. */
  private static double birge(List<CommonEvent> events, double mean) {
    double squares = 0;
    for (CommonEvent event : events) {
      double away = (event.offset() - mean) / event.uncertainty();
      squares += away * away;
    }
    return events.size() < 2 ? 0 : Math.sqrt(squares / (events.size() - 1));
  }

  /** Of two joins, the one that more events agree on, else the one that moves the marks less. */
  public static ClockJoin likelier(ClockJoin one, ClockJoin other) {
    int more = one.agreeing.size() - other.agreeing.size();
    boolean less = Math.abs(one.offset) <= Math.abs(other.offset);
    return more > 0 || (more == 0 && less) ? one : other;
  }

  private boolean isBetterThan(ClockJoin other) {
    int more = agreeing.size() - other.agreeing.size();
    return more > 0 || (more == 0 && uncertainty < other.uncertainty);
  }

  /** No offset, and an uncertainty that holds all that the events tell: rectangular. */
  private static ClockJoin disagreeing(List<CommonEvent> events) {
    double furthest = events.stream().mapToDouble(e -> Math.abs(e.offset())).max().orElse(0);
    return new ClockJoin(Grounds.DISAGREEING_EVENTS, 0, furthest / ROOT_3, List.of(), events);
  }

  /** What is added to the marks, s: the offset where it is beyond its own doubt, else 0. */
  public double shift() {
    return Math.abs(offset) > 2 * uncertainty ? offset : 0;
  }

  /** Standard uncertainty of the marks after the shift, s: an offset left as it is counts too. */
  public double uncertaintyLeft() {
    return Math.hypot(uncertainty, (offset - shift()) / ROOT_3);
  }

  /** Whether the clocks are so far apart that log or marks may be of another run. */
  public boolean isFar() {
    return grounds == Grounds.DISAGREEING_EVENTS
        ? others.stream().anyMatch(event -> Math.abs(event.offset()) > FAR_SECONDS)
        : Math.abs(shift()) > FAR_SECONDS;
  }

  /** Whether times of log and stopwatch may be taken together. */
  public boolean joins() {
    return !isFar() || grounds == Grounds.AGREEING_EVENTS;
  }
}
