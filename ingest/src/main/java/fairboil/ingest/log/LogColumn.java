package fairboil.ingest.log;

import fairboil.ingest.quantity.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A column of a log, before its use is known.
 *
 * @param index its place, from 0
 * @param name what it is called in findings: its header, {@code T#2} for a header that repeats,
 *     {@code #3} for a column without one
 * @param header what its header says
 * @param looks what its cells look like
 * @param mark its decimal mark
 * @param glued the unit that is glued to its numbers, if there is one
 */
record LogColumn(
    int index, String name, HeaderName header, Looks looks, char mark, Optional<Unit> glued) {

  private static final Set<String> UNIT_NAMES =
      Set.of("unit", "units", "uom", "einheit", "scale", "deg", "degree", "degrees");

  /** What the cells of a column look like. */
  enum Looks {
    EMPTY,
    NUMBERS,
    STAMPS,
    /** A unit of temperature in every cell, that of the column before. */
    UNITS,
    TEXT
  }

  /** Columns of one log are the same if they stand in the same place. */
  @Override
  public boolean equals(Object other) {
    return other instanceof LogColumn column && column.index == index;
  }

  @Override
  public int hashCode() {
    return index;
  }

  /** Its place as people count it: {@code #3}. */
  String number() {
    return number(index);
  }

  /** What a column is called by its place, from 0. */
  static String number(int index) {
    return "#" + (index + 1);
  }

  /** The columns of a table. */
  static List<LogColumn> of(TableShape shape) {
    char usual = decimalMark(shape, -1, '.');
    Map<String, Integer> seen = new HashMap<>();
    List<LogColumn> columns = new ArrayList<>();
    for (int i = 0; i < Math.max(shape.width(), shape.names()); i++) {
      HeaderName header = HeaderName.of(shape.name(i), shape.unit(i));
      String name = name(shape, i, seen);
      columns.add(
          new LogColumn(
              i, name, header, looks(shape, i), decimalMark(shape, i, usual), glued(shape, i)));
    }
    return List.copyOf(columns);
  }

  private static String name(TableShape shape, int column, Map<String, Integer> seen) {
    String header = shape.name(column).replaceAll("\\s+", " ");
    if (header.isEmpty()) {
      return number(column);
    }
    String group = shape.group(column);
    String full = group.isEmpty() || group.equals(header) ? header : group + ": " + header;
    int times = seen.merge(HeaderName.plain(full), 1, Integer::sum);
    return times == 1 ? full : full + "#" + times;
  }

  private static Looks looks(TableShape shape, int column) {
    int numbers = 0;
    int stamps = 0;
    int texts = 0;
    int units = 0;
    for (Sample.Line row : shape.rows()) {
      CellKind kind = row.kind(column);
      numbers += isNumber(kind) ? 1 : 0;
      stamps += kind == CellKind.STAMP ? 1 : 0;
      texts += kind == CellKind.TEXT ? 1 : 0;
      units += kind == CellKind.TEXT && isTemperatureUnit(row.cell(column)) ? 1 : 0;
    }
    return looks(numbers, stamps, texts, mayHoldUnits(shape.name(column)) ? units : 0);
  }

  // A column called phase or state that holds C or K says nothing of the column before it.
  private static boolean mayHoldUnits(String name) {
    return name.isBlank() || HeaderName.words(name).stream().anyMatch(UNIT_NAMES::contains);
  }

  private static boolean isTemperatureUnit(String cell) {
    return UnitWords.ofTemperature(cell).isPresent();
  }

  private static Looks looks(int numbers, int stamps, int text, int units) {
    if (numbers + stamps + text == 0) {
      return Looks.EMPTY;
    }
    if (units * 2 > numbers + stamps + text) {
      return Looks.UNITS;
    }
    if (text > numbers + stamps) {
      return Looks.TEXT;
    }
    return numbers >= stamps ? Looks.NUMBERS : Looks.STAMPS;
  }

  // Of one column, or of all where it is below 0.
  private static char decimalMark(TableShape shape, int only, char fallback) {
    int commas = 0;
    int points = 0;
    for (Sample.Line row : shape.rows()) {
      for (int i = Math.max(0, only); i < (only < 0 ? row.cells().size() : only + 1); i++) {
        if (isNumber(row.kind(i))) {
          commas += row.cell(i).indexOf(',') >= 0 ? 1 : 0;
          points += row.cell(i).indexOf('.') >= 0 ? 1 : 0;
        }
      }
    }
    return commas == 0 && points == 0 ? fallback : commas > points ? ',' : '.';
  }

  private static boolean isNumber(CellKind kind) {
    return kind == CellKind.NUMBER || kind == CellKind.NUMBER_WITH_UNIT;
  }

  // The first; a later change of unit is found when the rows are read.
  private static Optional<Unit> glued(TableShape shape, int column) {
    return shape.rows().stream()
        .filter(row -> row.kind(column) == CellKind.NUMBER_WITH_UNIT)
        .map(row -> gluedUnit(row.cell(column)))
        .findFirst();
  }

  private static Unit gluedUnit(String cell) {
    return UnitWords.ofTemperature(cell.replaceFirst("^[-+\u2212\\d.,eE]*", "")).orElseThrow();
  }
}
