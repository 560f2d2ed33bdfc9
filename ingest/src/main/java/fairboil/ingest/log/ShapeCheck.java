package fairboil.ingest.log;

import fairboil.ingest.finding.Place;

/** Refuses tables whose cells cannot be told apart. */
final class ShapeCheck {

  private static final String REMEDY =
      "write one name over each column, or say in sensors.csv by number, such as #2, what each"
          + " column holds";

  private ShapeCheck() {}

  /** Whether the table can be read; if not, an error says why. */
  static boolean accepts(TableShape shape, Remarks remarks) {
    Place header = remarks.line(shape.header().map(Sample.Line::number).orElse(shape.firstLine()));
    boolean fits = HeaderFit.of(shape) != HeaderFit.DISAGREES;
    if (!fits && hasDecimalCommas(shape)) {
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
    if (!fits) {
      tellMisfit(shape, header, remarks);
    }
    return fits && fitsUnits(shape, remarks);
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

  private static void tellMisfit(TableShape shape, Place header, Remarks remarks) {
    int times = HeaderFit.timesUnderReading(shape);
    if (times >= 0) {
      tellTimes(shape, times, header, remarks);
    } else {
      tellWidth(shape, header, remarks);
    }
  }

  private static void tellTimes(TableShape shape, int column, Place header, Remarks remarks) {
    remarks.error(
        header,
        "column "
            + Spell.quoted(shape.name(column))
            + " holds times, such as "
            + Spell.quoted(shape.rows().get(0).cell(column))
            + ": the names do not stand over their own cells, so the log was not read",
        REMEDY);
  }

  private static void tellWidth(TableShape shape, Place header, Remarks remarks) {
    remarks.error(
        header,
        counts(shape)
            + ": which name belongs to which cell cannot be told, so the log was not read",
        REMEDY);
  }

  private static String counts(TableShape shape) {
    String parted = shape.separator().label();
    if (shape.names() == shape.width()) {
      return "the names on this line are not parted as the cells of the rows are (by "
          + parted
          + ")";
    }
    boolean otherwise = shape.place() == TableShape.HeaderPlace.PARTED_OTHERWISE;
    return "this line has "
        + Spell.count(shape.names(), isGapless(shape) ? "name" : "cell")
        + (otherwise ? ", which " + parted + " do not part" : "")
        + ", but most rows have "
        + Spell.count(shape.width(), "cell")
        + " (split at "
        + parted
        + ")";
  }

  // Between names may stand cells without one.
  private static boolean isGapless(TableShape shape) {
    return shape.header().orElseThrow().filled() == shape.names();
  }

  private static boolean fitsUnits(TableShape shape, Remarks remarks) {
    if (shape.units().isEmpty()) {
      return true;
    }
    Sample.Line units = shape.units().get();
    int count = units.cells().size();
    boolean level = count == shape.width() || count == shape.header().orElseThrow().cells().size();
    int said = TableShape.said(units);
    if (level || said == shape.names()) {
      return true;
    }
    remarks.error(
        remarks.line(units.number()),
        "this line has "
            + Spell.count(said, "unit")
            + ", the header above it "
            + Spell.count(shape.names(), "name")
            + ": which unit belongs to which name cannot be told, so the log was not read",
        "write a unit, or nothing between two separators, under each name");
    return false;
  }
}
