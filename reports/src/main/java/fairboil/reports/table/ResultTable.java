package fairboil.reports.table;

import com.opencsv.CSVWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.LongColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.columns.Column;

/**
 * A result table, filled in.
 *
 * <p>Held as Tablesaw columns without a {@code Table} around them: the first use of that class
 * scans the whole class path for readers of files, which costs a tenth of a short run.
 *
 * <p>Written as CSV (RFC 4180 but for its line ends, which are LF): a header, comma, dot decimals,
 * numbers in as many digits as it takes to read back the same number, an empty cell for what is not
 * known. Words that a spreadsheet would run as a formula get an apostrophe in front.
 */
public final class ResultTable {

  /** What makes a spreadsheet take a cell for a formula (OWASP, "CSV Injection"). */
  private static final String FORMULA_STARTS = "=+-@\t\r";

  private final TableSchema<?> schema;
  private final List<Column<?>> columns;

  ResultTable(TableSchema<?> schema, List<Column<?>> columns) {
    this.schema = schema;
    this.columns = columns;
  }

  /** What the table is. */
  public TableSchema<?> schema() {
    return schema;
  }

  /** How many rows it has. */
  public int rows() {
    return columns.get(0).size();
  }

  /**
   * Writes the table as CSV and flushes the writer, which stays open.
   *
   * @throws IOException if the writer refuses
   */
  public void writeCsv(Writer writer) throws IOException {
    @SuppressWarnings("resource") // closing it would close the caller's writer
    CSVWriter csv = new CSVWriter(writer, ',', '"', '"', "\n");
    csv.writeNext(columns.stream().map(Column::name).toArray(String[]::new), false);
    for (int row = 0; row < rows(); row++) {
      csv.writeNext(cells(row), false);
    }
    csv.flush();
    if (csv.checkError()) {
      throw csv.getException();
    }
  }

  /** A cell as it is written: empty where nothing is known. */
  String cell(String column, int row) {
    return columns.stream()
        .filter(other -> other.name().equals(column))
        .findFirst()
        .map(found -> cell(found, row))
        .orElseThrow(() -> new IllegalArgumentException("no column " + column));
  }

  private String[] cells(int row) {
    return columns.stream().map(column -> cell(column, row)).toArray(String[]::new);
  }

  private static String cell(Column<?> column, int row) {
    if (column.isMissing(row)) {
      return "";
    }
    if (column instanceof DoubleColumn numbers) {
      return Decimal.of(numbers.getDouble(row));
    }
    if (column instanceof LongColumn counts) {
      return Long.toString(counts.getLong(row));
    }
    return guarded(((StringColumn) column).get(row));
  }

  private static String guarded(String words) {
    return FORMULA_STARTS.indexOf(words.charAt(0)) >= 0 ? "'" + words : words;
  }
}
