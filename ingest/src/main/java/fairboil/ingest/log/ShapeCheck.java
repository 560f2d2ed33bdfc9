package fairboil.ingest.log;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;

/** Refuses tables whose cells cannot be told apart. */
final class ShapeCheck {

  private ShapeCheck() {}

  /** Whether the table can be read; if not, an error says why. */
  static boolean accepts(TableShape shape, Remarks remarks) {
    Place header = remarks.line(shape.header().map(Sample.Line::number).orElse(shape.firstLine()));
    boolean fits = HeaderFit.of(shape) != HeaderFit.DISAGREES;
    if (!fits && hasDecimalCommas(shape)) {
      remarks.error(
          header,
          ShapeSays.COMMAS.with(Argument.count(shape.names()), Argument.count(shape.width())),
          ShapeSays.SEMICOLONS.with());
      return false;
    }
    if (hasLists(shape)) {
      remarks.error(
          remarks.line(shape.firstLine()),
          ShapeSays.LISTS.with(),
          ShapeSays.ONE_COLUMN_EACH.with());
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
        ShapeSays.TIMES.with(
            Arguments.cell(shape.name(column)), Arguments.cell(shape.rows().get(0).cell(column))),
        ShapeSays.NAME_EACH.with(Arguments.SENSORS));
  }

  private static void tellWidth(TableShape shape, Place header, Remarks remarks) {
    remarks.error(header, width(shape), ShapeSays.NAME_EACH.with(Arguments.SENSORS));
  }

  private static Message width(TableShape shape) {
    Argument parted = Argument.word(shape.separator().label());
    if (shape.names() == shape.width()) {
      return ShapeSays.PARTED_OTHERWISE.with(parted);
    }
    boolean otherwise = shape.place() == TableShape.HeaderPlace.PARTED_OTHERWISE;
    Template names = isGapless(shape) ? ShapeSays.NAMES : ShapeSays.CELLS;
    return ShapeSays.WIDTH.with(
        Argument.clause(names.with(Argument.count(shape.names()))),
        Argument.clause(otherwise ? ShapeSays.NOT_PARTED.with(parted) : Message.NONE),
        Argument.count(shape.width()),
        parted);
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
        ShapeSays.UNITS.with(Argument.count(said), Argument.count(shape.names())),
        ShapeSays.UNIT_EACH.with());
    return false;
  }
}
