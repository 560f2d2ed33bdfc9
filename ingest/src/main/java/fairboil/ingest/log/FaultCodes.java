package fairboil.ingest.log;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Unit;
import java.util.Arrays;

/**
 * Numbers that loggers write in place of a reading: the ends of their converters' ranges, and what
 * no probe in or near a fire can read. Common practice, no source.
 */
final class FaultCodes {

  private static final Template POSSIBLE = Template.of("{number} to {number} {word}");

  /** The coldest that can be, in °C: colder is a fault. */
  static final double COLDEST = -50;

  /** The hottest that can be, in °C: hotter is a fault. */
  static final double HOTTEST = 1800;

  /** More than any thermocouple gives, in volts. */
  static final double MOST_VOLTS = 0.1;

  // Sorted. As written, whatever the unit.
  private static final double[] CODES = {
    -32768, -9999.9, -9999, -999.9, -999, -273.15, -270, -242, -196.6, -127, 6553.5, 9999, 9999.9,
    32767, 32768, 65535, 1e9, 9.9e37
  };

  private static final double LAST_LOW = -127;
  private static final double FIRST_HIGH = 6553.5;

  private FaultCodes() {}

  /** Whether a number, as written, is a code in place of a reading. */
  static boolean contains(double written) {
    boolean between = written > LAST_LOW && written < FIRST_HIGH;
    return !between && Arrays.binarySearch(CODES, written) >= 0;
  }

  /** The least that a probe can have read: °C for temperatures, V for voltages. */
  static double least(Dimension dimension) {
    return dimension == Dimension.VOLTAGE ? -MOST_VOLTS : COLDEST;
  }

  /** The most that a probe can have read: °C for temperatures, V for voltages. */
  static double most(Dimension dimension) {
    return dimension == Dimension.VOLTAGE ? MOST_VOLTS : HOTTEST;
  }

  /** What to round those to, for people. */
  static double step(Dimension dimension) {
    return dimension == Dimension.VOLTAGE ? 2e-3 : 2;
  }

  /** What a probe can have read, in that unit: {@code -50 to 1800 °C}. */
  static Message possible(Unit unit) {
    Dimension dimension = unit.dimension();
    int decimals = dimension == Dimension.VOLTAGE ? 1 : 0;
    return POSSIBLE.with(
        Argument.number(unit.fromHeld(least(dimension), dimension), decimals),
        Argument.number(unit.fromHeld(most(dimension), dimension), decimals),
        Argument.word(unit.symbol()));
  }
}
