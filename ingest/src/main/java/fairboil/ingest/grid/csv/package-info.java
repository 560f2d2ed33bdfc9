/**
 * CSV as spreadsheets write it.
 *
 * <p>{@link fairboil.ingest.grid.csv.CsvGrid} reads a whole sheet; {@link
 * fairboil.ingest.grid.csv.CsvRows} gives row after row of a text of any length, with bounded
 * memory; {@link fairboil.ingest.grid.csv.Delimiter} recognises what parts the cells. Quoting is
 * that of RFC 4180, split by OpenCSV.
 */
package fairboil.ingest.grid.csv;
