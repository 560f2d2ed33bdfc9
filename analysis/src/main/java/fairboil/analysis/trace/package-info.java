/**
 * From raw readings to a clean trace, its peak, its events and a curve for charts.
 *
 * <p>{@link fairboil.analysis.trace.Curve} is a channel thinned for drawing; {@link
 * fairboil.analysis.trace.SampleFate} says why a reading was set aside. {@link
 * fairboil.analysis.trace.Ignition}, {@link fairboil.analysis.trace.FlameOut} and {@link
 * fairboil.analysis.trace.WaterLevels} find when things happened, each as a {@link
 * fairboil.analysis.trace.Sighting}.
 *
 * <p>The lag of a probe: {@link fairboil.analysis.trace.LagUndoing} undoes it, {@link
 * fairboil.analysis.trace.StepResponse} reads it off a step.
 */
package fairboil.analysis.trace;
