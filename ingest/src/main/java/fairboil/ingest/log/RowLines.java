package fairboil.ingest.log;

import com.opencsv.ICSVParser;
import com.opencsv.RFC4180ParserBuilder;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.TextLines;
import fairboil.ingest.grid.UnreadableException;
import fairboil.ingest.grid.csv.CsvRows;
import fairboil.ingest.grid.csv.QuoteScan;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The lines of a log, each with its cells. A line without quotation marks at the start of a cell is
 * split where it stands; any other is given to OpenCSV's RFC 4180 parser, together with the lines
 * over which a quoted cell goes on. For one thread.
 *
 * <p>Splitting in place is there for speed alone: it makes no strings, and a property test holds it
 * to what OpenCSV gives.
 */
final class RowLines {

  // A quoted cell with line breaks is a title; a longer one is a mark that was never closed.
  private static final int MAX_JOINED = 20;

  // Under a title or names; three dashes may stand for a reading that is missing.
  private static final Pattern RULE =
      Pattern.compile("([*=_~+-])\\1{3,}(?:[\\s|+]+\\1{4,})*[\\s|+]*");

  private final TextLines lines;
  private final Separator separator;
  private final ICSVParser parser;
  private final LineCells cells = new LineCells();
  private final Deque<Line> ahead = new ArrayDeque<>();
  private char[] characters = new char[256];
  private Line current = new Line(0, "", TextLines.Ending.LF);
  private boolean unclosed;

  private record Line(int number, String text, TextLines.Ending ending) {}

  RowLines(TextLines lines, Separator separator) {
    this.lines = lines;
    this.separator = separator;
    this.parser = new RFC4180ParserBuilder().withSeparator(separator.mark()).build();
  }

  /** Goes to the next line; its cells are not there until {@link #split}. */
  boolean advance() throws IOException {
    unclosed = false;
    if (!ahead.isEmpty()) {
      current = ahead.removeFirst();
    } else if (lines.advance()) {
      current = new Line(lines.number(), lines.text(), lines.ending());
    } else {
      return false;
    }
    load(current.text());
    return true;
  }

  String text() {
    return current.text();
  }

  /** Its number, from 1. */
  int number() {
    return current.number();
  }

  /** Whether the file ends with this line, without a line end. */
  boolean isUnended() {
    return current.ending() == TextLines.Ending.NONE;
  }

  /** Whether the line has nothing but blanks and separators. */
  boolean isBlank() {
    return separator.isBlank(characters, current.text().length());
  }

  /**
   * Whether the line is a comment: it starts with #, %, // or, where that parts no cells, ;, or is
   * a rule such as {@code =====}.
   */
  boolean isComment() {
    String text = current.text().stripLeading();
    if (text.isEmpty()) {
      return false;
    }
    return switch (text.charAt(0)) {
      case '#', '%' -> !headsColumn(text);
      case '/' -> text.startsWith("//");
      case ';' -> separator != Separator.SEMICOLON;
      case '*', '=', '-', '_', '~', '+' -> isRule(text);
      default -> false;
    };
  }

  private static boolean isRule(String text) {
    return text.length() > 3 && text.charAt(1) == text.charAt(0) && RULE.matcher(text).matches();
  }

  // A lone # or % may be the name of the first column; #3 that of a column without a name.
  private boolean headsColumn(String text) {
    String rest = text.substring(1).stripLeading();
    return !separator.collapses() && !rest.isEmpty() && rest.charAt(0) == separator.mark();
  }

  /** Whether a quotation mark was opened on this line and never closed. */
  boolean isUnclosed() {
    return unclosed;
  }

  /**
   * The cells of the line; they stand until the next call.
   *
   * @throws UnreadableException if there are too many, or one is too long
   */
  LineCells split() throws IOException {
    int length = current.text().length();
    if (!separator.split(characters, length, cells)) {
      splitQuoted();
    }
    if (cells.count() > CsvRows.MAX_COLUMNS || length > CsvRows.MAX_CELL) {
      checkLimits();
    }
    return cells;
  }

  private void load(String text) {
    int length = text.length();
    if (characters.length < length) {
      characters = new char[Math.max(length, characters.length * 2)];
    }
    text.getChars(0, length, characters, 0);
  }

  private void splitQuoted() throws IOException {
    QuoteScan scan = new QuoteScan(separator.mark());
    String first = BlanksBeforeQuotes.removed(current.text(), separator.mark());
    StringBuilder row = new StringBuilder(first);
    List<Line> taken = new ArrayList<>();
    QuoteScan.State state = scan.feed(first);
    while (state == QuoteScan.State.QUOTED && taken.size() < MAX_JOINED && hasNext()) {
      Line next = ahead.removeFirst();
      taken.add(next);
      row.append('\n').append(next.text());
      scan.feed("\n");
      state = scan.feed(next.text());
    }
    if (state == QuoteScan.State.QUOTED) {
      unclosed = true;
      putBack(taken);
      setCells(new String[] {current.text()});
    } else {
      setCells(parser.parseLine(row.toString()));
    }
  }

  private boolean hasNext() throws IOException {
    if (ahead.isEmpty() && lines.advance()) {
      ahead.addLast(new Line(lines.number(), lines.text(), lines.ending()));
    }
    return !ahead.isEmpty();
  }

  private void putBack(List<Line> taken) {
    for (int i = taken.size() - 1; i >= 0; i--) {
      ahead.addFirst(taken.get(i));
    }
  }

  private void setCells(String[] texts) {
    List<String> bare = new ArrayList<>();
    for (String text : texts) {
      String cell = unquoted(text);
      if (!separator.collapses() || !cell.isEmpty()) {
        bare.add(cell);
      }
    }
    cells.set(bare);
    cells.markQuoted();
  }

  // With a blank before its quotation mark a cell is not quoted by RFC 4180; people mean it to be.
  private static String unquoted(String text) {
    String bare = text.strip();
    boolean marked = bare.length() > 1 && bare.startsWith("\"") && bare.endsWith("\"");
    return marked && bare.length() < text.length() ? bare.substring(1, bare.length() - 1) : text;
  }

  private void checkLimits() throws UnreadableException {
    Place place = Place.of(lines.place().file(), Math.max(1, number()));
    if (cells.count() > CsvRows.MAX_COLUMNS) {
      throw new UnreadableException(
          Finding.error(place, RowsSay.TOO_MANY_CELLS.with(), RowsSay.LEAVE_OUT.with()));
    }
    if (cells.longest() > CsvRows.MAX_CELL) {
      throw new UnreadableException(
          Finding.error(place, RowsSay.CELL_TOO_LONG.with(), RowsSay.SHORTEN.with()));
    }
  }
}
