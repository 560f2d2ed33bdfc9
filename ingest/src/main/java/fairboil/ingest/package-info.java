/**
 * A study folder on disk becomes a {@link fairboil.ingest.Study}: sheets, units, times and logs, no
 * physics.
 *
 * <p>Start at {@link fairboil.ingest.StudyReader}, which gives an {@link
 * fairboil.ingest.OpenedStudy}: the sheets, and an opener of logs. Its helpers join what the sheets
 * hold by name, one table each ({@code RunTable}, {@code HoleTable} and so on). {@link
 * fairboil.ingest.StudyPool} reads several folders as one study ({@code PooledRuns}, {@code
 * PooledBuilds} and so on). Below it: {@code finding} (what a reader should know), {@code quantity}
 * (units and moments), {@code grid} (bytes to rows of cells), {@code choice} and {@code sheet} (one
 * schema a sheet, and the records that rows become), {@code log} (grid to log). Imports run from
 * this package down, never back.
 */
package fairboil.ingest;
