package fairboil.ingest;

import fairboil.ingest.choice.Choice;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Voice;
import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.PotGiven;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.SheetSchema;
import fairboil.ingest.sheet.Wind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A study as text, for cases to be compared with: every record, every cell, every finding. */
final class StudyText {

  private final List<String> lines = new ArrayList<>();

  private StudyText() {}

  static List<String> of(Study study) {
    StudyText text = new StudyText();
    text.row("settings", study.settings(), StudyReader.SHEETS.get(0));
    study.builds().forEach(build -> text.row("build " + build.key(), build.row(), sheet("builds")));
    study.rings().forEach(ring -> text.row("ring " + ring.name(), ring.row(), sheet("rings")));
    study
        .holes()
        .forEach(
            hole ->
                text.row(
                    "hole " + hole.build() + " " + hole.ring() + " " + hole.number(),
                    hole.row(),
                    sheet("holes")));
    study.pots().forEach(pot -> text.row("pot " + pot.key(), pot.row(), sheet("pots")));
    study
        .runs()
        .forEach(
            run -> text.row("run " + run.key() + " of " + run.build(), run.row(), sheet("runs")));
    study
        .marks()
        .forEach(
            mark ->
                text.lines.add(
                    "mark "
                        + mark.run()
                        + " "
                        + mark.event().map(Choice::label).orElse("“" + mark.text() + "”")
                        + ": "
                        + value(mark.time().value())
                        + mark.by().map(by -> " by " + by).orElse("")));
    study.sensors().forEach(sensor -> text.row("sensor", sensor.row(), sheet("sensors")));
    study.claims().forEach(claim -> text.row("claim " + claim.key(), claim.row(), sheet("claims")));
    study.protocol().forEach(row -> text.row("protocol", row, sheet("protocol")));
    for (Finding finding : study.findings()) {
      text.lines.add(finding.toString());
      finding
          .mend()
          .ifPresent(row -> text.lines.add("  " + row.sheet() + " " + row.texts(Voice.RAW)));
    }
    return text.lines;
  }

  private static SheetSchema sheet(String name) {
    return StudyReader.SHEETS.stream()
        .filter(schema -> schema.file().equals(name + ".csv"))
        .findFirst()
        .orElseThrow();
  }

  private void row(String what, Row row, SheetSchema schema) {
    List<String> cells = new ArrayList<>();
    for (Column<?> column : schema.columns()) {
      Optional<? extends Given<?>> cell = row.cell(column);
      cell.ifPresent(given -> cells.add(column + " = " + value(given.value()) + unit(given)));
    }
    row.illegible().forEach(cell -> cells.add("not read “" + cell.written() + "”"));
    row.extras().forEach((header, cell) -> cells.add("“" + header + "” = " + cell.value()));
    if (!cells.isEmpty() || !what.equals("settings")) {
      lines.add(what + ": " + String.join("; ", cells));
    }
  }

  private static String unit(Given<?> given) {
    return given.unit().map(unit -> " (" + unit.symbol() + ")").orElse("");
  }

  private static String value(Object value) {
    if (value instanceof Quantity quantity) {
      return number(quantity.value())
          + " "
          + quantity.dimension().heldIn()
          + " ± "
          + number(quantity.resolution() / 2);
    }
    if (value instanceof Amount amount) {
      return number(amount.number()) + " " + amount.unit().map(Unit::symbol).orElse("bare");
    }
    if (value instanceof ClockTime.Elapsed elapsed) {
      return number(elapsed.seconds()) + " s";
    }
    if (value instanceof ClockTime.TimeOfDay time) {
      return number(time.secondOfDay())
          + " s of the day"
          + time.date().map(date -> " on " + date).orElse("");
    }
    if (value instanceof ClockTime.Asked) {
      return "asked";
    }
    if (value instanceof PotGiven.EmptyMass pot) {
      return value(pot.mass());
    }
    if (value instanceof Wind.Speed wind) {
      return value(wind.speed());
    }
    return value instanceof Choice choice ? choice.label() : value.toString();
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.9g", value);
    return text.contains("e")
        ? text.replaceFirst("0+e", "e").replaceFirst("\\.e", "e")
        : text.replaceFirst("0+$", "").replaceFirst("\\.$", "");
  }
}
