package fairboil.reports.print;

import java.util.OptionalInt;

/**
 * A division of a ring on its strip.
 *
 * @param division its number, from 1
 * @param hole the number of its hole, or empty if it is skipped
 * @param along its place along the wrap from division 1, mm
 */
record RingMark(int division, OptionalInt hole, double along) {}
