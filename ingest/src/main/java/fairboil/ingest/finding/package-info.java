/**
 * What a reader of a study should know about its data.
 *
 * <p>Start at {@link fairboil.ingest.finding.Finding}: a severity, a {@link
 * fairboil.ingest.finding.Place}, what is wrong and what to do, and where one row in a sheet would
 * mend it, that {@link fairboil.ingest.finding.SheetRow}. {@link fairboil.ingest.finding.Ledger}
 * accounts for everything read. {@link fairboil.ingest.finding.RepeatedFindings} shortens what is
 * said of many cells. Nothing here knows of any other package.
 */
package fairboil.ingest.finding;
