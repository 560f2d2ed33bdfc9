package fairboil.ingest.log;

/**
 * Takes the blanks away between a separator and the quotation mark that opens a cell. By RFC 4180
 * such a cell is not quoted, and a separator within would part it: {@code 1, "2,5"}.
 */
final class BlanksBeforeQuotes {

  private final char separator;
  private final StringBuilder out = new StringBuilder();
  private boolean atStart = true;
  private boolean quoted;
  private boolean closed;

  private BlanksBeforeQuotes(char separator) {
    this.separator = separator;
  }

  /** A line without such blanks. */
  static String removed(String line, char separator) {
    BlanksBeforeQuotes scan = new BlanksBeforeQuotes(separator);
    for (int i = 0; i < line.length(); i++) {
      scan.take(line, i);
    }
    return scan.out.toString();
  }

  private void take(String line, int at) {
    char c = line.charAt(at);
    if (!quoted && atStart && c != separator && isBlankBeforeQuote(line, at)) {
      return;
    }
    // A second quotation mark right behind a closing one stands for one inside the cell.
    boolean opens = !quoted && c == '"' && (atStart || closed);
    closed = quoted && c == '"';
    quoted = opens || (quoted && !closed);
    atStart = !quoted && c == separator;
    out.append(c);
  }

  private boolean isBlankBeforeQuote(String line, int at) {
    int i = at;
    while (i < line.length() && line.charAt(i) != separator && LineCells.isBlank(line.charAt(i))) {
      i++;
    }
    return i > at && i < line.length() && line.charAt(i) == '"';
  }
}
