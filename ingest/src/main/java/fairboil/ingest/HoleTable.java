package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
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

  private static final Argument SHEET = Argument.sheet(RingsSheet.SCHEMA.file());

  private final BuildTable builds;
  private final RingTable rings;
  private final List<Hole> holes = new ArrayList<>();
  // By build, ring, hole and reading.
  private final Map<List<Object>, Place> taken = new LinkedHashMap<>();
  private final Repeats ringless = new Repeats();
  private final Map<String, Row> ringlessRow = new LinkedHashMap<>();
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
                  RingSays.NO_RINGS.with(),
                  RingSays.DESCRIBE_RINGS.with(SHEET))
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
      ringlessRow.putIfAbsent(pair, row);
      ringless.add(pair, row.place(HolesSheet.RING));
    } else if (row.illegible().isEmpty() && isOnRing(row, ring) && isNew(row)) {
      holes.add(new Hole(build.key(), row.get(HolesSheet.RING), row.get(HolesSheet.HOLE), row));
    }
  }

  private Finding unknownRing(String pair, Argument rows) {
    Row row = Objects.requireNonNull(ringlessRow.get(pair));
    String ring = row.get(HolesSheet.RING);
    Map<String, String> cells = new LinkedHashMap<>();
    cells.put("ring", ring);
    cells.put("holes", "");
    return Finding.error(
            ringless.first(pair),
            RingSays.NO_RING.with(
                Argument.name(ring), Argument.name(row.get(HolesSheet.BUILD)), rows),
            rings.remedy(ring))
        .mendedBy(SheetRow.of("rings.csv", cells));
  }

  private boolean isOnRing(Row row, Optional<Ring> ring) {
    int number = row.get(HolesSheet.HOLE);
    int most = ring.flatMap(of -> of.row().value(RingsSheet.HOLES)).orElse(Integer.MAX_VALUE);
    if (number >= 1 && number <= most) {
      return true;
    }
    Argument hole = Argument.number(number, 0);
    Message problem =
        ring.filter(of -> most < Integer.MAX_VALUE)
            .map(of -> Argument.name(of.name()))
            .map(name -> RingSays.NOT_ON_RING.with(hole, name, Argument.number(most, 0)))
            .orElseGet(() -> RingSays.FROM_ONE.with(hole));
    findings.add(
        Finding.error(row.place(HolesSheet.HOLE), problem, RingSays.NUMBER_HOLES.with(SHEET)));
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
              RingSays.SAME_HOLE.with(TableSays.line(before)),
              RingSays.READING_TWO));
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
