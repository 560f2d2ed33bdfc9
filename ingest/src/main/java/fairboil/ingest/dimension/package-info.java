/**
 * The kinds of quantity, {@link fairboil.ingest.dimension.Dimension}: the first thing that all else
 * stands on. Messages carry values by it, and {@code fairboil.ingest.quantity} reads them by it.
 */
package fairboil.ingest.dimension;
