package fairboil.demo;

import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Writes the sheets of the demonstration, all but the holes. */
final class DemoSheets {

  private static final String INVENTED =
      "Invented from end to end: people, place, stoves and figures. See README.md.";

  private static final DateTimeFormatter LIT_AT = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private DemoSheets() {}

  /** The sheets by file name. */
  static Map<String, String> of(List<DemoRun> runs) {
    Map<String, SheetText> sheets = new LinkedHashMap<>();
    sheets.put("study.csv", settings().under(INVENTED));
    sheets.put("builds.csv", builds());
    sheets.put("rings.csv", rings());
    sheets.put("pots.csv", pots());
    sheets.put("runs.csv", runs(runs).under(INVENTED));
    sheets.put("stopwatch.csv", DemoMarks.of(runs));
    sheets.put("sensors.csv", sensors());
    sheets.put("claims.csv", claims());
    sheets.put("protocol.csv", protocol());
    Map<String, String> texts = new LinkedHashMap<>();
    sheets.forEach((name, sheet) -> texts.put(name, sheet.toString()));
    return texts;
  }

  private static SheetText settings() {
    return new SheetText("setting", "value")
        .row("title", "Leek or Marrow? How true must the holes be? (invented demonstration)")
        .row(
            "question",
            "Does it matter how truly the upper holes are placed, and which of our two designs"
                + " boils sooner?")
        .row("compare by", "lid")
        .row("hole ring", "upper")
        .row("altitude", Decimal.text(Day.ALTITUDE, 0) + " m")
        .row("reference water", "0.8 kg")
        .row("reference start", "15 °C")
        .row("reference ambient", "15 °C")
        .row("reference altitude", Decimal.text(Day.ALTITUDE, 0) + " m")
        .row("boil means", "rolling")
        .row("stopwatch started at", "lit")
        .row("hole error was", "as it came")
        .row("scale uncertainty", "1 g")
        .row("stopwatch uncertainty", "1 s")
        .row("hole reading uncertainty", Decimal.text(HolesText.READING, 1) + " mm")
        .row("show units", "metric")
        .row("seed", "17");
  }

  private static SheetText builds() {
    SheetText sheet = new SheetText("build", "design", "shared", "notes");
    for (Stove stove : Stove.all()) {
      sheet.row(stove.name(), stove.design().label(), "no", stove.notes());
    }
    return sheet;
  }

  private static SheetText rings() {
    SheetText sheet =
        new SheetText(
            "ring",
            "design",
            "surface",
            "air",
            "datum",
            "holes",
            "divisions",
            "skipped",
            "wrap (mm)",
            "circle (mm)",
            "start (°)",
            "height (mm)",
            "diameter (mm)");
    for (Design design : Design.values()) {
      design.rings().forEach(ring -> sheet.row(ring.row(design)));
    }
    return sheet;
  }

  private static SheetText pots() {
    SheetText sheet = new SheetText("pot", "mass (g)", "material", "width (mm)");
    for (Cookware cookware : Cookware.values()) {
      sheet.row(cookware.row());
    }
    return sheet;
  }

  private static SheetText runs(List<DemoRun> runs) {
    SheetText sheet =
        new SheetText(
            "run",
            "build",
            "date",
            "lit at",
            "order",
            "tester",
            "site",
            "outcome",
            "exclude",
            "ambient (°C)",
            "station pressure (hPa)",
            "sea-level pressure (hPa)",
            "wind",
            "screen",
            "weather",
            "water (g)",
            "water start (°C)",
            "water left (g)",
            "pot",
            "lid",
            "pot gap (mm)",
            "fuel",
            "fuel form",
            "fuel batch",
            "feed",
            "fuel loaded (g)",
            "fuel left (g)",
            "char left (g)",
            "weighed at",
            "moisture wet basis (%)",
            "heating value (MJ/kg)",
            "starter",
            "burn number",
            "stove start",
            "flame probe",
            "notes");
    runs.forEach(run -> sheet.row(row(run)));
    return sheet;
  }

  private static Object[] row(DemoRun run) {
    Burn.Pot pot = run.burn().pot();
    Day day = run.day();
    boolean spilt = run.fate() == DemoRun.Fate.KNOCKED_OVER;
    return new Object[] {
      run.name(),
      run.stove().name(),
      day.date(),
      LIT_AT.format(run.lit()),
      run.order(),
      run.stove().design().tester(),
      "plot 17",
      outcome(run.fate()),
      spilt ? "a dog knocked the pot off" : "",
      Decimal.text(run.burn().air().celsius(), 1),
      day.barometer() == Day.Barometer.THERE ? Decimal.text(day.pressure() / 100, 1) : "",
      day.barometer() == Day.Barometer.FORECAST ? Decimal.text(day.seaLevel() / 100, 0) : "",
      "B" + day.wind(),
      "yes",
      day.weather(),
      Decimal.text(1000 * pot.waterKg(), 0),
      Decimal.text(pot.startCelsius(), 1),
      spilt ? "" : Decimal.text(1000 * run.happened().water().waterLeftKg(), 0),
      run.cookware().label(),
      run.cover().label(),
      14,
      "spruce pellets",
      "pellets",
      "bag " + day.season(),
      "batch",
      Decimal.text(run.fuel().loaded(), 0),
      spilt ? "" : Decimal.text(run.fuel().left(), 0),
      spilt ? "" : Decimal.text(run.fuel().charLeft(), 0),
      spilt ? "" : "pot off",
      Decimal.text(day.moisture(), 1),
      Decimal.text(Fuel.DRY_PELLETS / 1000, 1),
      "birch bark",
      run.burnNumber(),
      "cold",
      run.lit().getHour() < 10 ? "moved" : "stayed",
      notes(run.fate())
    };
  }

  private static String outcome(DemoRun.Fate fate) {
    return switch (fate) {
      case BOILED, NO_LOG -> "boiled";
      case WENT_OUT -> "went out";
      case KNOCKED_OVER -> "stopped";
    };
  }

  private static String notes(DemoRun.Fate fate) {
    return switch (fate) {
      case BOILED -> "";
      case NO_LOG -> "battery of the logger flat: stopwatch only";
      case WENT_OUT -> "smoked, would not burn on";
      case KNOCKED_OVER -> "nobody scalded, water on the lettuces";
    };
  }

  private static SheetText sensors() {
    return new SheetText(
            "column",
            "role",
            "sensor",
            "type",
            "class",
            "unit",
            "resolution",
            "correction",
            "time constant",
            "position",
            "rated to")
        .row(flame("flame (°C)", "", "0.1 °C"))
        .row(water("water (°C)", "water 1", "", "0.1 °C", "0.3 °C", ""))
        .row(air("ambient (°C)", "air 1", "", "0.1 °C"))
        .row(flame("Flame 2 (°F)", "", "0.1 °F"))
        .row(water("Water 2 (°F)", "water 2", "", "0.1 °F", "", "4 s"))
        .row(air("Ambient 2 (°F)", "air 2", "", "0.1 °F"))
        .row(flame("flame 2 [°C]", "", "0.1 °C"))
        .row(water("water 2 [°C]", "water 2", "", "0.1 °C", "", "4 s"))
        .row(air("ambient 2 [°C]", "air 2", "", "0.1 °C"))
        .row(flame("T1", "°C", "0.1 °C"))
        .row(water("T2", "water 2", "°C", "0.1 °C", "", "4 s"))
        .row(air("T3", "air 2", "°C", "0.1 °C"));
  }

  private static Object[] flame(String column, String unit, String step) {
    return new Object[] {
      column,
      "flame",
      "bead 1",
      "K",
      "class 2",
      unit,
      step,
      "",
      "",
      "10 mm above the upper holes, on a stand",
      "1100 °C"
    };
  }

  private static Object[] water(
      String column, String sensor, String unit, String step, String correction, String lag) {
    return new Object[] {
      column,
      "water",
      sensor,
      "PT100",
      "B",
      unit,
      step,
      correction,
      lag,
      "middle of the pot, 20 mm above its base",
      "200 °C"
    };
  }

  private static Object[] air(String column, String sensor, String unit, String step) {
    return new Object[] {
      column, "ambient", sensor, "PT100", "B", unit, step, "", "", "in the shade, 2 m upwind", ""
    };
  }

  private static SheetText claims() {
    return new SheetText(
            "claim", "text", "measure", "about", "relation", "value", "holds for", "written on")
        .row(
            "C1",
            "On average a Leek boils 0.8 kg of water within 10 minutes.",
            "normalised boil time",
            "Leek",
            "at most",
            "10 min",
            "on average",
            "2024-12-28")
        .row(
            "C2",
            "On average the flame of a Marrow peaks at 760 °C or more.",
            "normalised peak",
            "Marrow",
            "at least",
            "760 °C",
            "on average",
            "2024-12-28")
        .row(
            "C3",
            "On average a Marrow boils 0.8 kg of water within 9 minutes.",
            "normalised boil time",
            "Marrow",
            "at most",
            "9 min",
            "on average",
            "2024-12-28")
        .row(
            "C4",
            "Neither stove smokes once the gas is lit.",
            "smoke",
            "",
            "at most",
            "0",
            "on average",
            "2024-12-28");
  }

  private static SheetText protocol() {
    return new SheetText("column", "low", "high", "allowed")
        .row("water", "500 g", "1200 g", "")
        .row("fuel", "", "", "spruce pellets")
        .row("lid", "", "", "on, off")
        .row("screen", "", "", "yes");
  }
}
