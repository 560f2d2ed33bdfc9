/**
 * What a reader of a study should know about its data, and messages to people as values.
 *
 * <p>Start at {@link fairboil.ingest.finding.Finding}: a severity, a {@link
 * fairboil.ingest.finding.Place}, what is wrong and what to do, and where typing something would
 * settle it, that {@link fairboil.ingest.finding.Fix}. What is said is a {@link
 * fairboil.ingest.finding.Message}: a {@link fairboil.ingest.finding.Template}, a constant beside
 * the logic that knows it, and its typed {@link fairboil.ingest.finding.Argument}s. Only {@code
 * fairboil.reports.words.Display} turns it into words, in the units of the study. {@link
 * fairboil.ingest.finding.Ledger} accounts for everything read. {@link
 * fairboil.ingest.finding.RepeatedFindings} shortens what is said of many cells. Of other packages
 * it knows {@code fairboil.ingest.dimension} only.
 */
package fairboil.ingest.finding;
