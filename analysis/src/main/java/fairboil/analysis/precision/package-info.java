/**
 * How far runs of one stove differ, stoves of one design, and sites that burn the same stove:
 * {@link fairboil.analysis.precision.Repeatabilities} gives a {@link
 * fairboil.analysis.precision.Repeatability} a measure and level, and a {@link
 * fairboil.analysis.precision.Precision}: who repeated the burns, with which stoves ({@code
 * Layout}), and the sites side by side ({@link fairboil.analysis.precision.Round}). {@code
 * SiteScatter} holds the models, {@code OutlierTests} the critical values of ISO 5725-2.
 */
package fairboil.analysis.precision;
