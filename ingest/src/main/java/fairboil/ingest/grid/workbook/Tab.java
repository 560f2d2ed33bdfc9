package fairboil.ingest.grid.workbook;

/**
 * A tab of a workbook.
 *
 * @param index its place in the workbook, from 0
 * @param name its name as written
 * @param isHidden whether spreadsheets do not show it
 */
public record Tab(int index, String name, boolean isHidden) {}
