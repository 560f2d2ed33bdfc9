package fairboil.analysis.run;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.sensor.SensorType;
import fairboil.analysis.sensor.Thermocouple;
import fairboil.analysis.sensor.Tolerance;
import fairboil.analysis.sensor.ToleranceClass;
import fairboil.ingest.choice.YesNo;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.log.Channel;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Sensor;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The probe behind a channel. A probe of which no type or class is told is taken as a type K
 * thermocouple of class 2, the commonest; one of which no id is told, as the same probe wherever
 * the column has the same name at one site.
 */
final class Probe {

  static final SensorType USUAL_TYPE = SensorType.K;
  static final ToleranceClass USUAL_CLASS = ToleranceClass.CLASS_2;
  static final ToleranceClass USUAL_PLATINUM_CLASS = ToleranceClass.CLASS_B;

  private static final double FLAME_CELSIUS = 600;
  private static final double ROOT_3 = Math.sqrt(3);
  private static final double ROOT_12 = Math.sqrt(12);

  private final Optional<Sensor> sensor;
  private final Key key;
  private final double resolution;
  private final Optional<ColdJunction> coldJunction;

  /** A probe; its cold junction where the channel is in volts. */
  Probe(Channel channel, Optional<ColdJunction> coldJunction, RunContext context) {
    this.coldJunction = coldJunction;
    this.sensor = channel.sensor();
    this.key =
        sensor
            .flatMap(Sensor::id)
            .orElseGet(() -> context.instrument(channel.name().isBlank() ? "#" : channel.name()));
    this.resolution = number(SensorsSheet.RESOLUTION).orElseGet(() -> stepOf(channel));
  }

  /** The smallest step of a channel, K; of voltages, by the slope of the probe in a flame. */
  private double stepOf(Channel channel) {
    boolean voltages = channel.unit().measures(Dimension.VOLTAGE);
    return voltages && type().isThermocouple()
        ? channel.resolution() / Thermocouple.of(type()).voltsPerKelvin(FLAME_CELSIUS)
        : channel.resolution();
  }

  private Optional<Row> row() {
    return sensor.map(Sensor::row);
  }

  private OptionalDouble number(Column<Quantity> column) {
    Optional<Quantity> given = row().flatMap(row -> row.value(column));
    return given.isPresent() ? OptionalDouble.of(given.get().value()) : OptionalDouble.empty();
  }

  /** What identifies the probe. */
  Key key() {
    return key;
  }

  SensorType type() {
    return row()
        .flatMap(row -> row.value(SensorsSheet.TYPE))
        .flatMap(SensorType::named)
        .orElse(USUAL_TYPE);
  }

  private ToleranceClass grade() {
    return row()
        .flatMap(row -> row.value(SensorsSheet.CLASS))
        .flatMap(ToleranceClass::named)
        .orElse(type() == SensorType.PT100 ? USUAL_PLATINUM_CLASS : USUAL_CLASS);
  }

  /** What is to be added to its readings, K. */
  double correction() {
    return number(SensorsSheet.CORRECTION).orElse(0);
  }

  /** Its time constant, s, if it was told. */
  OptionalDouble lag() {
    return number(SensorsSheet.TIME_CONSTANT);
  }

  /** Whether its lag is to be undone. */
  boolean undoesLag() {
    return row()
        .flatMap(row -> row.value(SensorsSheet.UNDO_LAG))
        .filter(YesNo.YES::equals)
        .isPresent();
  }

  /** The temperature it is rated to, °C, if it was told. */
  OptionalDouble ratedTo() {
    return number(SensorsSheet.RATED_TO);
  }

  /** The smallest step of its readings, K; 0 where it is not known. */
  double resolution() {
    return resolution;
  }

  /** Standard uncertainty from its class, and its cold junction where it has one, K. */
  double tolerance(double celsius) {
    double ofJunction = coldJunction.map(it -> it.uncertainty(type(), celsius)).orElse(0.0);
    return Math.hypot(ofClass(celsius), ofJunction);
  }

  /** Rectangular. */
  private double ofClass(double celsius) {
    return Tolerance.halfWidth(type(), grade(), celsius)
            .orElseGet(() -> Tolerance.halfWidth(USUAL_TYPE, USUAL_CLASS, celsius).orElseThrow())
        / ROOT_3;
  }

  /** What the probe itself makes uncertain of a reading: its step, its class, its cold junction. */
  Budget budget(double celsius) {
    Budget own =
        Budget.of(
            BudgetLine.independent(Influence.RESOLUTION, resolution / ROOT_12),
            BudgetLine.shared(Influence.SENSOR_TOLERANCE, ofClass(celsius), key));
    return coldJunction.map(it -> own.and(it.line(type(), celsius))).orElse(own);
  }
}
