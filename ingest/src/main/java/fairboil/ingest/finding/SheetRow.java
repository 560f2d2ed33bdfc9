package fairboil.ingest.finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

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

  /** The same row, its sheet named from outside the folder that holds it. */
  public SheetRow in(String folder) {
    return new SheetRow(folder + "/" + sheet, cells);
  }
}
