package fairboil.analysis.run;

import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.sensor.SensorType;
import fairboil.analysis.sensor.Thermocouple;
import fairboil.analysis.sensor.Tolerance;
import fairboil.analysis.sensor.ToleranceClass;
import fairboil.ingest.log.Channel;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Sensor;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The cold junction of a thermocouple that was logged in volts. An error of its temperature passes
 * as a voltage: it counts by the slope of the thermocouple there over that where it is hot.
 *
 * @param celsius its usual temperature, °C
 * @param halfWidth how far its reading may be off, K: rectangular
 * @param key the probe that measures it, shared by all readings against it
 */
record ColdJunction(double celsius, double halfWidth, Key key) {

  /** Of a logger's own junction, of which no type and class is told: common practice, no source. */
  private static final double UNTOLD_HALF_WIDTH = 1;

  static ColdJunction of(Channel channel, double celsius, RunContext context) {
    Optional<Sensor> sensor = channel.sensor();
    Key key =
        sensor
            .flatMap(Sensor::id)
            .orElseGet(() -> context.instrument("cold junction " + channel.name()));
    return new ColdJunction(
        celsius,
        sensor
            .map(it -> told(it, celsius))
            .orElse(OptionalDouble.empty())
            .orElse(UNTOLD_HALF_WIDTH),
        key);
  }

  private static OptionalDouble told(Sensor sensor, double celsius) {
    Optional<SensorType> type = sensor.row().value(SensorsSheet.TYPE).flatMap(SensorType::named);
    Optional<ToleranceClass> grade =
        sensor.row().value(SensorsSheet.CLASS).flatMap(ToleranceClass::named);
    return type.isPresent() && grade.isPresent()
        ? Tolerance.halfWidth(type.get(), grade.get(), celsius)
        : OptionalDouble.empty();
  }

  /** Standard uncertainty of a hot reading from its cold junction, K. */
  double uncertainty(SensorType type, double hot) {
    Thermocouple thermocouple = Thermocouple.of(type);
    return halfWidth
        / Math.sqrt(3)
        * Math.abs(thermocouple.voltsPerKelvin(celsius) / thermocouple.voltsPerKelvin(hot));
  }

  BudgetLine line(SensorType type, double hot) {
    return BudgetLine.shared(Influence.COLD_JUNCTION, uncertainty(type, hot), key);
  }
}
