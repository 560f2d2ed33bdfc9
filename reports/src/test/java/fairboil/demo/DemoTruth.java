package fairboil.demo;

import java.util.List;

/** What truly happened in the demonstration, as a table: to compare the program's results with. */
final class DemoTruth {

  private DemoTruth() {}

  static String table(List<DemoRun> runs) {
    SheetText sheet =
        new SheetText(
            "run",
            "build",
            "fate",
            "dialect",
            "upper_rms_mm",
            "ambient_C",
            "held_peak_C",
            "boiling_point_C",
            "boil_time_s",
            "hottest_water_C",
            "loss_in_fire_W_per_K",
            "loss_on_stand_W_per_K",
            "power_W",
            "growth_per_s",
            "readings");
    runs.forEach(run -> sheet.row(row(run)));
    return sheet.toString();
  }

  private static Object[] row(DemoRun run) {
    Burn burn = run.burn();
    Happened happened = run.happened();
    return new Object[] {
      run.name(),
      run.stove().name(),
      run.fate(),
      run.dialect(),
      Decimal.text(run.stove().upperRms(), 1),
      Decimal.text(burn.air().celsius(), 2),
      Decimal.text(happened.heldPeak(), 2),
      Decimal.text(burn.air().boilingPoint(), 3),
      Double.isNaN(happened.boilTime()) ? "" : Decimal.text(happened.boilTime(), 1),
      Decimal.text(happened.water().celsius().highest(), 2),
      Decimal.text(burn.pot().loss(), 3),
      Decimal.text(burn.pot().lossOnStand(), 3),
      Decimal.text(burn.fire().power(), 1),
      burn.fire().growth(),
      burn.times().readings()
    };
  }
}
