package fairboil.ingest.finding;

import java.util.Map;

/** What to type where so that a finding goes away. */
public sealed interface Fix permits SheetRow, CellFix {

  /** The sheet's file, such as {@code sensors.csv}. */
  String sheet();

  /** What to type: column name to cell, in the order to write them; unmodifiable. */
  Map<String, Argument> cells();

  /** The same, its sheet named from outside the folder that holds it. */
  Fix in(String folder);

  /** The same, its sheet called by that name. */
  Fix toSheet(String name);
}
