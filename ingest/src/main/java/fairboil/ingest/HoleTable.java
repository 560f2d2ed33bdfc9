package fairboil.ingest;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.Hole;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.ingest.sheet.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The holes of a study as measured, each in a ring that its build has. */
final class HoleTable {

  private final BuildTable builds;
  private final RingTable rings;
  private final List<Hole> holes = new ArrayList<>();
  // By build, ring, hole and reading.
  private final Map<List<Object>, Place> taken = new LinkedHashMap<>();
  private final Repeats ringless = new Repeats();
  private final Map<String, String> ringOf = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  private HoleTable(BuildTable builds, RingTable rings) {
    this.builds = builds;
    this.rings = rings;
  }

  static HoleTable of(List<Row> rows, BuildTable builds, RingTable rings) {
    HoleTable table = new HoleTable(builds, rings);
    if (rings.isEmpty() && !rows.isEmpty()) {
      table.findings.add(
          Finding.error(
                  Place.of(rows.get(0).place().file()),
                  "no ring is described, so the holes cannot be compared with what was intended",
                  "describe each ring in rings.csv: how many holes it has, and the wrap of the can")
              .mendedBy(ring(rows)));
    }
    rows.forEach(table::add);
    table.ringless.forEach(table::unknownRing, table.findings);
    return table;
  }

  /** The first ring, with as many holes as were measured of it. */
  private static SheetRow ring(List<Row> rows) {
    String name = rows.get(0).get(HolesSheet.RING);
    int holes =
        rows.stream()
            .filter(row -> row.get(HolesSheet.RING).equals(name))
            .mapToInt(row -> row.get(HolesSheet.HOLE))
            .max()
            .orElseThrow();
    Map<String, String> cells = new LinkedHashMap<>();
    cells.put(RingsSheet.RING.name(), name);
    cells.put(RingsSheet.HOLES.name(), String.valueOf(holes));
    cells.put(RingsSheet.WRAP.name(), "");
    return SheetRow.of(RingsSheet.SCHEMA.file(), cells);
  }

  private void add(Row row) {
    String name = row.get(HolesSheet.BUILD);
    builds.named(name, row.place(HolesSheet.BUILD));
    Build build = builds.find(name).orElseThrow();
    Optional<Ring> ring = rings.find(row.get(HolesSheet.RING), build);
    if (ring.isEmpty() && !rings.isEmpty()) {
      String pair = row.get(HolesSheet.RING) + " of build " + name;
      ringOf.put(pair, row.get(HolesSheet.RING));
      ringless.add(pair, row.place(HolesSheet.RING));
    } else if (row.illegible().isEmpty() && isOnRing(row, ring) && isNew(row)) {
      holes.add(new Hole(build.key(), row.get(HolesSheet.RING), row.get(HolesSheet.HOLE), row));
    }
  }

  private Finding unknownRing(String pair, String rows) {
    String ring = Objects.requireNonNull(ringOf.get(pair));
    Map<String, String> cells = new LinkedHashMap<>();
    cells.put("ring", ring);
    cells.put("holes", "");
    return Finding.error(
            ringless.first(pair),
            "there is no ring " + pair + rows + ", so these holes were set aside",
            rings.remedy(ring))
        .mendedBy(SheetRow.of("rings.csv", cells));
  }

  private boolean isOnRing(Row row, Optional<Ring> ring) {
    int number = row.get(HolesSheet.HOLE);
    int most = ring.flatMap(of -> of.row().value(RingsSheet.HOLES)).orElse(Integer.MAX_VALUE);
    if (number >= 1 && number <= most) {
      return true;
    }
    String has =
        ring.map(of -> "ring " + of.name() + " has holes 1 to " + most)
            .orElse("holes are numbered from 1");
    findings.add(
        Finding.error(
            row.place(HolesSheet.HOLE),
            "there is no hole " + number + ": " + has + ", so this row was set aside",
            "number the holes in order round the ring, or mend the row of rings.csv"));
    return false;
  }

  private boolean isNew(Row row) {
    List<Object> reading =
        List.of(
            row.get(HolesSheet.BUILD),
            row.get(HolesSheet.RING),
            row.get(HolesSheet.HOLE),
            row.get(HolesSheet.READING));
    Place before = taken.putIfAbsent(reading, row.place());
    if (before != null) {
      findings.add(
          Finding.error(
              row.place(HolesSheet.HOLE),
              "this hole stands on line "
                  + before.line().orElse(0)
                  + " already, so this row was set aside",
              "number a second measurement as reading 2"));
    }
    return before == null;
  }

  List<Hole> holes() {
    return holes;
  }

  List<Finding> findings() {
    return findings;
  }
}
