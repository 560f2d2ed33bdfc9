/**
 * Joining of clocks: how far the clock of the stopwatch stands from that of the log.
 *
 * <p>{@link fairboil.analysis.clock.CommonEvent} is an event that both saw; {@link
 * fairboil.analysis.clock.ClockJoin#of} tells from such events by how much the marks are off, how
 * sure that is, and whether the marks are to be moved. The boil that a person marked is never such
 * an event: it is what is compared.
 */
package fairboil.analysis.clock;
