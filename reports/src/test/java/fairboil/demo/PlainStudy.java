package fairboil.demo;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A study without flaws: one ring, one pot, one logger that writes plainly, marks in m:ss that
 * count from the first reading. The order of the columns is fixed: scripts outside may count on it.
 *
 * @param title its title
 * @param altitude height of the place, m
 * @param ring the ring, of which every build has one
 * @param builds the builds
 * @param runs the runs
 */
record PlainStudy(
    String title, double altitude, Ring ring, List<PlainBuild> builds, List<PlainRun> runs) {

  /** The pot of every run: aluminium, 180 g. */
  private static final double POT_KG = 0.18;

  private static final double ALUMINIUM = 897;

  /** A ring round the wall as intended, mm. */
  record Ring(int holes, double wrap, double height) {

    /** The intended place of a hole, from 0. */
    Spot place(int hole) {
      return new Spot(hole * wrap / holes, height);
    }
  }

  /**
   * A build with its holes as measured, without error of reading.
   *
   * @param name its name
   * @param rms its hole-position error, mm
   * @param errors of each hole, mm
   */
  record PlainBuild(String name, double rms, List<Spot> errors) {}

  /**
   * A run with what its probes read.
   *
   * @param name its name
   * @param build the name of its build
   * @param happened the truth
   * @param readings what the probes read of it
   */
  record PlainRun(String name, String build, Happened happened, Readings readings) {}

  /** The pot with some water. */
  static Burn.Pot pot(double waterKg, double celsius, double loss) {
    return new Burn.Pot(waterKg, celsius, POT_KG, ALUMINIUM, loss, loss, 0);
  }

  /** Every file of the study: its name, with forward slashes, and its text. */
  Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("study.csv", settings().toString());
    files.put("builds.csv", buildSheet().toString());
    files.put("rings.csv", ringSheet().toString());
    files.put("holes.csv", holeSheet().toString());
    files.put("runs.csv", runSheet().toString());
    files.put("stopwatch.csv", marks().toString());
    for (PlainRun run : runs) {
      files.put("logs/" + run.name() + ".csv", log(run));
    }
    return files;
  }

  private SheetText settings() {
    return new SheetText("setting", "value")
        .row("title", title)
        .row("altitude", Decimal.text(altitude, 0) + " m")
        .row("hole ring", "upper")
        .row("hole reading uncertainty", "0.01 mm");
  }

  private SheetText buildSheet() {
    SheetText sheet = new SheetText("build", "design");
    builds.forEach(build -> sheet.row(build.name(), "plain"));
    return sheet;
  }

  private SheetText ringSheet() {
    return new SheetText("ring", "surface", "holes", "wrap (mm)", "height (mm)", "diameter (mm)")
        .row(
            "upper",
            "wall",
            ring.holes(),
            Decimal.text(ring.wrap(), 0),
            Decimal.text(ring.height(), 0),
            "6.0");
  }

  private SheetText holeSheet() {
    SheetText sheet =
        new SheetText("build", "ring", "hole", "along (mm)", "height (mm)", "diameter (mm)");
    for (PlainBuild build : builds) {
      for (int hole = 0; hole < ring.holes(); hole++) {
        Spot spot = ring.place(hole).plus(build.errors().get(hole));
        sheet.row(
            build.name(),
            "upper",
            hole + 1,
            Decimal.text(spot.first() + 8, 3),
            Decimal.text(spot.second(), 3),
            "6.0");
      }
    }
    return sheet;
  }

  private SheetText runSheet() {
    SheetText sheet =
        new SheetText(
            "run",
            "build",
            "date",
            "ambient (°C)",
            "water (g)",
            "water start (°C)",
            "pot (g)",
            "pot material",
            "lid",
            "outcome",
            "station pressure (Pa)");
    for (int i = 0; i < runs.size(); i++) {
      sheet.row(row(runs.get(i), LocalDate.of(2025, 3, 1).plusDays(i / 8)));
    }
    return sheet;
  }

  private static Object[] row(PlainRun run, LocalDate date) {
    Burn burn = run.happened().burn();
    return new Object[] {
      run.name(),
      run.build(),
      date,
      Decimal.text(burn.air().celsius(), 1),
      Decimal.text(1000 * burn.pot().waterKg(), 0),
      Decimal.text(burn.pot().startCelsius(), 1),
      Decimal.text(1000 * POT_KG, 0),
      "aluminium",
      "on",
      "boiled",
      Decimal.text(burn.air().pascal(), 0)
    };
  }

  private SheetText marks() {
    SheetText sheet = new SheetText("run", "event", "time");
    for (PlainRun run : runs) {
      Burn.Times times = run.happened().burn().times();
      mark(sheet, run, "lit", 0);
      mark(sheet, run, "gas lit", times.gasLit());
      mark(sheet, run, "pot on", times.potOn());
      mark(sheet, run, "boil", Math.round(run.happened().water().boilAt()) + 3);
      mark(sheet, run, "flame out", times.flameOut());
      mark(sheet, run, "pot off", times.potOff());
    }
    return sheet;
  }

  private static void mark(SheetText sheet, PlainRun run, String event, long second) {
    sheet.row(run.name(), event, Decimal.minutes(second));
  }

  private static String log(PlainRun run) {
    LocalDateTime noMatter = LocalDateTime.of(2025, 3, 1, 12, 0);
    return LogDialect.PLAIN.write(noMatter, run.readings(), List.of());
  }
}
