package fairboil.ingest.log;

import java.util.List;
import java.util.Optional;

/**
 * Where in a log its table stands, and how its cells are parted.
 *
 * @param separator what parts the cells
 * @param width how many cells a row of readings has
 * @param header the header, or empty if there is none
 * @param inComment whether the header stands in a comment
 * @param groups the names over the header, filled to the right; empty if there are none
 * @param units the line of units under the header, if there is one
 * @param firstLine the line of the first reading
 * @param preamble the lines before the table; unmodifiable
 * @param rows readings, a sample of them; unmodifiable
 */
record TableShape(
    Separator separator,
    int width,
    Optional<Sample.Line> header,
    boolean inComment,
    List<String> groups,
    Optional<Sample.Line> units,
    int firstLine,
    List<String> preamble,
    List<Sample.Line> rows) {

  TableShape {
    groups = List.copyOf(groups);
    preamble = List.copyOf(preamble);
    rows = List.copyOf(rows);
  }

  /** The name in the header over a column, from 0; empty if there is none. */
  String name(int column) {
    return header.map(line -> cell(line.cells(), column)).orElse("");
  }

  /** The name over the header over a column; empty if there is none. */
  String group(int column) {
    return cell(groups, column);
  }

  /** The unit under the header of a column; empty if there is none. */
  String unit(int column) {
    return units.map(line -> cell(line.cells(), column)).orElse("");
  }

  /** How many names the header has, up to the last that is not empty. */
  int names() {
    int names = header.map(line -> line.cells().size()).orElse(0);
    while (names > 0 && name(names - 1).isEmpty()) {
      names--;
    }
    return names;
  }

  private static String cell(List<String> cells, int column) {
    return column < cells.size() ? cells.get(column) : "";
  }
}
