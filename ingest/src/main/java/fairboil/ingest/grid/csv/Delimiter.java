package fairboil.ingest.grid.csv;

/** What parts the cells of a line. */
public enum Delimiter {
  /** A comma. */
  COMMA(','),
  /** A semicolon, as spreadsheets write where the comma is the decimal mark. */
  SEMICOLON(';'),
  /** A tab. */
  TAB('\t');

  private final char character;

  Delimiter(char character) {
    this.character = character;
  }

  /** The character. */
  public char character() {
    return character;
  }

  /** How often it stands in a line outside quotation marks. */
  public int count(String line) {
    int count = 0;
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == character && !quoted) {
        count++;
      }
    }
    return count;
  }

  /** The delimiter that stands most often in a header line; a comma if there is none. */
  public static Delimiter of(String header) {
    Delimiter best = COMMA;
    for (Delimiter delimiter : values()) {
      if (delimiter.count(header) > best.count(header)) {
        best = delimiter;
      }
    }
    return best;
  }
}
