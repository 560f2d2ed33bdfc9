/**
 * A {@link fairboil.ingest.Study} becomes {@link fairboil.analysis.Results}: no files, no drawing,
 * no console, no clock.
 *
 * <p>Start at {@link fairboil.analysis.StudyAnalysis}, which takes the sheets and an opener of
 * logs. Below it: {@code fault} (a fault of the program costs its part alone), {@code figure}
 * (values and uncertainty), {@code water}, {@code sensor} and {@code layout}, which know only
 * figures and quantities, {@code model} (statistics that know nothing of stoves), {@code trace}
 * (clean traces, peaks), {@code heat}, {@code run} (one run), {@code measure} (the one list of
 * measures), {@code group} (runs together), {@code effect} (does hole position matter?), {@code
 * compare}, {@code precision}, {@code claim} and {@code protocol} (did runs keep to what was
 * agreed?).
 */
package fairboil.analysis;
