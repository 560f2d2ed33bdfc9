package fairboil.reports.print;

import fairboil.ingest.Study;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.BuildsSheet;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.ingest.sheet.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Invented studies to print. */
final class Sheets {

  private final List<Ring> rings = new ArrayList<>();
  private final List<Build> builds = new ArrayList<>();
  private Row settings = Row.at(Place.of("study.csv", 1)).build();

  static Sheets study() {
    return new Sheets();
  }

  /** Adds a ring with the given cells besides its name and number of holes. */
  Sheets ring(String name, int holes, UnaryOperator<Row.Builder> cells) {
    Row.Builder row = Row.at(Place.of("rings.csv", rings.size() + 2));
    row.put(RingsSheet.RING, name).put(RingsSheet.HOLES, holes);
    rings.add(new Ring("made-up", cells.apply(row).build()));
    return this;
  }

  Sheets build(String name, String design) {
    Row row =
        Row.at(Place.of("builds.csv", builds.size() + 2))
            .put(BuildsSheet.BUILD, name)
            .put(BuildsSheet.DESIGN, design)
            .build();
    builds.add(new Build(new Key("made-up", name), row));
    return this;
  }

  Sheets settings(UnaryOperator<Row.Builder> cells) {
    settings = cells.apply(Row.at(Place.of("study.csv", 1))).build();
    return this;
  }

  Study read() {
    return new Study(
        "made-up", settings, builds, rings, List.of(), List.of(), List.of(), List.of(), List.of(),
        List.of(), List.of(), List.of(), List.of());
  }

  static Quantity mm(double length) {
    return Quantity.of(length, Unit.MILLIMETRE);
  }

  private Sheets() {}
}
