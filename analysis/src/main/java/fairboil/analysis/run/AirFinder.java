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
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
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
        .orElseGet(() -> Figure.unknown(AirSays.NOT_TAKEN.with()));
  }

  private Figure given(Given<Quantity> cell) {
    double celsius = cell.value().value();
    if (celsius < -60 || celsius > 60) {
      context
          .findings()
          .error(
              cell.place(),
              AirSays.NOT_POSSIBLE.with(Argument.cell(cell.written())),
              RunSays.CHECK_NUMBER.with());
      return Figure.unknown(AirSays.TEMPERATURE_GIVEN.with());
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
      return Figure.unknown(AirSays.NO_READINGS.with());
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
      return Figure.unknown(AirSays.NO_PRESSURE.with());
    }
    double metres = altitude.get().value().value();
    if (metres < Atmosphere.MIN_METRES || metres > Atmosphere.MAX_METRES) {
      context
          .findings()
          .error(
              altitude.get().place(),
              AirSays.NO_ALTITUDE.with(Argument.cell(altitude.get().written())),
              RunSays.CHECK_NUMBER.with());
      return Figure.unknown(AirSays.ALTITUDE_GIVEN.with());
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
      return impossible(cell, AirSays.STATION);
    }
    altitude().ifPresent(altitude -> compare(cell, altitude));
    return Budget.of(BudgetLine.independent(Influence.PRESSURE, uncertainty(cell, BAROMETER)))
        .around(pascals, Dimension.PRESSURE);
  }

  /** A pressure reduced to sea level, written as the station's, loses the whole altitude. */
  private void compare(Given<Quantity> cell, Given<Quantity> altitude) {
    double metres = altitude.value().value();
    if (metres < Atmosphere.MIN_METRES || metres > Atmosphere.MAX_METRES) {
      return;
    }
    double expected = Atmosphere.pressure(metres);
    if (Math.abs(cell.value().value() - expected) > STATION_AGREES_PASCALS) {
      context
          .findings()
          .warning(
              cell.place(),
              AirSays.DOES_NOT_FIT.with(
                  Argument.cell(cell.written()),
                  Argument.cell(altitude.written()),
                  Argument.value(expected, BAROMETER, Dimension.PRESSURE)),
              AirSays.MOVE.with(Argument.word(RunsSheet.SEA_LEVEL_PRESSURE.name()), RunSays.RUNS));
    }
  }

  private Figure reduced(Given<Quantity> cell, double metres) {
    double seaLevel = cell.value().value();
    if (seaLevel < LOWEST_SEA_LEVEL || seaLevel > HIGHEST_SEA_LEVEL) {
      return impossible(cell, AirSays.SEA_LEVEL);
    }
    double station = Atmosphere.reduce(seaLevel, metres);
    return Budget.of(
            BudgetLine.independent(Influence.PRESSURE, uncertainty(cell, FORECAST)),
            altitudeLine(metres))
        .around(station, Dimension.PRESSURE);
  }

  private Figure impossible(Given<Quantity> cell, Template problem) {
    context
        .findings()
        .error(
            cell.place(), problem.with(Argument.cell(cell.written())), RunSays.CHECK_NUMBER.with());
    return Figure.unknown(AirSays.PRESSURE_GIVEN.with());
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
      Message why = ((Figure.Unknown) pressure).reason();
      return Figure.unknown(AirSays.NO_BOILING_POINT.with(Argument.clause(why)));
    }
    double pascals = known.measured().value();
    return known
        .budget()
        .scaledBy(Saturation.temperaturePerPascal(pascals))
        .around(Saturation.temperature(pascals), Dimension.TEMPERATURE);
  }
}
