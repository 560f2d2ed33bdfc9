/**
 * The result tables: every number of the report at full precision, for other programs.
 *
 * <p>{@link fairboil.reports.table.ResultTables} makes all of them from results. Each is described
 * once by a {@link fairboil.reports.table.TableSchema}, from which its header, its rows and its
 * description are made; a {@link fairboil.reports.table.ResultTable} is one filled in, and writes
 * itself as CSV, and a {@link fairboil.reports.table.DataPackage} describes them all. To add a
 * column, add it to its schema. The only package that knows Tablesaw's {@code Table}.
 */
package fairboil.reports.table;
