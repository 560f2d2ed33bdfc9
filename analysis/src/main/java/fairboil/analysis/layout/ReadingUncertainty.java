package fairboil.analysis.layout;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.CellFix;
import fairboil.ingest.finding.Fix;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Settings;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How uncertain one reading of a hole position is, and where that is set.
 *
 * @param settings the settings of the study that the holes are of
 */
record ReadingUncertainty(Row settings) {

  /** How finely it is typed, m. */
  private static final double STEP = 1e-5;

  /** The standard uncertainty of one reading, m. */
  double sigma() {
    return settings.get(Settings.HOLE_READING_UNCERTAINTY).value();
  }

  /** What to type so that it has that value, in m. */
  Fix setTo(double value) {
    Argument typed = Argument.typed(value, STEP, Dimension.LENGTH);
    Optional<Place> cell = cell();
    if (cell.isPresent()) {
      Place row = new Place(cell.get().file(), cell.get().line(), Optional.empty());
      return new CellFix(row, Map.of("value", typed));
    }
    Map<String, Argument> cells = new LinkedHashMap<>();
    cells.put("setting", Argument.word(Settings.HOLE_READING_UNCERTAINTY.name()));
    cells.put("value", typed);
    return new SheetRow(settings.place().file(), cells);
  }

  private Optional<Place> cell() {
    return settings
        .cell(Settings.HOLE_READING_UNCERTAINTY)
        .map(Given::place)
        .or(
            () ->
                settings
                    .unread(Settings.HOLE_READING_UNCERTAINTY)
                    .map(unread -> unread.finding().place()))
        .filter(place -> place.line().isPresent());
  }
}
