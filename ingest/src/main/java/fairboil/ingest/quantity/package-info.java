/**
 * Quantities, units and moments as people write them.
 *
 * <p>{@link fairboil.ingest.quantity.Quantity} is a value in the unit in which its {@link
 * fairboil.ingest.quantity.Dimension} is held; {@link fairboil.ingest.quantity.Unit} converts, with
 * temperatures and differences of temperatures kept apart. {@link fairboil.ingest.quantity.Given}
 * adds where in the study it was written. {@link fairboil.ingest.quantity.Amount} is a number not
 * yet converted, {@link fairboil.ingest.quantity.ClockTime} a moment.
 */
package fairboil.ingest.quantity;
