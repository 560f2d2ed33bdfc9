package fairboil.ingest.log;

import java.util.List;
import java.util.Optional;

/**
 * Where in a log its table stands, and how its cells are parted.
 *
 * @param separator what parts the cells
 * @param width how many cells a row of readings has
 * @param header the header, or empty if there is none
 * @param place where the header stands
 * @param groups the names over the header, filled to the right; empty if there are none
 * @param units the line of units under the header, if there is one
 * @param firstLine the line of the first reading
 * @param preamble the lines before the table; unmodifiable
 * @param rows readings, a sample of them; unmodifiable
 * @param longer readings with more cells than those, up to the header's; unmodifiable
 */
record TableShape(
    Separator separator,
    int width,
    Optional<Sample.Line> header,
    HeaderPlace place,
    List<String> groups,
    Optional<Sample.Line> units,
    int firstLine,
    List<String> preamble,
    List<Sample.Line> rows,
    List<Sample.Line> longer) {

  /** Where a header stands. */
  enum HeaderPlace {
    /** Over the rows, parted as they are; also where there is no header. */
    TABLE,
    /** In a comment. */
    COMMENT,
    /** Over the rows, but parted in another way, such as by commas over tabs. */
    PARTED_OTHERWISE
  }

  TableShape {
    groups = List.copyOf(groups);
    preamble = List.copyOf(preamble);
    rows = List.copyOf(rows);
    longer = List.copyOf(longer);
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
    return header.map(TableShape::said).orElse(0);
  }

  /** How many cells a line has, up to the last that is not empty. */
  static int said(Sample.Line line) {
    int said = line.cells().size();
    while (said > 0 && line.cell(said - 1).isEmpty()) {
      said--;
    }
    return said;
  }

  /** How many cells the readings have, up to the last that is not empty in all of them. */
  int filled() {
    return rows.stream().mapToInt(TableShape::said).max().orElse(0);
  }

  /** How many cells a row may fill: as many as have a name. */
  int room() {
    boolean level = names() == 0 || header.orElseThrow().cells().size() == width;
    return level ? width : names();
  }

  /** The same table, its header passed over: columns go by their numbers. */
  TableShape unnamed() {
    Optional<Sample.Line> without = header.map(line -> line.withCells(List.of()));
    return new TableShape(
        separator,
        width,
        without,
        HeaderPlace.TABLE,
        List.of(),
        Optional.empty(),
        firstLine,
        preamble,
        rows,
        List.of());
  }

  private static String cell(List<String> cells, int column) {
    return column < cells.size() ? cells.get(column) : "";
  }
}
