/**
 * A folder that is written whole or not at all: lock, swap, recovery, refusal of what is not ours.
 *
 * <p>Entry point: {@link fairboil.reports.output.OutputFolder}.
 */
package fairboil.reports.output;
