package fairboil.ingest.log;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Sensor;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.Arrays;
import tech.tablesaw.api.DoubleColumn;

/** Makes a channel of what was read of a column. */
final class ChannelMaker {

  /** More decimals than this are those of a binary number, not of a reading. */
  private static final int MOST_DECIMALS = 6;

  /** So many changes must have a step in common before it is taken for the logger's own. */
  private static final int FEWEST_CHANGES = 50;

  /** Ends of the ranges of common converters, in °C, which a reading may also be. */
  private static final double[] RANGE_ENDS = {-45, 850, 1372, 1768};

  /** What one-wire sensors give before their first conversion, in °C; water passes it too. */
  private static final double POWER_ON = 85;

  private static final double NEAR_POWER_ON = 10;
  private static final double END_TOLERANCE = 0.06;
  private static final double JUMP = 20;

  private final ChannelReader reader;
  private final ChannelPlan plan;
  private final Place place;

  ChannelMaker(ChannelReader reader, Place place) {
    this.reader = reader;
    this.plan = reader.plan();
    this.place = place;
  }

  /** The channel of the readings that belong to the run. */
  Channel make(Readings run) {
    double[] written = run.of(reader.values().drain());
    double resolution = resolution(written);
    int empty = 0;
    for (int i = 0; i < written.length; i++) {
      empty += Double.isNaN(written[i]) ? 1 : 0;
      written[i] = Double.isFinite(written[i]) ? plan.held(written[i]) : written[i];
    }
    if (plan.dimension() == Dimension.TEMPERATURE) {
      takeOutRangeEnds(written);
      takeOutPowerOn(written);
    }
    int faults = clearFaults(written);
    return new Channel(
        plan.column().name(),
        plan.role().orElseThrow(),
        plan.sensor(),
        plan.unit().orElseThrow(),
        DoubleColumn.create(plan.column().name(), written),
        resolution,
        faults,
        empty,
        place);
  }

  private static int clearFaults(double[] held) {
    int faults = 0;
    for (int i = 0; i < held.length; i++) {
      if (Double.isInfinite(held[i])) {
        held[i] = Double.NaN;
        faults++;
      }
    }
    return faults;
  }

  private double resolution(double[] written) {
    return plan.sensor()
        .filter(sensor -> plan.dimension() == Dimension.TEMPERATURE)
        .map(Sensor::row)
        .flatMap(row -> row.value(SensorsSheet.RESOLUTION))
        .map(Quantity::value)
        .orElseGet(() -> step(written));
  }

  private double step(double[] written) {
    if (reader.range().count() == 0) {
      return 0;
    }
    int decimals = Math.min(MOST_DECIMALS, reader.decimals());
    long factor = commonFactor(written, Math.pow(10, decimals));
    if (factor == 1 && reader.decimals() > MOST_DECIMALS) {
      return 0;
    }
    double digit = Math.pow(10, -decimals) * factor;
    Unit unit = plan.unit().orElseThrow();
    return Math.abs(unit.toHeld(digit * plan.scale(), unit.dimension().ofDifference()));
  }

  // A logger of quarter degrees writes 20.25, 20.50: its step is 25 of the last digit.
  private static long commonFactor(double[] written, double perUnit) {
    long factor = 0;
    long before = 0;
    int changes = 0;
    boolean started = false;
    for (double value : written) {
      if (Double.isFinite(value)) {
        long now = Math.round(value * perUnit);
        if (started && now != before) {
          factor = greatestCommonDivisor(factor, Math.abs(now - before));
          changes++;
        }
        if (factor == 1) {
          return 1;
        }
        before = now;
        started = true;
      }
    }
    return changes < FEWEST_CHANGES ? 1 : Math.max(1, factor);
  }

  private static long greatestCommonDivisor(long a, long b) {
    long x = a;
    long y = b;
    while (y != 0) {
      long rest = x % y;
      x = y;
      y = rest;
    }
    return x;
  }

  // The end of a range is a fault where readings jump to it and away from it.
  private static void takeOutRangeEnds(double[] held) {
    int i = 0;
    while (i < held.length) {
      int to = i + 1;
      if (isRangeEnd(held[i])) {
        while (to < held.length && held[to] == held[i]) {
          to++;
        }
        if (isFar(held, i - 1, -1, held[i]) && isFar(held, to, 1, held[i])) {
          Arrays.fill(held, i, to, ChannelReader.FAULT);
        }
      }
      i = to;
    }
  }

  // At the very beginning only, and only where the readings after it are far from it.
  private static void takeOutPowerOn(double[] held) {
    int to = 0;
    while (to < held.length && held[to] == POWER_ON) {
      to++;
    }
    if (to > 0 && to < held.length && Math.abs(held[to] - POWER_ON) > NEAR_POWER_ON) {
      Arrays.fill(held, 0, to, ChannelReader.FAULT);
    }
  }

  private static boolean isRangeEnd(double held) {
    for (double end : RANGE_ENDS) {
      if (Math.abs(held - end) < END_TOLERANCE) {
        return true;
      }
    }
    return false;
  }

  // The next reading that is one, in the given direction; none counts as far.
  private static boolean isFar(double[] held, int from, int direction, double end) {
    int i = from;
    while (i >= 0 && i < held.length && !Double.isFinite(held[i])) {
      i += direction;
    }
    return i < 0 || i >= held.length || Math.abs(held[i] - end) > JUMP;
  }
}
