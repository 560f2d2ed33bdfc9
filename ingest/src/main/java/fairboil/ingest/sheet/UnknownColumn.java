package fairboil.ingest.sheet;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
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

  private static final Template UNKNOWN = Template.of("I don't know this column");
  private static final Template HOLDS_TEMPERATURES =
      Template.of("I don't know this column, and it holds temperatures");
  private static final Template HOLDS_TIMES =
      Template.of("I don't know this column, and it holds times");
  private static final Template COMPARE_BY =
      Template.of("to compare burns by it, add its name to compare by or covariates in {sheet}");
  private static final Template NOT_USED = Template.of("as it is, nothing is worked out from it");
  private static final Template EITHER = Template.of("{clause}; {clause}");

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
    Set<String> present = new HashSet<>();
    header.known().keySet().forEach(column -> present.add(column.name()));
    Message remedy = remedy(schema, present, written);
    return holds(schema, written, cells)
        .map(what -> Finding.warning(place, what.with(), remedy))
        .orElseGet(() -> Finding.note(place, UNKNOWN.with(), remedy));
  }

  private static Message remedy(SheetSchema schema, Set<String> present, String written) {
    Message kept =
        schema.equals(RunsSheet.SCHEMA) || schema.equals(BuildsSheet.SCHEMA)
            ? COMPARE_BY.with(Argument.sheet(Settings.SCHEMA.file()))
            : NOT_USED.with();
    return HeaderName.of(written).stream()
        .flatMap(way -> Likely.column(schema, present, way.name()).stream())
        .findFirst()
        .map(likely -> EITHER.with(Argument.clause(likely), Argument.clause(kept)))
        .orElse(kept);
  }

  private static Optional<Template> holds(SheetSchema schema, String written, List<String> cells) {
    return Header.dimension(written)
        .or(() -> mostly(cells, Dimension.TEMPERATURE))
        .or(() -> isOfLengths(schema) ? Optional.empty() : mostly(cells, Dimension.DURATION))
        .flatMap(
            dimension ->
                switch (dimension) {
                  case TEMPERATURE -> Optional.of(HOLDS_TEMPERATURES);
                  case DURATION -> Optional.of(HOLDS_TIMES);
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
