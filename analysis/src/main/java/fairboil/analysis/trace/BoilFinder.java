package fairboil.analysis.trace;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;

/**
 * Finds the boil in a water trace: a line through the last 8 K before the plateau, of at least 10
 * readings, meets the mean of the plateau.
 *
 * <p>The last part of the rise, that lag and scatter round off, is left out of the line, and the
 * bend of the rise, judged over the last 24 K, is allowed for. A plateau of 60 s counts, one of 15
 * s with a larger uncertainty; it must agree with the boiling point. What is no boil: a plateau
 * that the water rises above later, a rise that levels off slowly, a rise too quick for 10 readings
 * (a probe dipped into hot water), a fall of more than 8 K on the way, and a gap of more than 30 s
 * over the boil.
 */
public final class BoilFinder {

  /** So uncertain that no decimals are shown. */
  private static final double WHOLE = 2;

  /** So uncertain that one decimal is shown. */
  private static final double TENTHS = 0.2;

  private static final double LINE_KELVINS = 8;
  private static final double LEAST_ROUNDED_KELVINS = 0.7;
  private static final double BEND_KELVINS = 24;
  private static final int LINE_READINGS = 10;

  /** For leaving out what the lag of a sensor rounds off, where the lag is smaller or not told. */
  private static final double USUAL_LAG_SECONDS = 5;

  private static final double LONG_SECONDS = 60;
  private static final double SHORT_SECONDS = 15;
  private static final double SHORT_PLATEAU_KELVINS = 0.5;
  private static final double LONGEST_GAP_SECONDS = 30;
  private static final double LEAST_RATE = 0.004;
  private static final double MOST_PLATEAU_SLOPE = 0.2;
  private static final double LEAST_SLOPE_RATIO = 0.55;
  private static final int FEWEST_READINGS = 20;

  private final Trace trace;
  private final BoilSearch search;
  private final double noise;

  private BoilFinder(Trace trace, BoilSearch search) {
    this.trace = trace;
    this.search = search;
    this.noise = Math.max(Noise.betweenNeighbours(trace), search.resolution() / Math.sqrt(12));
  }

  /** Finds the boil in a clean trace of water temperatures. */
  public static Boil find(Trace trace, BoilSearch search) {
    Trace present = trace.between(search.from(), search.to()).withoutMissing();
    if (present.size() < FEWEST_READINGS) {
      return notSeen(NoBoilSays.FEW_READINGS.with(Argument.count(present.size())));
    }
    Fall fall = Fall.first(present);
    return fall.isNone()
        ? new BoilFinder(present, search).find()
        : beforeFall(present, search, fall);
  }

  /** A boil after a fall is not the boil of this water; without one, the fall does not matter. */
  private static Boil beforeFall(Trace present, BoilSearch search, Fall fall) {
    Trace before = present.between(search.from(), fall.from());
    Boil boil =
        before.size() < FEWEST_READINGS
            ? notSeen(NoBoilSays.FEW_BEFORE_FALL.with())
            : new BoilFinder(before, search).find();
    boolean boilsLater = new BoilFinder(present, search).find() instanceof Boil.Seen;
    return boil instanceof Boil.Seen || !boilsLater
        ? boil
        : notSeen(NoBoilSays.FELL.with(kelvins(fall.highest() - fall.lowest())));
  }

  private static Boil notSeen(Message reason) {
    return new Boil.NotSeen(reason);
  }

  private static Argument kelvins(double difference) {
    return Argument.value(difference, WHOLE, Dimension.TEMPERATURE_DIFFERENCE);
  }

  private static Argument celsius(double celsius) {
    return Argument.value(celsius, TENTHS, Dimension.TEMPERATURE);
  }

  private static Argument seconds(double seconds) {
    return Argument.value(seconds, WHOLE, Dimension.DURATION);
  }

  private Boil find() {
    Level level = Level.highest(trace, noise);
    if (level.isNone()) {
      return notSeen(NoBoilSays.BROKEN.with(seconds(SHORT_SECONDS)));
    }
    if (level.seconds() < SHORT_SECONDS) {
      return notSeen(NoBoilSays.HELD_TOO_SHORT.with(seconds(SHORT_SECONDS)));
    }
    if (!search.agrees(level.celsius())) {
      return notSeen(
          NoBoilSays.OTHER_LEVEL.with(
              celsius(level.celsius()), celsius(search.level().orElseThrow())));
    }
    return rise(level);
  }

  private Boil rise(Level level) {
    double scattered = Math.max(LEAST_ROUNDED_KELVINS, 2 * noise);
    Boil first = rise(level, scattered);
    if (first instanceof Boil.Seen seen) {
      double lag = Math.max(search.lag(), USUAL_LAG_SECONDS);
      double rounded = Math.min(1.2 * lag * seen.heatingRate(), LINE_KELVINS / 2);
      Level later = level.from(trace, seen.at() + 3 * lag);
      Boil second = rise(later, Math.max(scattered, rounded));
      return second instanceof Boil.Seen found && !later.isFlat(found.heatingRate())
          ? levelledOff(later)
          : second;
    }
    return first;
  }

  private static Boil levelledOff(Level level) {
    return notSeen(NoBoilSays.LEVELLED_OFF.with(celsius(level.celsius())));
  }

  private Boil rise(Level level, double rounded) {
    int end = lastBelow(level.celsius() - rounded, level.start()) + 1;
    int from = lastBelow(level.celsius() - LINE_KELVINS, end) + 1;
    if (from == 0) {
      return notSeen(NoBoilSays.STARTS_HOT.with(kelvins(LINE_KELVINS)));
    }
    if (end - from < LINE_READINGS) {
      return notSeen(
          NoBoilSays.FEW_IN_LINE.with(
              Argument.count(Math.max(0, end - from)),
              kelvins(LINE_KELVINS),
              Argument.count(LINE_READINGS)));
    }
    double gap = longestGap(from - 1, level.start());
    if (gap > LONGEST_GAP_SECONDS) {
      return notSeen(NoBoilSays.GAP.with(seconds(gap)));
    }
    return meeting(level, from, end);
  }

  private Boil meeting(Level level, int from, int end) {
    Line line = Line.through(trace, from, end);
    if (line.slope() < LEAST_RATE || levelsOff(from, end)) {
      return levelledOff(level);
    }
    double least = search.resolution() / Math.sqrt(12);
    Meeting meeting = meeting(level, line, from, end, least);
    double ofLevel = level.line().uncertaintyOfMean(least);
    double ofShort = level.isLong() ? 0 : SHORT_PLATEAU_KELVINS;
    return new Boil.Seen(
        meeting.seconds() - search.lag(),
        trace.secondsAt(from),
        line.at(trace.secondsAt(from)),
        trace.secondsAt(level.end() - 1),
        level.celsius(),
        level.isLong() ? Boil.Length.LONG : Boil.Length.SHORT,
        line.slope(),
        meeting.uncertainty(),
        Math.hypot(ofLevel, ofShort) / line.slope());
  }

  private record Meeting(double seconds, double uncertainty) {}

  /** By the line, or where the last 24 K are there by a parabola through them. */
  private Meeting meeting(Level level, Line line, int from, int end, double least) {
    double straight = line.reaches(level.celsius());
    Meeting byLine = new Meeting(straight, line.uncertaintyAt(straight, least) / line.slope());
    int before = lastBelow(level.celsius() - BEND_KELVINS, from) + 1;
    if (before == 0 || longestGap(before - 1, from) > LONGEST_GAP_SECONDS) {
      return byLine;
    }
    Arc arc = Arc.through(trace, before, end);
    double bent = arc.reaches(level.celsius(), straight);
    if (arc.slopeAt(bent) < line.slope() / 3 || Math.abs(bent - straight) > LONG_SECONDS) {
      return byLine;
    }
    return new Meeting(bent, arc.uncertaintyAt(bent, least) / arc.slopeAt(bent));
  }

  /** Whether the rise slows down by much from its first to its second half, beyond scatter. */
  private boolean levelsOff(int from, int end) {
    int middle = (from + end) / 2;
    Line first = Line.through(trace, from, middle);
    Line second = Line.through(trace, middle, end);
    double allowance =
        2
            * Math.hypot(
                noise / Math.sqrt(Math.max(first.spread(), 1e-9)),
                noise / Math.sqrt(Math.max(second.spread(), 1e-9)));
    return second.slope() + allowance < LEAST_SLOPE_RATIO * first.slope();
  }

  /** The last reading before an index whose neighbourhood is below a temperature, or -1. */
  private int lastBelow(double celsius, int before) {
    double[] few = new double[5];
    for (int i = before - 1; i >= 0; i--) {
      int first = Math.max(0, i - 2);
      int count = Math.min(trace.size(), i + 3) - first;
      System.arraycopy(trace.values(), first, few, 0, count);
      if (Robust.median(few, count) < celsius) {
        return i;
      }
    }
    return -1;
  }

  private double longestGap(int from, int start) {
    double longest = 0;
    double until = trace.secondsAt(start) + SHORT_SECONDS;
    for (int i = Math.max(1, from + 1); i < trace.size(); i++) {
      if (trace.secondsAt(i - 1) > until) {
        break;
      }
      longest = Math.max(longest, trace.secondsAt(i) - trace.secondsAt(i - 1));
    }
    return longest;
  }

  /**
   * The highest level at which the water held.
   *
   * @param celsius its mean
   * @param start first reading within reach of it
   * @param end after its last reading
   * @param seconds how long it held
   * @param line a line through the readings that the mean is of
   */
  private record Level(double celsius, int start, int end, double seconds, Line line) {

    private static final double REACH_KELVINS = 0.9;
    private static final double EXCURSION_SECONDS = 15;
    private static final double SETTLING_SECONDS = 10;
    private static final double MEAN_OVER_SECONDS = 300;
    private static final Level NONE = new Level(0, 0, 0, 0, new Line(0, 0, 0, 0, 0, 0, 0));

    boolean isNone() {
      return end == 0;
    }

    boolean isLong() {
      return seconds >= LONG_SECONDS;
    }

    /** Whether it rises or falls by little beside the rise before it, beyond scatter. */
    boolean isFlat(double heatingRate) {
      double allowed = MOST_PLATEAU_SLOPE * heatingRate + 2 * line.uncertaintyOfSlope();
      return Math.abs(line.slope()) <= allowed;
    }

    static Level highest(Trace trace, double noise) {
      double from = trace.secondsAt(0);
      double to = trace.secondsAt(trace.size() - 1);
      HeldAverages held = HeldAverages.of(trace, from, to, LONG_SECONDS);
      if (held.indexOfHighest() < 0) {
        held = HeldAverages.of(trace, from, to, SHORT_SECONDS);
      }
      int best = held.indexOfHighest();
      if (best < 0) {
        return NONE;
      }
      double reach = REACH_KELVINS + 1.5 * noise;
      Level rough = around(trace, held.timeAt(best), held.values[best], reach);
      boolean drifts = Math.abs(rough.celsius() - held.values[best]) > reach / 2;
      return drifts ? rough : around(trace, held.timeAt(best), rough.celsius(), reach);
    }

    /** The same level, its mean taken from a time on where enough of it is left. */
    Level from(Trace trace, double time) {
      double last = trace.secondsAt(end - 1);
      double begins = Math.min(time, Math.max(trace.secondsAt(start), last - SHORT_SECONDS));
      Trace part =
          trace.between(begins, Math.min(last, begins + MEAN_OVER_SECONDS)).within(celsius, 2);
      Line later = Line.through(part, 0, part.size());
      return new Level(later.middleCelsius(), start, end, seconds, later);
    }

    private static Level around(Trace trace, double time, double celsius, double reach) {
      int middle = Math.min(trace.size() - 1, trace.indexAtOrAfter(time));
      int start = edge(trace, middle, -1, celsius, reach);
      int last = edge(trace, middle, 1, celsius, reach);
      double begins = trace.secondsAt(start);
      double seconds = trace.secondsAt(last) - begins;
      double settling = Math.min(SETTLING_SECONDS, seconds / 3);
      double until = Math.min(trace.secondsAt(last), begins + settling + MEAN_OVER_SECONDS);
      Trace part = trace.between(begins + settling, until).within(celsius, reach);
      Line line = Line.through(part, 0, part.size());
      return new Level(line.middleCelsius(), start, last + 1, seconds, line);
    }

    /** The last reading within reach of the level, going one way; short excursions are passed. */
    private static int edge(Trace trace, int middle, int way, double celsius, double reach) {
      int edge = middle;
      for (int i = middle; i >= 0 && i < trace.size(); i += way) {
        if (Math.abs(trace.celsiusAt(i) - celsius) <= reach) {
          edge = i;
        } else if (Math.abs(trace.secondsAt(i) - trace.secondsAt(edge)) > EXCURSION_SECONDS) {
          break;
        }
      }
      return edge;
    }
  }

  /**
   * A lasting fall of the water.
   *
   * @param from when it began, s
   * @param highest the highest reading before it
   * @param lowest the lowest reading after it
   */
  private record Fall(double from, double highest, double lowest) {

    private static final double LASTING_SECONDS = 30;

    boolean isNone() {
      return Double.isNaN(from);
    }

    /** The first fall by more than 8 K below the highest so far that lasts 30 s. */
    static Fall first(Trace trace) {
      double highest = Double.NEGATIVE_INFINITY;
      double belowSince = Double.NaN;
      double lowest = Double.POSITIVE_INFINITY;
      for (int i = 0; i < trace.size(); i++) {
        double value = trace.celsiusAt(i);
        if (value > highest) {
          highest = value;
        }
        if (value > highest - LINE_KELVINS) {
          belowSince = Double.NaN;
          lowest = Double.POSITIVE_INFINITY;
          continue;
        }
        belowSince = Double.isNaN(belowSince) ? trace.secondsAt(i) : belowSince;
        lowest = Math.min(lowest, value);
        if (trace.secondsAt(i) - belowSince >= LASTING_SECONDS) {
          return new Fall(belowSince, highest, lowest);
        }
      }
      return new Fall(Double.NaN, 0, 0);
    }
  }
}
