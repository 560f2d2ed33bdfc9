/**
 * Fuel measures: dry fuel, burning rate, firepower, efficiency, consumption.
 *
 * <p>{@link fairboil.analysis.fuel.FuelBalance} makes them from what was weighed and measured, each
 * a {@link fairboil.analysis.fuel.Known}; {@link fairboil.analysis.fuel.WoodFuel} knows heating
 * values. Knows nothing of runs.
 */
package fairboil.analysis.fuel;
