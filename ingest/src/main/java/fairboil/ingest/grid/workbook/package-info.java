/**
 * Workbooks ({@code .xlsx}), whose tabs are sheets.
 *
 * <p>Start at {@link fairboil.ingest.grid.workbook.Workbook}. A file passes {@code Unpacking},
 * which bounds its size, and {@code PartCheck}, which reads each part once to refuse what would
 * cost the library memory or time and to learn what it does not tell; then fastexcel-reader opens
 * it and {@code TabReader} gives its rows. {@code CellText} writes each cell as a person would have
 * typed it: {@code FormatCode} knows what a number format shows, {@code Serial} dates, times and
 * durations. To read another kind of workbook, write another class beside {@code Workbook}. No
 * class of the library is loaded unless there is a workbook.
 */
package fairboil.ingest.grid.workbook;
