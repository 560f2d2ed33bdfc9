package fairboil.ingest.sheet;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.DecimalMark;
import fairboil.ingest.quantity.QuantityText;
import fairboil.ingest.quantity.Reading;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Says what a column may have been meant for that the program does not know. */
final class UnknownColumn {

  /** How many cells are looked at. */
  private static final int LOOKED_AT = 50;

  private UnknownColumn() {}

  /**
   * The finding on a column: a note, or a warning if it holds times or temperatures, or an error if
   * it lacks a word without which it must not be used.
   *
   * @param cells its cells that are not empty
   */
  static Finding finding(Header header, SheetSchema schema, HeaderCell cell, List<String> cells) {
    String written = cell.written();
    Place place = header.place().column(cell.named());
    HeaderName name = HeaderName.of(written).get(0);
    if (schema.equals(StopwatchSheet.SCHEMA) && Laps.isHeader(name.name())) {
      return Laps.column(place, header.known().containsKey(StopwatchSheet.TIME));
    }
    Optional<Finding> asked = Likely.asked(schema, name.name()).map(ask -> ask.at(place));
    if (asked.isPresent()) {
      return asked.get();
    }
    String problem = "this is not a column that is known here";
    Set<String> present = new HashSet<>();
    header.known().keySet().forEach(column -> present.add(column.name()));
    String remedy = remedy(schema, present, written);
    return holds(schema, written, cells)
        .map(what -> Finding.warning(place, problem + ", and it holds " + what, remedy))
        .orElseGet(() -> Finding.note(place, problem, remedy));
  }

  private static String remedy(SheetSchema schema, Set<String> present, String written) {
    String kept =
        schema.equals(RunsSheet.SCHEMA) || schema.equals(BuildsSheet.SCHEMA)
            ? "as it is, it can be named in compare by or covariates of study.csv"
            : "as it is, nothing is worked out from it";
    return HeaderName.of(written).stream()
        .flatMap(way -> Likely.column(schema, present, way.name()).stream())
        .findFirst()
        .map(likely -> likely + "; " + kept)
        .orElse(kept);
  }

  private static Optional<String> holds(SheetSchema schema, String written, List<String> cells) {
    return Header.dimension(written)
        .or(() -> mostly(cells, Dimension.TEMPERATURE))
        .or(() -> isOfLengths(schema) ? Optional.empty() : mostly(cells, Dimension.DURATION))
        .flatMap(
            dimension ->
                switch (dimension) {
                  case TEMPERATURE -> Optional.of("temperatures");
                  case DURATION -> Optional.of("times");
                  default -> Optional.empty();
                });
  }

  /** Whether 1.1" can only be inches in the sheet, never seconds. */
  private static boolean isOfLengths(SheetSchema schema) {
    return Set.of(HolesSheet.SCHEMA, RingsSheet.SCHEMA, PotsSheet.SCHEMA).contains(schema);
  }

  private static Optional<Dimension> mostly(List<String> cells, Dimension dimension) {
    List<String> some = cells.stream().limit(LOOKED_AT).toList();
    long fitting = some.stream().filter(cell -> isOne(cell, dimension)).count();
    return !some.isEmpty() && fitting * 2 > some.size() ? Optional.of(dimension) : Optional.empty();
  }

  // A bare zero fits everything and tells nothing.
  private static boolean isOne(String cell, Dimension dimension) {
    return QuantityText.read(cell, List.of(dimension), Optional.empty(), DecimalMark.UNKNOWN)
            instanceof Reading.Read<?>
        && !cell.matches("[0.,]+");
  }
}
