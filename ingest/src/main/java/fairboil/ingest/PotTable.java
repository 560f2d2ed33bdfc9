package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Nearest;
import fairboil.ingest.sheet.Pot;
import fairboil.ingest.sheet.PotGiven;
import fairboil.ingest.sheet.PotsSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The pots of a study, and whether every pot that is named is one of them. */
final class PotTable {

  private final Map<String, Pot> pots = new LinkedHashMap<>();
  private final Repeats strangers = new Repeats();
  private final List<Finding> findings = new ArrayList<>();

  private PotTable() {}

  static PotTable of(String study, List<Row> rows) {
    PotTable table = new PotTable();
    rows.forEach(row -> table.add(study, row));
    return table;
  }

  private void add(String study, Row row) {
    String name = row.get(PotsSheet.POT);
    Pot before = pots.putIfAbsent(name, new Pot(new Key(study, name), row));
    if (before != null) {
      findings.add(
          Finding.error(
              row.place(PotsSheet.POT),
              TableSays.SAME_POT.with(Argument.cell(name), TableSays.line(before.row().place())),
              TableSays.NAME_POTS));
    }
  }

  /** Looks at the pots that runs and settings name. */
  void check(List<Run> runs, Row settings) {
    for (Run run : runs) {
      Optional<Given<PotGiven>> cell = run.row().cell(RunsSheet.POT);
      if (cell.isPresent() && cell.get().value() instanceof PotGiven.Named named) {
        check(named.name(), cell.get().place());
      }
    }
    settings.cell(Settings.REFERENCE_POT).ifPresent(pot -> check(pot.value(), pot.place()));
    strangers.forEach(this::unknown, findings);
  }

  private void check(String name, Place place) {
    if (!pots.containsKey(name)) {
      strangers.add(name, place);
    }
  }

  private Finding unknown(String name, Argument rows) {
    Argument sheet = Argument.sheet(PotsSheet.SCHEMA.file());
    Map<String, String> cells = new LinkedHashMap<>();
    cells.put("pot", name);
    cells.put("mass", "");
    cells.put("material", "");
    return Finding.error(
            strangers.first(name),
            TableSays.UNKNOWN_POT.with(Argument.cell(name), sheet, rows),
            Nearest.orElse(name, pots.keySet(), TableSays.ADD_POT.with(sheet)))
        .mendedBy(SheetRow.of("pots.csv", cells));
  }

  List<Pot> pots() {
    return List.copyOf(pots.values());
  }

  List<Finding> findings() {
    return findings;
  }
}
