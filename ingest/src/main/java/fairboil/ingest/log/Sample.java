package fairboil.ingest.log;

import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.TextLines;
import java.io.CharArrayReader;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * The first lines of a log and the last ones of what was read ahead, split in one way.
 *
 * @param separator what parts the cells
 * @param rows the lines, in order; unmodifiable
 */
record Sample(Separator separator, List<Line> rows) {

  private static final int FIRST = 400;
  private static final int LAST = 30;

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

  /** Splits lines that were read ahead; a last line that is cut off there is left out. */
  static Sample of(Place file, char[] ahead, int length, Separator separator) throws IOException {
    TextLines lines = new TextLines(file, new CharArrayReader(ahead, 0, length));
    RowLines source = new RowLines(lines, separator);
    CellKind.Judge judge = new CellKind.Judge();
    List<Line> first = new ArrayList<>();
    Deque<Line> last = new ArrayDeque<>();
    while (first.size() < FIRST && source.advance()) {
      first.add(line(source, judge));
    }
    while (source.advance()) {
      if (last.size() == LAST) {
        last.removeFirst();
      }
      last.addLast(line(source, judge));
    }
    first.addAll(last);
    return new Sample(separator, first);
  }

  private static Line line(RowLines source, CellKind.Judge judge) throws IOException {
    Type type = source.isBlank() ? Type.BLANK : source.isComment() ? Type.COMMENT : Type.CELLS;
    if (type != Type.CELLS) {
      return new Line(source.number(), source.text(), type, List.of(), List.of(), false);
    }
    LineCells cells = source.split();
    List<CellKind> kinds = new ArrayList<>();
    for (int i = 0; i < cells.count(); i++) {
      kinds.add(judge.of(cells, i));
    }
    return new Line(source.number(), source.text(), type, cells.strings(), kinds, cells.isQuoted());
  }
}
