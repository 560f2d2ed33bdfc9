package fairboil.ingest.finding;

import java.util.LinkedHashMap;
import java.util.Map;

/** What to type where so that a finding goes away. */
public sealed interface Fix permits SheetRow, CellFix {

  /** The sheet's file, such as {@code sensors.csv}. */
  String sheet();

  /** What to type: column name to cell, in the order to write them; unmodifiable. */
  Map<String, Argument> cells();

  /** What to type as text: column name to cell, its numbers as that voice shows them. */
  default Map<String, String> texts(Voice voice) {
    Map<String, String> texts = new LinkedHashMap<>();
    cells().forEach((column, cell) -> texts.put(column, cell.text(voice)));
    return texts;
  }

  /** The same, its sheet named from outside the folder that holds it. */
  Fix in(String folder);

  /** The same, its sheet called by that name. */
  Fix toSheet(String name);
}
