package fairboil.analysis.layout;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Hole;
import fairboil.ingest.sheet.HolesSheet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The quantities in the row of a hole. Places read from a print whose check bar is not 100 mm are
 * corrected by it: true length = length read × bar / 100 mm. A diameter is not, as it is read with
 * callipers.
 */
final class HoleCells {

  /** True length of the check bar, mm. */
  private static final double BAR = 100;

  /** Further off is a slip of the pen. */
  private static final double MOST_OFF = 0.1;

  // as printed, so not in other units
  private static final Template ODD_BAR =
      Template.of("the check bar of a print is 90 to 110 mm long, so this length was not used");
  private static final Template TYPE_BAR =
      Template.of("type its length as measured, such as 98.7 mm, or leave the cell empty");

  private static final Set<Column<Quantity>> FROM_A_PRINT =
      Set.of(
          HolesSheet.ALONG,
          HolesSheet.GAP,
          HolesSheet.HEIGHT,
          HolesSheet.X,
          HolesSheet.Y,
          HolesSheet.RADIUS);

  private HoleCells() {}

  static boolean has(Hole hole, Column<Quantity> column) {
    return hole.row().value(column).isPresent();
  }

  static double get(Hole hole, Column<Quantity> column) {
    double read = hole.row().get(column).value();
    return FROM_A_PRINT.contains(column) ? read * scale(hole) : read;
  }

  private static double scale(Hole hole) {
    return hole.row()
        .value(HolesSheet.BAR)
        .filter(HoleCells::isPossible)
        .map(bar -> bar.in(Unit.MILLIMETRE) / BAR)
        .orElse(1.0);
  }

  private static boolean isPossible(Quantity bar) {
    double off = Math.abs(bar.in(Unit.MILLIMETRE) / BAR - 1);
    return off <= MOST_OFF;
  }

  /** What is told of check bars that no printer makes. */
  static List<Finding> oddBars(List<Hole> holes) {
    return holes.stream()
        .filter(
            hole -> hole.row().value(HolesSheet.BAR).filter(bar -> !isPossible(bar)).isPresent())
        .map(
            hole ->
                Finding.error(hole.row().place(HolesSheet.BAR), ODD_BAR.with(), TYPE_BAR.with()))
        .toList();
  }

  static OptionalDouble find(Hole hole, Column<Quantity> column) {
    return has(hole, column) ? OptionalDouble.of(get(hole, column)) : OptionalDouble.empty();
  }
}
