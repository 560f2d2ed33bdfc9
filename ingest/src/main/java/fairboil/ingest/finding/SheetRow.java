package fairboil.ingest.finding;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A row for a person to paste into a sheet because it would mend a finding.
 *
 * @param sheet the sheet's file name, such as {@code sensors.csv}
 * @param cells column name to cell, in the order to write them; unmodifiable
 */
public record SheetRow(String sheet, Map<String, String> cells) {

  /** Copies the cells, keeping their order. */
  public SheetRow {
    Objects.requireNonNull(sheet, "sheet");
    cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
  }

  /** The names of its columns as the header line of a CSV file. */
  public String header() {
    return line(cells.keySet());
  }

  /** Its cells as a line of a CSV file. */
  public String line() {
    return line(cells.values());
  }

  private static String line(Collection<String> texts) {
    return texts.stream().map(SheetRow::quoted).collect(Collectors.joining(","));
  }

  private static String quoted(String cell) {
    return cell.matches("(?s).*[\",\r\n].*") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
  }

  /** The same row, its sheet named from outside the folder that holds it. */
  public SheetRow in(String folder) {
    return new SheetRow(folder + "/" + sheet, cells);
  }
}
