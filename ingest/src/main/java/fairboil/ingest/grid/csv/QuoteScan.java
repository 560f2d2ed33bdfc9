package fairboil.ingest.grid.csv;

/**
 * Follows the quotation marks of a row over the lines on which it stands, to tell where it ends.
 * OpenCSV is given whole rows only: line by line it waits for ever after {@code 1,5" pot}.
 */
public final class QuoteScan {

  /** What stands so far. */
  public enum State {
    /** At the start of a cell. */
    START,
    /** In a cell without quotation marks, or after white space. */
    PLAIN,
    /** Between quotation marks. */
    QUOTED,
    /** After a closing quotation mark. */
    CLOSED,
    /** After a closing quotation mark and text that belongs nowhere. */
    STRAY
  }

  private final char delimiter;
  private State state = State.START;

  QuoteScan(Delimiter delimiter) {
    this(delimiter.character());
  }

  /** A row whose cells are parted by the character. */
  public QuoteScan(char delimiter) {
    this.delimiter = delimiter;
  }

  /** Follows another line of the row. */
  public State feed(String line) {
    for (int i = 0; i < line.length() && state != State.STRAY; i++) {
      state = after(line.charAt(i));
    }
    return state;
  }

  private State after(char c) {
    return switch (state) {
      case START -> c == '"' ? State.QUOTED : plainOrStart(c);
      case PLAIN -> plainOrStart(c);
      case QUOTED -> c == '"' ? State.CLOSED : State.QUOTED;
      case CLOSED -> afterClosing(c);
      case STRAY -> State.STRAY;
    };
  }

  private State plainOrStart(char c) {
    return c == delimiter ? State.START : State.PLAIN;
  }

  // A second quotation mark stands for one inside the cell.
  private State afterClosing(char c) {
    if (c == '"') {
      return State.QUOTED;
    }
    return c == delimiter ? State.START : State.STRAY;
  }
}
