/**
 * The sheets of a study: one schema each, and the records that rows become.
 *
 * <p>A sheet's columns are constants ({@link fairboil.ingest.sheet.RunsSheet}, {@link
 * fairboil.ingest.sheet.Settings} and so on), each a {@link fairboil.ingest.sheet.Column} that
 * knows how its cells are read, what it means and an example: reading, empty sheets and printed
 * forms all come from them. {@link fairboil.ingest.sheet.Row} holds the cells of one row; {@link
 * fairboil.ingest.sheet.Run}, {@link fairboil.ingest.sheet.Build} and the other records add what
 * identifies it. To add a column, add a constant to its sheet.
 *
 * <p>{@link fairboil.ingest.sheet.SheetReader} reads a grid by a schema; {@link
 * fairboil.ingest.sheet.SettingsReader} and {@link fairboil.ingest.sheet.StopwatchReader} read the
 * two sheets that have forms of their own. {@code Header} recognises columns, {@code Cells} reads
 * cells, {@code Likely} and {@link fairboil.ingest.sheet.Nearest} know what was likely meant.
 */
package fairboil.ingest.sheet;
