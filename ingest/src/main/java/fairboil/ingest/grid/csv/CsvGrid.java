package fairboil.ingest.grid.csv;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.grid.ColumnNames;
import fairboil.ingest.grid.Grid;
import fairboil.ingest.grid.GridRow;
import fairboil.ingest.grid.SourceText;
import fairboil.ingest.grid.TextLines;
import fairboil.ingest.grid.UnreadableException;
import fairboil.ingest.quantity.DecimalMark;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a sheet saved as CSV. */
public final class CsvGrid {

  /** The most rows of a sheet. */
  public static final int MAX_ROWS = 100_000;

  /** The most cells of a sheet up to the last that is filled in each row. */
  public static final int MAX_CELLS = 500_000;

  /** A line that a spreadsheet writes to say what parts the cells. */
  private static final Pattern DECLARED = Pattern.compile("\"?sep=([,;\\t])\"?[,;\\t]*");

  private static final Pattern SEPARATORS_ONLY = Pattern.compile("[\\s,;]*");

  /** A number that can only have a decimal comma. */
  private static final Pattern DECIMAL_COMMA =
      Pattern.compile("(?<![\\d.,])(?:\\d+,(?:\\d{1,2}|\\d{4,})|0,\\d+)(?![\\d.,])");

  private static final Template TOO_MUCH =
      Template.of(
          "reading ended here: a sheet may have 100,000 rows and 500,000 filled cells at most");
  private static final Template LEAVE_OUT =
      Template.of("leave out what does not belong to the study");

  private final Place place;
  private final TextLines lines;
  private final List<GridRow> rows = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private long cells;
  private int blanks;
  private int comments;

  private CsvGrid(SourceText text) {
    this.place = text.place();
    this.lines = TextLines.of(text);
  }

  /**
   * Reads a text to its end. What cannot be read of it is a finding of the grid, with the rows
   * before it kept.
   *
   * @throws IOException if the disk fails
   */
  public static Grid read(SourceText text) throws IOException {
    CsvGrid reader = new CsvGrid(text);
    DecimalMark mark = reader.readAll();
    List<Finding> findings = new ArrayList<>(text.notes());
    findings.addAll(reader.findings);
    return new Grid(
        text.place(),
        reader.rows,
        mark,
        ColumnNames.HEADERS,
        reader.blanks,
        reader.comments,
        findings);
  }

  private DecimalMark readAll() throws IOException {
    try {
      while (lines.advance()) {
        Matcher declared = DECLARED.matcher(lines.text().strip().toLowerCase(Locale.ROOT));
        if (declared.matches()) {
          return readRows(new CsvRows(lines, Delimiter.of(declared.group(1))));
        }
        if (CsvRows.isComment(lines.text())) {
          comments++;
        } else if (SEPARATORS_ONLY.matcher(lines.text()).matches()) {
          blanks++;
        } else {
          return readRows(CsvRows.fromThisLine(lines, Delimiter.of(lines.text())));
        }
      }
    } catch (UnreadableException e) {
      findings.add(e.finding());
    }
    return DecimalMark.UNKNOWN;
  }

  private DecimalMark readRows(CsvRows csv) throws IOException {
    try {
      while (csv.advance()) {
        take(csv);
      }
    } catch (UnreadableException e) {
      findings.add(e.finding());
    }
    findings.addAll(csv.findings());
    return mark(csv.delimiter());
  }

  private void take(CsvRows csv) throws UnreadableException {
    if (csv.isComment()) {
      comments++;
    } else if (csv.isBlank()) {
      blanks++;
    } else {
      add(new GridRow(csv.line(), csv.cells()));
    }
  }

  private void add(GridRow row) throws UnreadableException {
    cells += row.width();
    checkLimits(Place.of(place.file(), row.line()), rows.size(), cells);
    rows.add(row);
  }

  /**
   * Checks that another row of a sheet may be read.
   *
   * @param place the row
   * @param rows how many were read before it
   * @param cells how many cells there are up to the last that is filled in each row, it included
   * @throws UnreadableException if there are too many
   */
  public static void checkLimits(Place place, int rows, long cells) throws UnreadableException {
    if (rows >= MAX_ROWS || cells > MAX_CELLS) {
      throw new UnreadableException(place, TOO_MUCH.with(), LEAVE_OUT.with());
    }
  }

  private DecimalMark mark(Delimiter delimiter) {
    boolean comma =
        rows.stream()
            .flatMap(row -> row.cells().stream())
            .anyMatch(cell -> cell.indexOf(',') >= 0 && DECIMAL_COMMA.matcher(cell).find());
    if (delimiter == Delimiter.COMMA) {
      return comma ? DecimalMark.UNKNOWN : DecimalMark.POINT;
    }
    return comma ? DecimalMark.COMMA : DecimalMark.UNKNOWN;
  }
}
