package fairboil.ingest.log;

import fairboil.ingest.finding.Place;

/** Refuses tables whose cells cannot be told apart. */
final class ShapeCheck {

  private ShapeCheck() {}

  /** Whether the table can be read; if not, an error says why. */
  static boolean accepts(TableShape shape, Remarks remarks) {
    Place header = remarks.line(shape.header().map(Sample.Line::number).orElse(shape.firstLine()));
    if (hasDecimalCommas(shape)) {
      remarks.error(
          header,
          "the header has "
              + shape.names()
              + " names, the rows "
              + shape.width()
              + " cells without any decimal point: decimal comma and comma separator cannot be told"
              + " apart",
          "export the log again with semicolons between the cells, or with decimal points");
      return false;
    }
    if (hasLists(shape)) {
      remarks.error(
          remarks.line(shape.firstLine()),
          "the rows are lists of labels and values, not a table with a header",
          "export the log with one column for each probe and its name in the first line");
      return false;
    }
    return fitsHeader(shape, header, remarks);
  }

  // 0,5,19,5 under time,flame: twice as many cells as names, whole numbers all.
  private static boolean hasDecimalCommas(TableShape shape) {
    int names = shape.names();
    boolean doubled = names > 1 && shape.width() > names && shape.width() <= 2 * names;
    boolean commas = shape.separator() == Separator.COMMA;
    return commas && doubled && shape.rows().stream().allMatch(ShapeCheck::isWhole);
  }

  private static boolean isWhole(Sample.Line row) {
    for (int i = 0; i < row.cells().size(); i++) {
      boolean number = row.kind(i) == CellKind.NUMBER;
      if (number && !row.cell(i).matches("[-+]?\\d+")) {
        return false;
      }
    }
    return !row.quoted();
  }

  // S1,983,Ohm,-4426,mdegC: the same words in every row, and no header.
  private static boolean hasLists(TableShape shape) {
    if (shape.header().isPresent() || shape.rows().size() < 3) {
      return false;
    }
    int constant = 0;
    for (int i = 0; i < shape.width(); i++) {
      int column = i;
      String first = shape.rows().get(0).cell(i);
      boolean same =
          shape.rows().stream()
              .allMatch(row -> row.kind(column) == CellKind.TEXT && row.cell(column).equals(first));
      constant += same ? 1 : 0;
    }
    return constant >= 2;
  }

  // Names at the end without cells may be of columns that were left out anywhere before them.
  private static boolean fitsHeader(TableShape shape, Place header, Remarks remarks) {
    if (shape.names() <= shape.width()) {
      return true;
    }
    boolean readings = false;
    for (int i = shape.width(); i < shape.names(); i++) {
      readings |= HeaderName.of(shape.name(i), "").saysTemperature();
      readings |= RoleWords.of(HeaderName.words(shape.name(i))).isPresent();
    }
    if (readings) {
      remarks.error(
          header,
          "the header has "
              + shape.names()
              + " names, most rows have "
              + shape.width()
              + " cells:"
              + " nothing tells which column is missing, so the log was not read",
          "export the log again, with a cell for every column in every row");
    }
    return !readings;
  }
}
