package fairboil.reports;

import fairboil.analysis.run.Plateau;
import fairboil.analysis.run.RunSketch;
import fairboil.analysis.run.TimedEvent;
import fairboil.analysis.run.TimedEvent.SeenBy;
import fairboil.analysis.run.Timeline;
import fairboil.analysis.trace.Curve;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/**
 * One invented burn, second by second, with formulas of its own: what a chart of it would be given.
 * Nothing here was measured.
 */
final class SampleTrace {

  private static final double LIT = 25;
  private static final double GAS_LIT = 70;
  private static final double POT_ON = 95;
  private static final int POINTS = 450;

  private final double start;
  private final double ambient;
  private final double boilTime;
  private final double boilingPoint;
  private final double peak;
  private final Ending ending;
  private final Random random;

  /** How the burn ends. */
  enum Ending {
    BOILS,
    TOO_WEAK,
    GOES_OUT
  }

  SampleTrace(
      double start,
      double ambient,
      double boilTime,
      double boilingPoint,
      double peak,
      Ending ending,
      Random random) {
    this.start = start;
    this.ambient = ambient;
    this.boilTime = boilTime;
    this.boilingPoint = boilingPoint;
    this.peak = peak;
    this.ending = ending;
    this.random = random;
  }

  double peakAt() {
    return POT_ON + 0.55 * boilTime;
  }

  double boilAt() {
    return POT_ON + boilTime;
  }

  double potOff() {
    return boilAt() + 130;
  }

  double flameOut() {
    return ending == Ending.GOES_OUT ? POT_ON + 0.4 * boilTime : boilAt() + 330;
  }

  double hottestWater() {
    return switch (ending) {
      case BOILS -> boilingPoint;
      case TOO_WEAK -> 84.6;
      case GOES_OUT -> water(flameOut() + 40);
    };
  }

  Timeline timeline() {
    List<TimedEvent> events = new ArrayList<>();
    events.add(seen(Event.LIT, LIT, SeenBy.STOPWATCH));
    events.add(seen(Event.GAS_LIT, GAS_LIT, SeenBy.TRACE));
    events.add(seen(Event.POT_ON, POT_ON, SeenBy.STOPWATCH));
    if (ending == Ending.GOES_OUT) {
      events.add(seen(Event.FLAME_OUT, flameOut(), SeenBy.STOPWATCH));
      return new Timeline(events);
    }
    events.add(new TimedEvent(Optional.empty(), "gust of wind", POT_ON + 140, SeenBy.STOPWATCH));
    if (ending == Ending.BOILS) {
      events.add(seen(Event.BOIL, boilAt() + 4, SeenBy.STOPWATCH));
    }
    events.add(seen(Event.POT_OFF, potOff(), SeenBy.STOPWATCH));
    events.add(seen(Event.FLAME_OUT, flameOut(), SeenBy.TRACE));
    events.add(seen(Event.GLOW_OUT, flameOut() + 420, SeenBy.STOPWATCH));
    return new Timeline(events);
  }

  private static TimedEvent seen(Event event, double seconds, SeenBy by) {
    return new TimedEvent(Optional.of(event), event.label(), seconds, by);
  }

  RunSketch sketch() {
    return new RunSketch(
        List.of(
            thinned("flame", Role.FLAME, flickering()),
            thinned("water", Role.WATER, t -> water(t) + 0.08 * random.nextGaussian()),
            thinned("air", Role.AMBIENT, t -> ambient + 0.2 * random.nextGaussian())),
        10,
        ending == Ending.BOILS ? Optional.of(plateau()) : Optional.empty());
  }

  private Plateau plateau() {
    double from = boilAt() - 8 / rate();
    return new Plateau(from, boilingPoint - 8, boilAt(), potOff() - 2, boilingPoint);
  }

  private double rate() {
    return (boilingPoint - start) / boilTime;
  }

  private double water(double t) {
    double heatedUntil = Math.min(potOff(), flameOut());
    double heated = Math.max(0, Math.min(t, heatedUntil) - POT_ON);
    double share = ending == Ending.TOO_WEAK ? 0.94 : 1;
    double reached =
        ending == Ending.TOO_WEAK
            ? start + (84.6 - start) * (1 - Math.exp(-3 * heated / boilTime))
            : Math.min(boilingPoint, start + share * rate() * heated);
    double cooled = Math.max(0, t - heatedUntil);
    return ambient + (reached - ambient) * Math.exp(-cooled / 5200);
  }

  private double flame(double t) {
    if (t < LIT) {
      return ambient;
    }
    double out = Math.min(t, flameOut());
    double shape = 1 - 0.10 * Math.pow((out - peakAt()) / boilTime, 2);
    double growing = 1 - Math.exp(-(out - LIT) / 38);
    double burning = ambient + (peak - ambient) * growing * shape;
    double glow = ambient + 60;
    return t <= out ? burning : glow + (burning - glow) * Math.exp(-(t - out) / 70);
  }

  private DoubleUnaryOperator flickering() {
    double[] state = {0};
    return t -> {
      state[0] = 0.75 * state[0] + 9 * random.nextGaussian();
      boolean gap = t > POT_ON + 200 && t < POT_ON + 222;
      double burning = t > LIT && t < flameOut() ? 1 : 0.1;
      return gap ? Double.NaN : flame(t) + burning * state[0];
    };
  }

  /** Keeps the lowest and highest of each stretch, as the real thing does. */
  private Curve thinned(String name, Role role, DoubleUnaryOperator trace) {
    int end = (int) flameOut() + 900;
    double perBucket = (end + 1) / (POINTS / 2.0);
    double[] seconds = new double[POINTS];
    double[] celsius = new double[POINTS];
    int second = 0;
    for (int bucket = 0; bucket < POINTS / 2; bucket++) {
      int last = Math.max(second + 1, (int) ((bucket + 1) * perBucket));
      Extremes extremes = new Extremes();
      for (; second < last; second++) {
        extremes.add(second, trace.applyAsDouble(second));
      }
      extremes.into(seconds, celsius, 2 * bucket);
    }
    return new Curve(name, role, seconds, celsius);
  }

  /**
   * The lowest and the highest of a stretch in the order of time; a stretch with a gap is a gap.
   */
  private static final class Extremes {
    private double lowAt;
    private double low = Double.POSITIVE_INFINITY;
    private double highAt;
    private double high = Double.NEGATIVE_INFINITY;
    private boolean gap;

    void add(double second, double value) {
      gap |= Double.isNaN(value);
      if (value < low) {
        low = value;
        lowAt = second;
      }
      if (value > high) {
        high = value;
        highAt = second + 0.5;
      }
    }

    void into(double[] seconds, double[] celsius, int at) {
      boolean lowFirst = lowAt < highAt;
      seconds[at] = lowFirst ? lowAt : highAt;
      seconds[at + 1] = lowFirst ? highAt : lowAt;
      boolean none = gap || Double.isInfinite(low);
      celsius[at] = none ? Double.NaN : lowFirst ? low : high;
      celsius[at + 1] = none ? Double.NaN : lowFirst ? high : low;
      if (none) {
        seconds[at] = at == 0 ? 0 : seconds[at - 1] + 1;
        seconds[at + 1] = seconds[at];
      }
    }
  }
}
