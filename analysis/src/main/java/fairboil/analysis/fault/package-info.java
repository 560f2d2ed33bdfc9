/**
 * Keeps a fault of the program to the part in which it happens.
 *
 * <p>Start at {@link fairboil.analysis.fault.Faults}: it does the work of a part, and is the one
 * place where what nobody foresaw is caught. What that cost is a {@link
 * fairboil.analysis.fault.Fault}: the part in plain words, and the trace.
 */
package fairboil.analysis.fault;
