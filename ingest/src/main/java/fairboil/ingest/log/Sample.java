package fairboil.ingest.log;

import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.TextLines;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;

/**
 * The first lines of a log and the last ones of what was read ahead, split in one way.
 *
 * @param separator what parts the cells
 * @param rows the lines, in order; unmodifiable
 */
record Sample(Separator separator, List<Line> rows) {

  /** What a line is before the table is known. */
  enum Type {
    BLANK,
    COMMENT,
    CELLS
  }

  /**
   * One line.
   *
   * @param number its number, from 1
   * @param text its characters
   * @param type what it is
   * @param cells its cells
   * @param kinds what they look like
   * @param quoted whether some stood in quotation marks
   */
  record Line(
      int number,
      String text,
      Type type,
      List<String> cells,
      List<CellKind> kinds,
      boolean quoted) {

    Line {
      cells = List.copyOf(cells);
      kinds = List.copyOf(kinds);
    }

    /** The same line with other cells. */
    Line withCells(List<String> others) {
      CellKind.Judge judge = new CellKind.Judge();
      return new Line(
          number, text, Type.CELLS, others, others.stream().map(judge::of).toList(), quoted);
    }

    /** The text of a cell, from 0; empty where the line ends before it. */
    String cell(int index) {
      return index < cells.size() ? cells.get(index) : "";
    }

    /** What a cell looks like. */
    CellKind kind(int index) {
      return index < kinds.size() ? kinds.get(index) : CellKind.EMPTY;
    }

    /** How many cells look like data. */
    int data() {
      int data = 0;
      for (CellKind kind : kinds) {
        data += kind.isData() ? 1 : 0;
      }
      return data;
    }

    /** How many cells hold anything. */
    int filled() {
      int filled = 0;
      for (CellKind kind : kinds) {
        filled += kind != CellKind.EMPTY ? 1 : 0;
      }
      return filled;
    }

    /** Whether every cell that holds anything is a unit. */
    boolean isUnits() {
      boolean some = false;
      for (String cell : cells) {
        if (!cell.isEmpty() && !UnitWords.isUnit(cell)) {
          return false;
        }
        some |= !cell.isEmpty();
      }
      return some;
    }
  }

  Sample {
    rows = List.copyOf(rows);
  }

  /** Splits the head of a log. */
  static Sample of(Place file, Head head, Separator separator) throws IOException {
    List<Line> rows = new ArrayList<>();
    int read = add(file, head.first(), separator, 0, rows);
    add(file, head.last(), separator, read + head.skipped(), rows);
    return new Sample(separator, rows);
  }

  private static int add(Place file, String text, Separator separator, int before, List<Line> rows)
      throws IOException {
    TextLines lines = new TextLines(file, new StringReader(text));
    RowLines source = new RowLines(lines, separator);
    CellKind.Judge judge = new CellKind.Judge();
    while (source.advance()) {
      rows.add(line(source, before, judge));
    }
    return lines.number();
  }

  private static Line line(RowLines source, int before, CellKind.Judge judge) throws IOException {
    Type type = source.isBlank() ? Type.BLANK : source.isComment() ? Type.COMMENT : Type.CELLS;
    if (type != Type.CELLS) {
      return new Line(before + source.number(), source.text(), type, List.of(), List.of(), false);
    }
    LineCells cells = source.split();
    List<CellKind> kinds = new ArrayList<>();
    for (int i = 0; i < cells.count(); i++) {
      kinds.add(judge.of(cells, i));
    }
    return new Line(
        before + source.number(), source.text(), type, cells.strings(), kinds, cells.isQuoted());
  }
}
