package fairboil.ingest.finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * A row for a person to add to a sheet.
 *
 * @param sheet the sheet's file name, such as {@code sensors.csv}
 * @param cells column name to cell, in the order to write them; unmodifiable
 */
public record SheetRow(String sheet, Map<String, Argument> cells) implements Fix {

  /** Copies the cells, keeping their order. */
  public SheetRow {
    Objects.requireNonNull(sheet, "sheet");
    cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
  }

  /** A row of cells that are text as it is to be typed. */
  public static SheetRow of(String sheet, Map<String, String> texts) {
    Map<String, Argument> cells = new LinkedHashMap<>();
    texts.forEach((column, text) -> cells.put(column, Argument.word(text)));
    return new SheetRow(sheet, cells);
  }

  @Override
  public SheetRow toSheet(String name) {
    return new SheetRow(name, cells);
  }

  @Override
  public SheetRow in(String folder) {
    return new SheetRow(folder + "/" + sheet, cells);
  }
}
