package fairboil.ingest.grid.csv;

import com.opencsv.ICSVParser;
import com.opencsv.RFC4180ParserBuilder;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.TextLines;
import fairboil.ingest.grid.UnreadableException;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Splits lines into rows of cells, row after row, with bounded memory: a cell holds at most {@link
 * #MAX_CELL} characters, line breaks in quotation marks included, and a row at most {@link
 * #MAX_COLUMNS} cells. A quotation mark that is never closed is a finding; its line is set aside
 * and reading goes on with the next. For one thread.
 */
public final class CsvRows {

  /** The most characters of a cell. */
  public static final int MAX_CELL = 1 << 16;

  /** The most cells of a row. */
  public static final int MAX_COLUMNS = 1_000;

  /** A comment; but {@code #3} alone in the first of several cells is the number of a column. */
  private static final Pattern COMMENT = Pattern.compile("\\s*#(?!\\d{1,4}\\s*[,;\\t])");

  // Each unclosed quotation mark costs a search of MAX_CELL characters.
  private static final int MAX_UNCLOSED = 20;

  private final TextLines lines;
  private final Delimiter delimiter;
  private final ICSVParser parser;
  private final Deque<Line> ahead = new ArrayDeque<>();
  private final List<Finding> findings = new ArrayList<>();
  private int unclosed;
  private Line first = new Line(0, "");
  private List<String> cells = List.of();
  private boolean comment;

  private record Line(int number, String text) {}

  /**
   * The rows of the lines to come.
   *
   * @param lines where to read on
   * @param delimiter what parts cells
   */
  public CsvRows(TextLines lines, Delimiter delimiter) {
    this.lines = lines;
    this.delimiter = delimiter;
    this.parser = new RFC4180ParserBuilder().withSeparator(delimiter.character()).build();
  }

  /** The rows from the line that {@code lines} stands on. */
  public static CsvRows fromThisLine(TextLines lines, Delimiter delimiter) {
    CsvRows rows = new CsvRows(lines, delimiter);
    rows.ahead.addFirst(new Line(lines.number(), lines.text()));
    return rows;
  }

  /** Whether a line is a comment: it starts with {@code #}. */
  public static boolean isComment(String line) {
    return COMMENT.matcher(line).lookingAt();
  }

  /**
   * Goes to the next row; a blank line and a comment are rows without cells.
   *
   * @return whether there is one
   * @throws UnreadableException if a line, cell or row exceeds its limit
   */
  public boolean advance() throws IOException {
    while (hasLine()) {
      first = ahead.removeFirst();
      comment = isComment(first.text());
      if (comment || first.text().isBlank()) {
        cells = List.of();
        return true;
      }
      if (first.text().indexOf('"') < 0) {
        return accept(parser.parseLine(first.text()));
      }
      if (splitQuoted()) {
        return true;
      }
    }
    return false;
  }

  private boolean hasLine() throws IOException {
    if (ahead.isEmpty() && lines.advance()) {
      ahead.addLast(new Line(lines.number(), lines.text()));
    }
    return !ahead.isEmpty();
  }

  // RFC 4180 lets a quoted cell run over several lines.
  private boolean splitQuoted() throws IOException {
    QuoteScan scan = new QuoteScan(delimiter);
    StringBuilder row = new StringBuilder(first.text());
    List<Line> taken = new ArrayList<>();
    QuoteScan.State state = scan.feed(first.text());
    while (state == QuoteScan.State.QUOTED) {
      if (row.length() > MAX_CELL || !hasLine()) {
        return giveUp(taken, RowSays.UNCLOSED);
      }
      Line next = ahead.removeFirst();
      taken.add(next);
      row.append('\n').append(next.text());
      scan.feed("\n");
      state = scan.feed(next.text());
    }
    if (state == QuoteScan.State.STRAY) {
      return giveUp(taken, RowSays.GOES_ON);
    }
    return accept(parser.parseLine(row.toString()));
  }

  private boolean giveUp(List<Line> taken, Message problem) throws UnreadableException {
    for (int i = taken.size() - 1; i >= 0; i--) {
      ahead.addFirst(taken.get(i));
    }
    Place place = Place.of(lines.place().file(), first.number());
    if (++unclosed > MAX_UNCLOSED) {
      throw new UnreadableException(
          place,
          RowSays.ENDED.with(Argument.clause(problem), Argument.count(MAX_UNCLOSED)),
          RowSays.SAVE_AS_CSV);
    }
    findings.add(
        Finding.error(
            place, RowSays.LINE_ASIDE.with(Argument.clause(problem)), RowSays.QUOTE_CELL));
    return false;
  }

  private boolean accept(String[] row) throws UnreadableException {
    Place place = Place.of(lines.place().file(), first.number());
    if (row.length > MAX_COLUMNS) {
      throw new UnreadableException(place, RowSays.TOO_MANY_CELLS, RowSays.LEAVE_SOME_OUT);
    }
    String[] trimmed = new String[row.length];
    for (int i = 0; i < row.length; i++) {
      if (row[i].length() > MAX_CELL) {
        throw new UnreadableException(place, RowSays.CELL_TOO_LONG, RowSays.SHORTEN);
      }
      trimmed[i] = row[i].strip();
    }
    cells = Arrays.asList(trimmed);
    return true;
  }

  /** The cells of the row, stripped of white space at both ends; none for a blank line. */
  public List<String> cells() {
    return cells;
  }

  /** The physical line on which the row starts, from 1. */
  public int line() {
    return first.number();
  }

  /** Whether the line is a comment. */
  public boolean isComment() {
    return comment;
  }

  /** Whether nothing stands on the line, or separators only. */
  public boolean isBlank() {
    return !comment && cells.stream().allMatch(String::isEmpty);
  }

  /** What parts the cells. */
  public Delimiter delimiter() {
    return delimiter;
  }

  /** What was found wrong so far. */
  public List<Finding> findings() {
    return List.copyOf(findings);
  }
}
