package fairboil.analysis.run;

import fairboil.analysis.sensor.SensorType;
import fairboil.analysis.sensor.Thermocouple;
import fairboil.analysis.trace.Trace;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.log.Channel;
import fairboil.ingest.log.Log;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns the voltages of a thermocouple into temperatures, its cold junction allowed for. */
final class Voltages {

  private Voltages() {}

  /**
   * The readings of a channel in °C, NaN where missing or out of the thermocouple's range; empty,
   * with a finding, where the channel is in no voltage or its type or cold junction is not known.
   */
  static Optional<double[]> celsius(Log log, Channel channel, Findings findings) {
    if (!channel.unit().measures(Dimension.VOLTAGE)) {
      complain(channel, findings, "is in " + channel.unit().symbol() + ", not a temperature");
      return Optional.empty();
    }
    Optional<SensorType> type =
        channel
            .sensor()
            .flatMap(sensor -> sensor.row().value(SensorsSheet.TYPE))
            .flatMap(SensorType::named)
            .filter(SensorType::isThermocouple);
    if (type.isEmpty()) {
      complain(channel, findings, "is a voltage, and the type of its thermocouple is not told");
      return Optional.empty();
    }
    Optional<Channel> cold = coldJunction(log, channel);
    if (cold.isEmpty()) {
      complain(channel, findings, "is a voltage, and no column holds its cold junction in °C");
      return Optional.empty();
    }
    return Optional.of(convert(Thermocouple.of(type.get()), channel, cold.get(), findings));
  }

  private static void complain(Channel channel, Findings findings, String problem) {
    findings.error(
        channel.place(),
        "the " + channel.role().label() + " column " + problem,
        "log temperatures, or tell “type” and “cold junction” of the column in sensors.csv",
        row(channel));
  }

  /** With what is told already; the cold junction is a column with its temperature. */
  private static SheetRow row(Channel channel) {
    Map<String, String> cells = new LinkedHashMap<>();
    cells.put(SensorsSheet.COLUMN.name(), channel.name());
    cells.put(SensorsSheet.ROLE.name(), channel.role().label());
    cells.put(SensorsSheet.UNIT.name(), channel.unit().symbol());
    cells.put(SensorsSheet.TYPE.name(), told(channel, SensorsSheet.TYPE));
    cells.put(SensorsSheet.COLD_JUNCTION.name(), told(channel, SensorsSheet.COLD_JUNCTION));
    return SheetRow.of(SensorsSheet.SCHEMA.file(), cells);
  }

  private static String told(Channel channel, Column<String> column) {
    return channel.sensor().flatMap(sensor -> sensor.row().value(column)).orElse("");
  }

  /** The cold junction of a channel in volts; empty for temperatures. */
  static Optional<ColdJunction> coldJunction(Log log, Channel channel, RunContext context) {
    if (!channel.unit().measures(Dimension.VOLTAGE)) {
      return Optional.empty();
    }
    return coldJunction(log, channel).map(cold -> ColdJunction.of(cold, median(cold), context));
  }

  private static double median(Channel cold) {
    double[] celsius = cold.values().asDoubleArray();
    double median = Trace.of(new double[celsius.length], celsius, 0).median();
    return Double.isNaN(median) ? 0 : median;
  }

  private static Optional<Channel> coldJunction(Log log, Channel channel) {
    Optional<String> named =
        channel.sensor().flatMap(sensor -> sensor.row().value(SensorsSheet.COLD_JUNCTION));
    Optional<Channel> cold =
        named.isPresent()
            ? log.channels().stream().filter(each -> isNamed(each, named.get())).findFirst()
            : log.channel(Role.COLD_JUNCTION);
    return cold.filter(each -> each.unit().measures(Dimension.TEMPERATURE));
  }

  private static boolean isNamed(Channel channel, String name) {
    String wanted = name.strip().toLowerCase(Locale.ROOT);
    return channel.name().strip().toLowerCase(Locale.ROOT).equals(wanted);
  }

  private static double[] convert(
      Thermocouple thermocouple, Channel channel, Channel cold, Findings findings) {
    double[] volts = channel.values().asDoubleArray();
    double[] junction = cold.values().asDoubleArray();
    double[] celsius = new double[volts.length];
    double last = Double.NaN;
    int outOfRange = 0;
    for (int i = 0; i < volts.length; i++) {
      last = Double.isNaN(junction[i]) ? last : junction[i];
      OptionalDouble hot =
          Double.isNaN(volts[i]) ? OptionalDouble.empty() : thermocouple.celsius(volts[i], last);
      celsius[i] = hot.orElse(Double.NaN);
      outOfRange += hot.isEmpty() && !Double.isNaN(volts[i]) ? 1 : 0;
    }
    if (outOfRange > 0) {
      findings.warning(
          channel.place(),
          outOfRange + " voltages are not those of a thermocouple of its type, and were set aside",
          "check the type, the unit and the polarity of the column");
    }
    return celsius;
  }
}
