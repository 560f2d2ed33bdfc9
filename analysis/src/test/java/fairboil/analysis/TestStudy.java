package fairboil.analysis;

import fairboil.ingest.Study;
import fairboil.ingest.choice.Event;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.BuildsSheet;
import fairboil.ingest.sheet.Claim;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Hole;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Mark;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Makes invented studies for tests, sheet by sheet. */
public final class TestStudy {

  private static final String NAME = "test";

  private final Row.Builder settings = Row.at(Place.of("study.csv"));
  private final List<Build> builds = new ArrayList<>();
  private final List<Ring> rings = new ArrayList<>();
  private final List<Hole> holes = new ArrayList<>();
  private final List<Run> runs = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private final List<Claim> claims = new ArrayList<>();

  /** The key of that name. */
  public static Key key(String name) {
    return new Key(NAME, name);
  }

  /** Millimetres as a quantity. */
  public static Quantity mm(double value) {
    return Quantity.of(value, Unit.MILLIMETRE);
  }

  /** Degrees as a quantity. */
  public static Quantity degrees(double value) {
    return Quantity.of(value, Unit.DEGREE);
  }

  /** Makes a setting. */
  public <T> TestStudy setting(Column<T> column, T value) {
    settings.put(column, value);
    return this;
  }

  /** Adds a build of a design. */
  public TestStudy build(String name, String design) {
    Row.Builder row = Row.at(Place.of("builds.csv", builds.size() + 2));
    row.put(BuildsSheet.BUILD, name).put(BuildsSheet.DESIGN, design);
    builds.add(new Build(key(name), row.build()));
    return this;
  }

  /** Adds a ring with the cells that the filler puts in. */
  public TestStudy ring(String name, int count, UnaryOperator<Row.Builder> filler) {
    Row.Builder row = Row.at(Place.of("rings.csv", rings.size() + 2));
    row.put(RingsSheet.RING, name).put(RingsSheet.HOLES, count);
    rings.add(new Ring(NAME, filler.apply(row).build()));
    return this;
  }

  /** Adds a wall ring at 15 mm height. */
  public TestStudy wall(String name, int count, double wrapInMillimetres) {
    return ring(
        name,
        count,
        row -> row.put(RingsSheet.WRAP, mm(wrapInMillimetres)).put(RingsSheet.HEIGHT, mm(15)));
  }

  /** Adds a hole with the cells that the filler puts in. */
  public TestStudy hole(String build, String ring, int number, UnaryOperator<Row.Builder> filler) {
    Row.Builder row = Row.at(Place.of("holes.csv", holes.size() + 2));
    row.put(HolesSheet.BUILD, build).put(HolesSheet.RING, ring).put(HolesSheet.HOLE, number);
    holes.add(new Hole(key(build), ring, number, filler.apply(row).build()));
    return this;
  }

  /** Adds a hole on a wall. */
  public TestStudy hole(String build, String ring, int number, double along, double height) {
    return hole(
        build,
        ring,
        number,
        row -> row.put(HolesSheet.ALONG, mm(along)).put(HolesSheet.HEIGHT, mm(height)));
  }

  /** Adds a run with the cells that the filler puts in. */
  public TestStudy run(String name, String build, UnaryOperator<Row.Builder> filler) {
    Row.Builder row = Row.at(Place.of("runs.csv", runs.size() + 2));
    row.put(RunsSheet.RUN, name).put(RunsSheet.BUILD, build);
    runs.add(new Run(key(name), key(build), filler.apply(row).build()));
    return this;
  }

  /** Adds a stopwatch mark, in seconds since the stopwatch was started. */
  public TestStudy mark(String run, Event event, double seconds) {
    Place place = Place.of("stopwatch.csv", marks.size() + 2, "time");
    ClockTime time = new ClockTime.Elapsed(seconds, 1);
    marks.add(
        new Mark(
            key(run),
            Optional.of(event),
            event.label(),
            Given.of(time, String.valueOf(seconds), place),
            Optional.empty()));
    return this;
  }

  /** Adds a claim with the cells that the filler puts in. */
  public TestStudy claim(String name, UnaryOperator<Row.Builder> filler) {
    Row.Builder row = Row.at(Place.of("claims.csv", claims.size() + 2));
    claims.add(new Claim(key(name), filler.apply(row).build()));
    return this;
  }

  /** The finished study. */
  public Study finish() {
    return new Study(
        NAME,
        settings.build(),
        builds,
        rings,
        holes,
        List.of(),
        runs,
        marks,
        List.of(),
        claims,
        List.of(),
        List.of(),
        List.of());
  }
}
