package fairboil.ingest.log;

/** What parts the cells of a row, in the order in which they are tried. */
enum Separator {
  TAB('\t', "tabs"),
  SEMICOLON(';', "semicolons"),
  COMMA(',', "commas"),
  PIPE('|', "upright strokes"),
  /** One or many blanks or tabs. */
  BLANKS(' ', "blanks"),
  /** Blanks, a comma, or a comma with blanks: {@code 1/2/24 10:00:01 23.8C, 23.7C}. */
  COMMA_OR_BLANKS(',', "commas and blanks");

  private final char mark;
  private final String label;

  Separator(char mark, String label) {
    this.mark = mark;
    this.label = label;
  }

  /** The character that parts cells, as a CSV parser needs it. */
  char mark() {
    return mark;
  }

  /** What people call it. */
  String label() {
    return label;
  }

  /** Whether a comma parts cells, so that it cannot also be a decimal mark. */
  boolean takesComma() {
    return mark == ',';
  }

  /** Whether several in a row part only once. */
  boolean collapses() {
    return this == BLANKS || this == COMMA_OR_BLANKS;
  }

  /** Whether a line holds nothing but blanks and these. */
  boolean isBlank(char[] text, int length) {
    for (int i = 0; i < length; i++) {
      if (text[i] != mark && !LineCells.isBlank(text[i])) {
        return false;
      }
    }
    return true;
  }

  /**
   * Splits a line that has no quotation mark at the start of a cell.
   *
   * @return false, with nothing sure in {@code cells}, if there is such a mark
   */
  boolean split(char[] text, int length, LineCells cells) {
    cells.reset(text);
    return collapses() ? splitAtRuns(text, length, cells) : splitAtMarks(text, length, cells);
  }

  private boolean splitAtMarks(char[] text, int length, LineCells cells) {
    int start = 0;
    for (int i = 0; i < length; i++) {
      char c = text[i];
      if (c == mark) {
        cells.add(start, i);
        start = i + 1;
      } else if (c == '"' && onlyBlanks(text, start, i)) {
        return false;
      }
    }
    cells.add(start, length);
    return true;
  }

  private static boolean onlyBlanks(char[] text, int from, int to) {
    for (int i = from; i < to; i++) {
      if (!LineCells.isBlank(text[i])) {
        return false;
      }
    }
    return true;
  }

  private boolean splitAtRuns(char[] text, int length, LineCells cells) {
    int i = 0;
    while (i < length) {
      i = skipRun(text, i, length, cells);
      int start = i;
      while (i < length && !parts(text[i])) {
        i++;
      }
      if (start < i) {
        if (text[start] == '"') {
          return false;
        }
        cells.add(start, i);
      }
    }
    return true;
  }

  // Two commas in one run hold an empty cell between them.
  private int skipRun(char[] text, int from, int length, LineCells cells) {
    int i = from;
    int commas = 0;
    while (i < length && parts(text[i])) {
      if (text[i] == ',' && commas++ > 0) {
        cells.add(i, i);
      }
      i++;
    }
    return i;
  }

  /** Whether a character parts cells, where blanks do. */
  boolean parts(char c) {
    return LineCells.isBlank(c) || (this == COMMA_OR_BLANKS && c == ',');
  }
}
