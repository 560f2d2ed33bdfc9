/**
 * The sheets of a study: one schema each, and the records that rows become.
 *
 * <p>A sheet's columns are constants ({@link fairboil.ingest.sheet.RunsSheet}, {@link
 * fairboil.ingest.sheet.Settings} and so on), each a {@link fairboil.ingest.sheet.Column} that
 * knows how its cells are read, what it means and an example: reading, empty sheets and printed
 * forms all come from them. {@link fairboil.ingest.sheet.Row} holds the cells of one row; {@link
 * fairboil.ingest.sheet.Run}, {@link fairboil.ingest.sheet.Build} and the other records add what
 * identifies it. To add a column, add a constant to its sheet.
 */
package fairboil.ingest.sheet;
