/** {@link fairboil.analysis.measure.Measure}: the one list of what is measured. */
package fairboil.analysis.measure;
