package fairboil.analysis.normalise;

import fairboil.analysis.run.RunResult;
import fairboil.ingest.choice.Lid;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.PotGiven;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Wind;
import java.util.Optional;

/**
 * Runs whose pots lose heat alike: the same pot, lid and wind.
 *
 * @param study the study that names the pot
 * @param pot the pot as its sheet names it; blank where none is told
 * @param lid whether it was covered, if that is told
 * @param beaufort the wind as a number of the Beaufort scale, if it is told
 */
public record LossGroup(String study, String pot, Optional<Lid> lid, Optional<Integer> beaufort) {

  /** Speed of a wind of Beaufort 1, m/s: v = 0.836 B^1.5 (WMO, 1970). */
  private static final double BEAUFORT_METRES_PER_SECOND = 0.836;

  /** The group of a run. */
  public static LossGroup of(RunResult run) {
    Row row = run.run().row();
    return new LossGroup(
        run.run().key().study(),
        row.cell(RunsSheet.POT).map(LossGroup::pot).orElse(""),
        row.value(RunsSheet.LID),
        row.value(RunsSheet.WIND).map(LossGroup::beaufort));
  }

  private static String pot(Given<PotGiven> cell) {
    return cell.value() instanceof PotGiven.Named named ? named.name() : cell.written();
  }

  private static int beaufort(Wind wind) {
    if (wind instanceof Wind.Beaufort told) {
      return told.number();
    }
    double speed = ((Wind.Speed) wind).speed().value();
    return (int) Math.round(Math.cbrt(Math.pow(speed / BEAUFORT_METRES_PER_SECOND, 2)));
  }

  /** Whether steam may leave it: a lid is taken to hold it back. */
  public boolean mayLoseSteam() {
    return lid.filter(Lid.ON::equals).isEmpty();
  }
}
