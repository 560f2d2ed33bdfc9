/**
 * How far runs of one stove differ, and stoves of one design: {@link
 * fairboil.analysis.precision.Repeatabilities} gives a {@link
 * fairboil.analysis.precision.Repeatability} a measure and level.
 */
package fairboil.analysis.precision;
