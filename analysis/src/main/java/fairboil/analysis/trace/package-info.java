/**
 * From raw readings to a clean trace, its peak, its events and a curve for charts.
 *
 * <p>{@link fairboil.analysis.trace.Curve} is a channel thinned for drawing; {@link
 * fairboil.analysis.trace.SampleFate} says why a reading was set aside.
 */
package fairboil.analysis.trace;
