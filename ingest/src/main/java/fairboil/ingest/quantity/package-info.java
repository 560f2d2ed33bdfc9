/**
 * Quantities, units and moments as people write them.
 *
 * <p>{@link fairboil.ingest.quantity.Quantity} is a value in the unit in which its {@link
 * fairboil.ingest.dimension.Dimension} is held; {@link fairboil.ingest.quantity.Unit} converts,
 * with temperatures and differences of temperatures kept apart. {@link
 * fairboil.ingest.quantity.Given} adds where in the study it was written. {@link
 * fairboil.ingest.quantity.Amount} is a number not yet converted, {@link
 * fairboil.ingest.quantity.ClockTime} a moment.
 *
 * <p>Texts are read by {@link fairboil.ingest.quantity.QuantityText}, {@link
 * fairboil.ingest.quantity.MomentText} and {@link fairboil.ingest.quantity.DateText}, each of which
 * gives a {@link fairboil.ingest.quantity.Reading}: a value, nothing, or a refusal in words. {@link
 * fairboil.ingest.quantity.UnitText} knows how units are spelt.
 */
package fairboil.ingest.quantity;
