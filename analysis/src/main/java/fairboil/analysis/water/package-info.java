/**
 * Properties of water and of the air pressure that it boils under. Knows nothing of runs.
 *
 * <p>{@link fairboil.analysis.water.Saturation} is the boiling line (IAPWS-IF97), {@link
 * fairboil.analysis.water.Atmosphere} pressure with altitude (ISO 2533), {@link
 * fairboil.analysis.water.Water} density, enthalpy, heat capacity and latent heat.
 */
package fairboil.analysis.water;
