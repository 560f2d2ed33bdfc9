/**
 * Boil times restated for reference conditions, by one method for the whole study.
 *
 * <p>Enter at {@link fairboil.analysis.normalise.Normalising}: it finds how each pot loses heat
 * from the coolings of all runs, works out each run's heat balance, decides the method, and gives
 * the runs back with their normalised boil times and a {@link
 * fairboil.analysis.normalise.Normalisation}, which says what was decided and why.
 */
package fairboil.analysis.normalise;
