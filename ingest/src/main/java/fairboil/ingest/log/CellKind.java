package fairboil.ingest.log;

/** What the text of a cell looks like, before its column is known. */
enum CellKind {
  EMPTY,
  NUMBER,
  /** A temperature with its unit glued on: {@code 23.8C}. */
  NUMBER_WITH_UNIT,
  /** A date, a time, or both. */
  STAMP,
  /** A word for a failed reading. */
  FAULT,
  TEXT;

  /** Whether data look like this. */
  boolean isData() {
    return this == NUMBER || this == NUMBER_WITH_UNIT || this == STAMP;
  }

  /** Looks at cells. For one thread. */
  static final class Judge {

    private final NumberScanner numbers = new NumberScanner();
    private final StampScanner stamps = new StampScanner();

    CellKind of(LineCells cells, int cell) {
      return of(cells.text(), cells.start(cell), cells.end(cell));
    }

    CellKind of(String text) {
      return of(text.toCharArray(), 0, text.length());
    }

    private CellKind of(char[] text, int from, int to) {
      if (from == to) {
        return EMPTY;
      }
      if (numbers.scan(text, from, to, '.') || numbers.scan(text, from, to, ',')) {
        return NUMBER;
      }
      if (stamps.scan(text, from, to) && (stamps.hasTime() || stamps.dateDigits(0) <= 4)) {
        return STAMP;
      }
      return ofWords(text, from, to);
    }

    private CellKind ofWords(char[] text, int from, int to) {
      String words = new String(text, from, to - from);
      if (numbers.scanPrefix(text, from, to, words.indexOf('.') < 0 ? ',' : '.')
          && UnitWords.ofTemperature(words.substring(numbers.length())).isPresent()) {
        return NUMBER_WITH_UNIT;
      }
      return FaultWords.contains(words) ? FAULT : TEXT;
    }
  }
}
