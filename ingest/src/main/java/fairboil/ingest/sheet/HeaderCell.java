package fairboil.ingest.sheet;

import fairboil.ingest.quantity.Unit;
import java.util.Optional;

/**
 * The header of one column of a sheet, recognised or not.
 *
 * @param index the column, from 0
 * @param written the header as written, made unique by {@code #2} where it stands twice
 * @param named what findings call the column: its header, or its letter in a workbook
 * @param column the column that it names, or empty for one that the program does not know
 * @param unit the unit in it, if any
 */
record HeaderCell(
    int index, String written, String named, Optional<Column<?>> column, Optional<Unit> unit) {}
