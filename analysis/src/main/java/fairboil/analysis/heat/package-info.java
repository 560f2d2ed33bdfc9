/**
 * Heat into the pot, and boil times restated for other conditions. Pure: numbers in, numbers out.
 *
 * <p>{@link fairboil.analysis.heat.Restatement} restates a boil time by heat balance: {@link
 * fairboil.analysis.heat.HeatBalance} integrates it, {@link fairboil.analysis.heat.CoolingFit}
 * finds how a pot loses heat from its cooling, {@link fairboil.analysis.heat.Heating} how a fire
 * grew. {@link fairboil.analysis.heat.Load} is what a fire has to heat, and scales by energy;
 * {@link fairboil.analysis.heat.ScalingBias} tells what that leaves out. {@link
 * fairboil.analysis.heat.PotMaterial} knows specific heats.
 */
package fairboil.analysis.heat;
