package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.Claim;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.ProtocolSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Selection;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What several groups claim and what they agreed: the same row in several studies is one. */
final class PooledClaims {

  private final Map<String, Study> studies;
  private final PooledBuilds builds;

  PooledClaims(Map<String, Study> studies, PooledBuilds builds) {
    this.studies = studies;
    this.builds = builds;
  }

  /** The claims; those of one name that say different things carry their folder. */
  List<Claim> claims() {
    Map<String, List<Claim>> byName = new LinkedHashMap<>();
    for (Study study : studies.values()) {
      for (Claim claim : study.claims()) {
        addIfNew(byName, new Claim(claim.key(), withBuilds(claim)));
      }
    }
    Set<String> ambiguous =
        byName.entrySet().stream()
            .filter(entry -> entry.getValue().size() > 1)
            .map(Map.Entry::getKey)
            .collect(Collectors.toSet());
    return byName.values().stream()
        .flatMap(List::stream)
        .map(claim -> ambiguous.contains(claim.key().name()) ? qualified(claim) : claim)
        .toList();
  }

  private static void addIfNew(Map<String, List<Claim>> byName, Claim claim) {
    List<Claim> alike = byName.computeIfAbsent(claim.key().name(), name -> new ArrayList<>());
    boolean known =
        alike.stream()
            .anyMatch(
                other ->
                    SameCells.difference(other.row(), claim.row(), ClaimsSheet.SCHEMA.columns())
                        .isEmpty());
    if (!known) {
      alike.add(claim);
    }
  }

  private static Claim qualified(Claim claim) {
    Key key = claim.key();
    return new Claim(new Key(key.study(), key.study() + " " + key.name()), claim.row());
  }

  private Row withBuilds(Claim claim) {
    Row.Builder row = claim.row().copy();
    for (Column<Selection> column :
        List.of(ClaimsSheet.ABOUT, ClaimsSheet.AGAINST, ClaimsSheet.WHERE)) {
      Optional<Given<Selection>> cell = claim.row().cell(column);
      cell.ifPresent(
          given -> row.put(column, given.map(value -> inPool(claim.key().study(), value))));
    }
    return row.build();
  }

  private Selection inPool(String folder, Selection selection) {
    if (selection instanceof Selection.Named named) {
      return new Selection.Named(buildInPool(folder, named.name()));
    }
    Map<String, String> cells = new LinkedHashMap<>(((Selection.Where) selection).cells());
    cells.replaceAll(
        (column, text) ->
            column.toLowerCase(Locale.ROOT).equals("build") ? buildInPool(folder, text) : text);
    return new Selection.Where(cells);
  }

  private String buildInPool(String folder, String name) {
    Key key = new Key(folder, name);
    return Objects.requireNonNull(studies.get(folder)).build(key).isPresent()
        ? builds.key(key).name()
        : name;
  }

  /**
   * What the groups agreed: the rows of all studies, alike ones once.
   *
   * @throws StudyException if two studies say different things of a column
   */
  List<Row> protocol() throws StudyException {
    Map<String, Row> byColumn = new LinkedHashMap<>();
    for (Study study : studies.values()) {
      for (Row row : study.protocol()) {
        String column = row.get(ProtocolSheet.COLUMN).toLowerCase(Locale.ROOT);
        Row before = byColumn.putIfAbsent(column, row);
        boolean ofAnother = before != null && !before.place().file().equals(row.place().file());
        if (ofAnother
            && SameCells.difference(before, row, ProtocolSheet.SCHEMA.columns()).isPresent()) {
          throw PoolSays.notAsOne(
              List.of(
                  PoolSays.AGREED_DIFFERENTLY.with(
                      Argument.place(before.place()),
                      Argument.place(row.place()),
                      Argument.cell(row.get(ProtocolSheet.COLUMN)))));
        }
      }
    }
    return List.copyOf(byColumn.values());
  }
}
