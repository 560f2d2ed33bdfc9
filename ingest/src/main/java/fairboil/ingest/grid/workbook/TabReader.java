package fairboil.ingest.grid.workbook;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.grid.ColumnNames;
import fairboil.ingest.grid.UnreadableException;
import fairboil.ingest.grid.csv.RowSays;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/** Reads the rows of one tab. For one thread. */
final class TabReader {

  private static final int MAX_COLUMNS = 1_000;
  private static final int MAX_CELL = 1 << 16;
  private static final int MAX_ROW = 1 << 20;

  private static final Template MERGED =
      Template.of("what stands in the merged cells {list} was read for each of their rows");
  private static final Template MANY_MERGED =
      Template.of(
          "what stands in the merged cells {list} and others was read for each of their rows");
  private static final Template UNMERGE = Template.of("unmerge them if it does not hold for each");

  private final Place place;
  private final boolean from1904;
  private final Merges merges;
  private final Errors errors;
  private final List<Finding> findings = new ArrayList<>();

  /** What becomes of cells that show an error. */
  enum Errors {
    /** They are left out, each with a finding. */
    LEFT_OUT,
    /** They are given as they are shown: whoever reads the rows knows them. */
    GIVEN
  }

  TabReader(Place place, boolean from1904, List<Merge> merges, Errors errors) {
    this.place = place;
    this.errors = errors;
    this.from1904 = from1904;
    this.merges = new Merges(merges);
  }

  /**
   * Reads a tab to its end.
   *
   * @throws UnreadableException where reading ended, if not at the end; the rows before it were
   *     given
   */
  void read(Sheet sheet, RowSink sink) throws UnreadableException {
    int line = 1;
    try (Stream<Row> rows = sheet.openStream()) {
      Iterator<Row> each = rows.iterator();
      while (each.hasNext()) {
        Row row = each.next();
        line = row.getRowNum();
        sink.row(line, cells(row));
      }
    } catch (UnreadableException e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      throw Damaged.tab(line < 1 || line > MAX_ROW ? place : Place.of(place.file(), line));
    }
    tellMerged();
  }

  private List<String> cells(Row row) throws UnreadableException {
    List<String> cells = new ArrayList<>();
    Place line = Place.of(place.file(), Math.min(row.getRowNum(), MAX_ROW));
    for (int i = 0; i < row.getCellCount(); i++) {
      String text = row.hasCell(i) ? text(row.getCell(i), i, line) : "";
      if (!text.isEmpty()) {
        pad(cells, i, line);
        cells.add(text);
      }
    }
    merges.fill(row.getRowNum(), cells);
    return cells;
  }

  private static void pad(List<String> cells, int width, Place line) throws UnreadableException {
    if (width >= MAX_COLUMNS) {
      throw new UnreadableException(line, RowSays.TOO_MANY_CELLS, RowSays.LEAVE_SOME_OUT);
    }
    while (cells.size() < width) {
      cells.add("");
    }
  }

  private String text(Cell cell, int column, Place line) throws UnreadableException {
    CellText read = CellText.of(cell, from1904);
    if (errors == Errors.GIVEN && !read.shown().isEmpty()) {
      return read.shown();
    }
    read.problem().ifPresent(problem -> findings.add(finding(problem, read, column, line)));
    if (read.text().length() > MAX_CELL) {
      throw new UnreadableException(line, RowSays.CELL_TOO_LONG, RowSays.SHORTEN);
    }
    return read.text();
  }

  private static Finding finding(Message problem, CellText read, int column, Place line) {
    Place cell = line.column(ColumnNames.LETTERS.of(column, ""));
    return read.remedy().isEmpty()
        ? Finding.note(cell, problem, Message.NONE)
        : Finding.error(cell, problem, read.remedy());
  }

  private void tellMerged() {
    List<String> filled = merges.filled();
    if (!filled.isEmpty()) {
      List<Argument> some = filled.stream().limit(5).map(Argument::word).toList();
      Template merged = filled.size() > 5 ? MANY_MERGED : MERGED;
      findings.add(Finding.note(place, merged.with(Argument.list(some)), UNMERGE.with()));
    }
  }

  List<Finding> findings() {
    return findings;
  }
}
