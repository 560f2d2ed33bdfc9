package fairboil.analysis.run;

import fairboil.analysis.sensor.SensorType;
import fairboil.analysis.sensor.Thermocouple;
import fairboil.analysis.trace.Trace;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.finding.Template;
import fairboil.ingest.log.Channel;
import fairboil.ingest.log.Log;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns the voltages of a thermocouple into temperatures, its cold junction allowed for. */
final class Voltages {

  private static final Template OTHER_UNIT =
      Template.of("the {word} column is in {word}, not a temperature");
  private static final Template CHECK_UNIT =
      Template.of("log temperatures, or type the true unit of the column in {sheet}");
  private static final Template NO_TYPE =
      Template.of("the {word} column is a voltage, and the type of its thermocouple is not given");
  private static final Template NO_COLD_JUNCTION =
      Template.of("the {word} column is a voltage, and no column holds its cold junction in °C");
  private static final Template GIVE_BOTH =
      Template.of(
          "log temperatures, or give in the row of this column in {sheet} its type, such as K, and"
              + " under cold junction the column of the log with the temperature of its plugs");
  private static final Template OUT_OF_RANGE =
      Template.of(
          "{count|voltage was|voltages were} set aside: no thermocouple of its type gives such");
  private static final Template CHECK_WIRES =
      Template.of(
          "check the type and the unit of the column, and whether its two wires are swapped");

  private Voltages() {}

  /**
   * The readings of a channel in °C, NaN where missing or out of the thermocouple's range; empty,
   * with a finding, where the channel is in no voltage or its type or cold junction is not known.
   */
  static Optional<double[]> celsius(Log log, Channel channel, Findings findings) {
    if (!channel.unit().measures(Dimension.VOLTAGE)) {
      findings.error(
          channel.place(),
          OTHER_UNIT.with(
              Argument.word(channel.role().label()), Argument.word(channel.unit().symbol())),
          CHECK_UNIT.with(RunSays.SENSORS));
      return Optional.empty();
    }
    Optional<SensorType> type =
        channel
            .sensor()
            .flatMap(sensor -> sensor.row().value(SensorsSheet.TYPE))
            .flatMap(SensorType::named)
            .filter(SensorType::isThermocouple);
    if (type.isEmpty()) {
      complain(channel, findings, NO_TYPE);
      return Optional.empty();
    }
    Optional<Channel> cold = coldJunction(log, channel);
    if (cold.isEmpty()) {
      complain(channel, findings, NO_COLD_JUNCTION);
      return Optional.empty();
    }
    return Optional.of(convert(Thermocouple.of(type.get()), channel, cold.get(), findings));
  }

  private static void complain(Channel channel, Findings findings, Template problem) {
    Message said = problem.with(Argument.word(channel.role().label()));
    Message remedy = GIVE_BOTH.with(RunSays.SENSORS);
    if (channel.sensor().isPresent()) {
      // A second row for the column would only be one too many.
      findings.error(channel.place(), said, remedy);
    } else {
      findings.error(channel.place(), said, remedy, row(channel));
    }
  }

  private static SheetRow row(Channel channel) {
    Map<String, Argument> cells = new LinkedHashMap<>();
    cells.put(SensorsSheet.COLUMN.name(), Argument.name(channel.name()));
    cells.put(SensorsSheet.ROLE.name(), Argument.word(channel.role().label()));
    cells.put(SensorsSheet.UNIT.name(), Argument.word(channel.unit().symbol()));
    cells.put(SensorsSheet.TYPE.name(), Argument.word(""));
    cells.put(SensorsSheet.COLD_JUNCTION.name(), Argument.word(""));
    return new SheetRow(SensorsSheet.SCHEMA.file(), cells);
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
          channel.place(), OUT_OF_RANGE.with(Argument.count(outOfRange)), CHECK_WIRES.with());
    }
    return celsius;
  }
}
