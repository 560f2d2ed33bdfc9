package fairboil.analysis.trace;

import fairboil.ingest.finding.Ledger;
import fairboil.ingest.log.Channel;
import fairboil.ingest.quantity.Unit;
import java.util.EnumMap;
import java.util.Map;

/**
 * From the readings of a channel to a clean trace: what needs the neighbours of a reading.
 *
 * <p>Zeros amid far warmer readings are failed reads. Lone spikes are set aside by the rule of
 * Hampel (F. R. Hampel, J. Amer. Statist. Assoc. 69 (1974) 383) over five readings: a reading is
 * lone if it stands off their median by more than six times both the local and the usual scatter,
 * with its neighbours not standing off with it. Two readings in a row may still be a spike where
 * readings are at most a second apart; a real peak that lasts five seconds is kept.
 */
public final class Screening {

  private static final int REACH = 2;

  /** Readings over which the usual scatter is taken. */
  private static final int STRETCH = 60;

  private static final double SCATTERS = 6;
  private static final double LEAST_SPIKE_KELVINS = 2;
  private static final double ZERO_STANDS_OFF_KELVINS = 20;
  private static final double PAIRS_MAY_BE_SPIKES_BELOW_SECONDS = 1.01;

  private final double[] clean;
  private final double interval;
  private final double resolution;
  private int zeros;
  private int spikes;

  private Screening(double[] readings, double interval, double resolution) {
    this.clean = readings;
    this.interval = interval;
    this.resolution = resolution;
  }

  /**
   * What came of screening a channel.
   *
   * @param trace its clean trace, °C, before any correction is added
   * @param samples readings = used + fault + spike + gap
   * @param zeros how many of the faults were zeros amid warm readings
   */
  public record Screened(Trace trace, Ledger<SampleFate> samples, int zeros) {}

  /**
   * Screens a channel of temperatures.
   *
   * @param seconds when its readings were taken; kept, to be shared by the channels of a log
   * @param interval the usual time between two readings, s
   */
  public static Screened screen(double[] seconds, double interval, Channel channel) {
    double zeroAsWritten = channel.unit().toHeld(0, channel.unit().dimension());
    return screenOwn(seconds, interval, channel, channel.values().asDoubleArray(), zeroAsWritten);
  }

  /**
   * Screens a channel whose readings were converted to temperatures.
   *
   * @param seconds when they were taken; kept, to be shared by the channels of a log
   * @param interval the usual time between two readings, s
   * @param celsius the readings in °C, NaN where missing
   */
  public static Screened screenConverted(
      double[] seconds, double interval, Channel channel, double[] celsius) {
    return screenOwn(seconds, interval, channel, celsius.clone(), Double.NaN);
  }

  private static Screened screenOwn(
      double[] seconds, double interval, Channel channel, double[] celsius, double zeroAsWritten) {
    int missing = withoutInfinite(celsius);
    Screening screening = new Screening(celsius, interval, resolution(channel));
    screening.setAsideZeros(zeroAsWritten);
    screening.setAsideSpikes();
    Trace trace = Trace.owning(seconds, screening.clean, interval);
    return new Screened(trace, screening.ledger(channel, missing), screening.zeros);
  }

  private static double resolution(Channel channel) {
    return channel.unit() == Unit.CELSIUS
            || channel.unit() == Unit.FAHRENHEIT
            || channel.unit() == Unit.KELVIN
        ? channel.resolution()
        : 0;
  }

  private static int withoutInfinite(double[] celsius) {
    int missing = 0;
    for (int i = 0; i < celsius.length; i++) {
      if (!Double.isFinite(celsius[i])) {
        celsius[i] = Double.NaN;
        missing++;
      }
    }
    return missing;
  }

  private Ledger<SampleFate> ledger(Channel channel, int missing) {
    int faults = Math.min(channel.faults(), missing);
    Map<SampleFate, Long> aside = new EnumMap<>(SampleFate.class);
    aside.put(SampleFate.FAULT, (long) faults + zeros);
    aside.put(SampleFate.GAP, (long) missing - faults);
    aside.put(SampleFate.SPIKE, (long) spikes);
    return new Ledger<>(clean.length, (long) clean.length - missing - zeros - spikes, aside);
  }

  private void setAsideZeros(double zero) {
    if (Double.isNaN(zero)) {
      return;
    }
    double before = Double.NaN;
    int i = 0;
    while (i < clean.length) {
      if (clean[i] != zero) {
        before = Double.isNaN(clean[i]) ? before : clean[i];
        i++;
        continue;
      }
      int end = i;
      while (end < clean.length && (clean[end] == zero || Double.isNaN(clean[end]))) {
        end++;
      }
      double after = end < clean.length ? clean[end] : Double.NaN;
      if (standsOff(zero, before) && standsOff(zero, after)) {
        setAsideZeros(i, end);
      }
      i = end;
    }
  }

  private static boolean standsOff(double zero, double neighbour) {
    return Math.abs(neighbour - zero) > ZERO_STANDS_OFF_KELVINS;
  }

  private void setAsideZeros(int from, int end) {
    for (int i = from; i < end; i++) {
      if (!Double.isNaN(clean[i])) {
        clean[i] = Double.NaN;
        zeros++;
      }
    }
  }

  private void setAsideSpikes() {
    Compact present = new Compact(clean);
    double[] deviations = deviationsFromMedian(present.values, present.count);
    double[] usual = scatterOfStretches(present);
    double least = Math.max(LEAST_SPIKE_KELVINS, 3 * resolution);
    int i = 0;
    while (i < present.count) {
      int end = i;
      while (end < present.count
          && isOff(present, deviations, end, Math.max(least, SCATTERS * usualAt(usual, end)))) {
        end++;
      }
      if (end > i && end - i <= longestSpike()) {
        for (int k = i; k < end; k++) {
          clean[present.indices[k]] = Double.NaN;
          spikes++;
        }
      }
      i = Math.max(end, i + 1);
    }
  }

  /** A flame flickers while it burns and not before or after: what is usual is so for a minute. */
  private static double[] scatterOfStretches(Compact present) {
    double[] scatter = new double[present.count / STRETCH + 1];
    double[] differences = new double[STRETCH];
    for (int stretch = 0; stretch < scatter.length; stretch++) {
      int from = stretch * STRETCH;
      int count = Math.max(0, Math.min(STRETCH, present.count - 1 - from));
      for (int i = 0; i < count; i++) {
        differences[i] = present.values[from + i + 1] - present.values[from + i];
      }
      scatter[stretch] = count < 3 ? 0 : Robust.scale(differences, count) / Math.sqrt(2);
    }
    return scatter;
  }

  /** The largest scatter of a reading's own stretch and of those beside it. */
  private static double usualAt(double[] scatter, int i) {
    int stretch = i / STRETCH;
    double usual = scatter[stretch];
    usual = stretch > 0 ? Math.max(usual, scatter[stretch - 1]) : usual;
    return stretch + 1 < scatter.length ? Math.max(usual, scatter[stretch + 1]) : usual;
  }

  private int longestSpike() {
    return interval > 0 && interval < PAIRS_MAY_BE_SPIKES_BELOW_SECONDS ? 2 : 1;
  }

  private static boolean isOff(Compact present, double[] deviations, int i, double limit) {
    double off = Math.abs(deviations[i]);
    return off > limit && off > SCATTERS * localScatter(present, i);
  }

  private static double localScatter(Compact present, int i) {
    double[] window = new double[2 * REACH + 1];
    int count = window(present.values, present.count, i, window);
    double median = Robust.median(window, count);
    for (int k = 0; k < count; k++) {
      window[k] -= median;
    }
    return Robust.scale(window, count);
  }

  private static double[] deviationsFromMedian(double[] values, int count) {
    double[] window = new double[2 * REACH + 1];
    double[] deviations = new double[count];
    for (int i = 0; i < count; i++) {
      int size = window(values, count, i, window);
      deviations[i] = size < 3 ? 0 : values[i] - middle(window, size);
    }
    return deviations;
  }

  private static int window(double[] values, int count, int i, double[] window) {
    int from = Math.max(0, i - REACH);
    int end = Math.min(count, i + REACH + 1);
    System.arraycopy(values, from, window, 0, end - from);
    return end - from;
  }

  /** The median of a few values, which are sorted. */
  private static double middle(double[] few, int count) {
    for (int i = 1; i < count; i++) {
      double value = few[i];
      int k = i;
      while (k > 0 && few[k - 1] > value) {
        few[k] = few[k - 1];
        k--;
      }
      few[k] = value;
    }
    return count % 2 == 1 ? few[count / 2] : (few[count / 2 - 1] + few[count / 2]) / 2;
  }

  /** The readings that are there, with their place among all readings. */
  private static final class Compact {

    private final double[] values;
    private final int[] indices;
    private int count;

    Compact(double[] readings) {
      values = new double[readings.length];
      indices = new int[readings.length];
      for (int i = 0; i < readings.length; i++) {
        if (!Double.isNaN(readings[i])) {
          values[count] = readings[i];
          indices[count++] = i;
        }
      }
    }
  }
}
