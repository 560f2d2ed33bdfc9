/**
 * Figures and their uncertainty: the floor that the rest of the analysis stands on.
 *
 * <p>A {@link fairboil.analysis.figure.Figure} is known, as a {@link
 * fairboil.analysis.figure.Measured} with its {@link fairboil.analysis.figure.Budget}, or unknown
 * with the reason. Terms and formulas are those of JCGM 100:2008 (GUM).
 */
package fairboil.analysis.figure;
