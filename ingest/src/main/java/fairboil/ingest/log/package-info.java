/**
 * Logs as loggers write them.
 *
 * <p>A {@link fairboil.ingest.log.LogOpener} gives an {@link fairboil.ingest.log.OpenedLog}: a
 * {@link fairboil.ingest.log.Log} with its {@link fairboil.ingest.log.TimeAxis} and {@link
 * fairboil.ingest.log.Channel}s, or findings that say why there is none. What needs neighbours of a
 * reading (lone spikes, lone zeros) is not decided here but in the analysis.
 */
package fairboil.ingest.log;
