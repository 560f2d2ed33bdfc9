/**
 * Heat into the pot, and boil times restated for other conditions.
 *
 * <p>{@link fairboil.analysis.heat.PotMaterial} knows specific heats, {@link
 * fairboil.analysis.heat.Load} is what a fire has to heat.
 */
package fairboil.analysis.heat;
