package fairboil.ingest.grid.workbook;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.RepeatedFindings;
import fairboil.ingest.grid.ColumnNames;
import fairboil.ingest.grid.FileKind;
import fairboil.ingest.grid.Grid;
import fairboil.ingest.grid.GridRow;
import fairboil.ingest.grid.SourceBytes;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.grid.SourceText;
import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.grid.UnreadableException;
import fairboil.ingest.grid.csv.CsvGrid;
import fairboil.ingest.grid.csv.CsvRows;
import fairboil.ingest.quantity.DecimalMark;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;

/** A workbook ({@code .xlsx}), open for reading; its tabs are sheets. For one thread. */
public final class Workbook implements Closeable {

  private final Place place;
  private final SourceFile source;
  private final PartCheck check;
  private final ReadableWorkbook book;

  private Workbook(Place place, SourceFile source, PartCheck check, ReadableWorkbook book) {
    this.place = place;
    this.source = source;
    this.check = check;
    this.book = book;
  }

  /**
   * Opens a workbook of a study.
   *
   * @param name its name relative to the study folder
   * @throws UnreadableException if it cannot be read: not there, of another kind, locked, damaged,
   *     larger than 64 MB unpacked
   */
  public static Workbook open(StudyFolder folder, String name) throws UnreadableException {
    try (SourceBytes bytes = folder.openBytes(name, FileKind.WORKBOOK)) {
      PartCheck check = new PartCheck(bytes.place());
      InputStream parts = Unpacking.of(bytes, check);
      SourceFile source = bytes.source();
      ReadingOptions options = new ReadingOptions(check.isStyled(), true);
      return new Workbook(bytes.place(), source, check, new ReadableWorkbook(parts, options));
    } catch (UnreadableException e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      throw Damaged.workbook(Place.of(name));
    }
  }

  /** The file with its fingerprint. */
  public SourceFile source() {
    return source;
  }

  /** The tabs, in order. */
  public List<Tab> tabs() {
    return book.getSheets()
        .filter(sheet -> sheet.getName() != null && !sheet.getName().isBlank())
        .map(
            sheet ->
                new Tab(
                    sheet.getIndex(),
                    sheet.getName(),
                    sheet.getVisibility() != SheetVisibility.VISIBLE))
        .toList();
  }

  /** The place of a tab: {@code study.xlsx!runs}. */
  public Place placeOf(Tab tab) {
    return Place.of(place.file() + "!" + tab.name());
  }

  /** A tab as a grid; what cannot be read of it is a finding of the grid. */
  public Grid grid(Tab tab) {
    GridMaker maker = new GridMaker(placeOf(tab));
    TabReader reader = reader(tab, TabReader.Errors.LEFT_OUT);
    try {
      reader.read(sheet(tab), maker);
    } catch (UnreadableException e) {
      maker.findings.add(e.finding());
    }
    maker.findings.addAll(reader.findings());
    return maker.grid();
  }

  /** Whether nothing stands in a tab, or nothing in it can be read. */
  public boolean isEmpty(Tab tab) {
    return grid(tab).rows().isEmpty();
  }

  /**
   * A tab as the text of a CSV file, line for row; what cannot be read of it is a finding.
   *
   * @param findings where to put what a reader should know
   */
  public SourceText text(Tab tab, List<Finding> findings) {
    CsvText csv = new CsvText(placeOf(tab));
    TabReader reader = reader(tab, TabReader.Errors.GIVEN);
    try {
      reader.read(sheet(tab), csv);
    } catch (UnreadableException e) {
      findings.add(e.finding());
    }
    findings.addAll(RepeatedFindings.shortened(reader.findings()));
    return SourceText.of(place, csv.bytes(), source);
  }

  private TabReader reader(Tab tab, TabReader.Errors errors) {
    String id = String.valueOf(sheet(tab).getId());
    return new TabReader(placeOf(tab), check.isFrom1904(), check.merges(id), errors);
  }

  private Sheet sheet(Tab tab) {
    return book.getSheet(tab.index()).orElseThrow();
  }

  @Override
  public void close() throws IOException {
    book.close();
  }

  /** Collects rows within the limits of a sheet. */
  private static final class GridMaker implements RowSink {

    private final Place place;
    private final List<GridRow> rows = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private long cells;
    private int blanks;
    private int comments;

    GridMaker(Place place) {
      this.place = place;
    }

    @Override
    public void row(int line, List<String> row) throws UnreadableException {
      if (row.isEmpty()) {
        blanks++;
      } else if (isComment(row)) {
        comments++;
      } else {
        cells += row.size();
        CsvGrid.checkLimits(Place.of(place.file(), line), rows.size(), cells);
        rows.add(new GridRow(line, row));
      }
    }

    private static boolean isComment(List<String> row) {
      return CsvRows.isComment(row.get(0) + (row.size() > 1 ? "," : ""));
    }

    // A comma in a cell of text could be a decimal mark: its numbers do not tell.
    Grid grid() {
      return new Grid(
          place, rows, DecimalMark.UNKNOWN, ColumnNames.LETTERS, blanks, comments, findings);
    }
  }
}
