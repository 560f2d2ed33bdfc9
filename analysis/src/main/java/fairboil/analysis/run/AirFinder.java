package fairboil.analysis.run;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.trace.Trace;
import fairboil.analysis.water.Atmosphere;
import fairboil.analysis.water.Saturation;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.Optional;

/** The air of a run: its temperature, its pressure, and the boiling point that follows. */
final class AirFinder {

  private static final double ROOT_12 = Math.sqrt(12);

  /** Standard uncertainty of an air thermometer read by a person, K: a judgement. */
  private static final double THERMOMETER = 0.5;

  /** Standard uncertainty of the boiling point from the weather, K, where no pressure was taken. */
  private static final double WEATHER = 0.8;

  /** Standard uncertainty of a barometer, Pa, and of a forecast's pressure at the place. */
  private static final double BAROMETER = 100;

  private static final double FORECAST = 200;
  private static final double ALTITUDE_METRES = 20;
  private static final double LOWEST_STATION = 30_000;
  private static final double HIGHEST_STATION = 109_000;
  private static final double LOWEST_SEA_LEVEL = 87_000;
  private static final double HIGHEST_SEA_LEVEL = 109_000;
  private static final double STATION_AGREES_PASCALS = 4_000;

  private final RunContext context;

  AirFinder(RunContext context) {
    this.context = context;
  }

  /** The air temperature: as told, else the mean of the air channel while the fire burnt. */
  Figure ambient(PreparedLog log, Timeline timeline) {
    Optional<Given<Quantity>> cell = context.cell(RunsSheet.AMBIENT);
    if (cell.isPresent()) {
      return given(cell.get());
    }
    return log.channel(Role.AMBIENT)
        .map(channel -> mean(channel, timeline))
        .orElseGet(() -> Figure.unknown("the air temperature was not taken"));
  }

  private Figure given(Given<Quantity> cell) {
    double celsius = cell.value().value();
    if (celsius < -60 || celsius > 60) {
      context
          .findings()
          .error(
              cell.place(),
              "an air temperature of " + cell.written() + " is not possible",
              "check the number and its unit");
      return Figure.unknown("the air temperature told is not possible");
    }
    double u = Math.hypot(THERMOMETER, cell.value().resolution() / ROOT_12);
    return Budget.of(BudgetLine.independent(Influence.AMBIENT, u))
        .around(celsius, Dimension.TEMPERATURE);
  }

  private static Figure mean(PreparedChannel channel, Timeline timeline) {
    double from = timeline.boilTimeStart().orElse(Double.NEGATIVE_INFINITY);
    Trace burn = channel.trace().between(from, Double.POSITIVE_INFINITY);
    double mean = burn.mean();
    if (Double.isNaN(mean)) {
      return Figure.unknown("the air channel has no readings while the fire burnt");
    }
    Probe probe = channel.probe();
    return Budget.of(
            new BudgetLine(
                Influence.AMBIENT,
                probe.tolerance(mean),
                Double.POSITIVE_INFINITY,
                Optional.of(probe.key())))
        .around(mean, Dimension.TEMPERATURE);
  }

  /** Station pressure: as taken, else from sea-level pressure and altitude, else from altitude. */
  Figure pressure() {
    Optional<Given<Quantity>> station = context.cell(RunsSheet.STATION_PRESSURE);
    if (station.isPresent()) {
      return station(station.get());
    }
    Optional<Given<Quantity>> altitude = altitude();
    if (altitude.isEmpty()) {
      return Figure.unknown("neither an air pressure nor the altitude is told");
    }
    double metres = altitude.get().value().value();
    if (metres < Atmosphere.MIN_METRES || metres > Atmosphere.MAX_METRES) {
      context
          .findings()
          .error(
              altitude.get().place(),
              "an altitude of " + altitude.get().written() + " is not possible here",
              "check the number and its unit");
      return Figure.unknown("the altitude told is not possible");
    }
    Optional<Given<Quantity>> seaLevel = context.cell(RunsSheet.SEA_LEVEL_PRESSURE);
    return seaLevel.isPresent() ? reduced(seaLevel.get(), metres) : fromAltitude(metres);
  }

  private Optional<Given<Quantity>> altitude() {
    return context
        .cell(RunsSheet.ALTITUDE)
        .or(() -> context.study().settingsOf(context.run().key()).cell(Settings.ALTITUDE));
  }

  private Figure station(Given<Quantity> cell) {
    double pascals = cell.value().value();
    if (pascals < LOWEST_STATION || pascals > HIGHEST_STATION) {
      return impossible(cell.place(), "a station pressure of " + cell.written());
    }
    altitude().ifPresent(altitude -> compare(cell, altitude.value().value()));
    return Budget.of(BudgetLine.independent(Influence.PRESSURE, uncertainty(cell, BAROMETER)))
        .around(pascals, Dimension.PRESSURE);
  }

  /** A pressure reduced to sea level, written as the station's, loses the whole altitude. */
  private void compare(Given<Quantity> cell, double metres) {
    if (metres < Atmosphere.MIN_METRES || metres > Atmosphere.MAX_METRES) {
      return;
    }
    double expected = Atmosphere.pressure(metres);
    if (Math.abs(cell.value().value() - expected) > STATION_AGREES_PASCALS) {
      context
          .findings()
          .warning(
              cell.place(),
              Findings.words(
                  "a station pressure of %s does not go with an altitude of %.0f m, where about"
                      + " %.1f kPa is usual",
                  cell.written(), metres, expected / 1000),
              "if it was reduced to sea level, as forecasts give it, move it to “sea-level"
                  + " pressure”");
    }
  }

  private Figure reduced(Given<Quantity> cell, double metres) {
    double seaLevel = cell.value().value();
    if (seaLevel < LOWEST_SEA_LEVEL || seaLevel > HIGHEST_SEA_LEVEL) {
      return impossible(cell.place(), "a sea-level pressure of " + cell.written());
    }
    double station = Atmosphere.reduce(seaLevel, metres);
    return Budget.of(
            BudgetLine.independent(Influence.PRESSURE, uncertainty(cell, FORECAST)),
            altitudeLine(metres))
        .around(station, Dimension.PRESSURE);
  }

  private Figure impossible(Place place, String what) {
    context.findings().error(place, what + " is not possible", "check the number and its unit");
    return Figure.unknown("the pressure told is not possible");
  }

  private static double uncertainty(Given<Quantity> cell, double instrument) {
    return Math.hypot(instrument, cell.value().resolution() / ROOT_12);
  }

  private Figure fromAltitude(double metres) {
    double pascals = Atmosphere.pressure(metres);
    double weather = WEATHER / Saturation.temperaturePerPascal(pascals);
    return Budget.of(BudgetLine.independent(Influence.PRESSURE, weather), altitudeLine(metres))
        .around(pascals, Dimension.PRESSURE);
  }

  private static BudgetLine altitudeLine(double metres) {
    return BudgetLine.independent(
        Influence.ALTITUDE, ALTITUDE_METRES * Math.abs(Atmosphere.pascalsPerMetre(metres)));
  }

  /** The boiling point at a pressure. */
  static Figure boilingPoint(Figure pressure) {
    if (!(pressure instanceof Figure.Known known)) {
      return Figure.unknown(
          "the boiling point is not known, as " + ((Figure.Unknown) pressure).reason());
    }
    double pascals = known.measured().value();
    return known
        .budget()
        .scaledBy(Saturation.temperaturePerPascal(pascals))
        .around(Saturation.temperature(pascals), Dimension.TEMPERATURE);
  }
}
