/**
 * A {@link fairboil.ingest.Study} becomes {@link fairboil.analysis.Results}: no files, no drawing,
 * no console, no clock.
 *
 * <p>A {@code StudyAnalysis} takes the sheets and an opener of logs. Below it: {@code figure}
 * (values and uncertainty), {@code water}, {@code sensor} and {@code layout}, which know only
 * figures and quantities, {@code trace} (clean traces, peaks), {@code heat}, {@code run} (one run),
 * {@code measure} (the one list of measures), {@code group}, {@code effect} and {@code claim}.
 */
package fairboil.analysis;
