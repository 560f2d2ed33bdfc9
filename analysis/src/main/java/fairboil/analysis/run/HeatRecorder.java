package fairboil.analysis.run;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.heat.BlockMeans;
import fairboil.analysis.heat.CoolingFit;
import fairboil.analysis.run.HeatRecord.Part;
import fairboil.analysis.trace.Trace;
import fairboil.analysis.water.Water;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Lid;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.RunsSheet;
import java.util.Optional;
import java.util.OptionalDouble;

/** Keeps of a log what the heat balance needs: heating and cooling of the water, as block means. */
final class HeatRecorder {

  private static final Template NO_WATER = Template.of("there is no log of its water");
  private static final Template NO_POT_OFF =
      Template.of("the time at which its pot came off was not marked");
  private static final Template LID_CHANGED =
      Template.of("its lid was changed before the pot came off");
  private static final Template TOO_SHORT =
      Template.of("its log does not show the pot cooling by {value} in {value} or more");
  private static final int HEATING_BLOCKS = 60;
  private static final int COOLING_BLOCKS = 100;
  private static final double LEAST_BLOCK_SECONDS = 3;

  /** Until the probe and the water about it are as warm as the rest: a judgement, s. */
  private static final double SETTLING_SECONDS = 30;

  private static final double MOST_OF_BOIL_TIME = 0.1;

  /** The lag of a probe rounds off the last of the rise: a judgement, K. */
  private static final double ROUNDED_KELVINS = 1.5;

  /** Relative standard uncertainty of what is reckoned to have boiled away: a judgement. */
  private static final double BOILED_AWAY = 0.3;

  private final RunContext context;
  private final EventTimes events;
  private final WaterShown shown;
  private final Optional<PreparedChannel> water;

  HeatRecorder(RunContext context, PreparedLog log, EventTimes events, WaterShown shown) {
    this.context = context;
    this.events = events;
    this.shown = shown;
    this.water = log.channel(Role.WATER);
  }

  HeatRecord record(Optional<HeatRecord.PotHeat> pot, Figure mass, Figure netPower) {
    Optional<Part> heating = water.flatMap(this::heating);
    Optional<Part> cooling = water.flatMap(this::cooling);
    boolean enough = cooling.filter(part -> CoolingFit.isEnough(part.blocks())).isPresent();
    return new HeatRecord(
        pot,
        heating,
        enough ? cooling : Optional.empty(),
        enough ? Message.NONE : noCooling(),
        waterLeft(mass, netPower),
        water.map(channel -> channel.probe().tolerance(80)).orElse(0.0));
  }

  private OptionalDouble boilAt() {
    return shown.seen().isPresent()
        ? OptionalDouble.of(shown.seen().get().at())
        : events.at(Event.BOIL);
  }

  private Optional<Part> heating(PreparedChannel channel) {
    OptionalDouble start = events.timeline().boilTimeStart();
    OptionalDouble boil = boilAt();
    if (events.whyNoStart().isPresent() || boil.isEmpty()) {
      return Optional.empty();
    }
    double seconds = boil.getAsDouble() - start.getAsDouble();
    double settling = Math.min(SETTLING_SECONDS, MOST_OF_BOIL_TIME * seconds);
    double from = start.getAsDouble() + Math.max(0, settling);
    double to = Math.min(boil.getAsDouble(), lidMovedAfter(from));
    if (to <= from) {
      return Optional.empty();
    }
    BlockMeans blocks = blocks(channel.trace(), from, to, HEATING_BLOCKS, start.getAsDouble());
    return Optional.of(new Part(start.getAsDouble(), blocks.below(top(channel, boil))));
  }

  /** The plateau, or the reading at the boil that somebody marked, less what lag rounds off. */
  private double top(PreparedChannel channel, OptionalDouble boil) {
    double level =
        shown.seen().isPresent()
            ? shown.seen().get().plateau()
            : channel.trace().between(boil.getAsDouble() - 10, boil.getAsDouble() + 10).median();
    return level - ROUNDED_KELVINS;
  }

  private Optional<Part> cooling(PreparedChannel channel) {
    OptionalDouble off = events.at(Event.POT_OFF);
    if (off.isEmpty() || lidMovedBefore(off.getAsDouble())) {
      return Optional.empty();
    }
    double from = off.getAsDouble() + SETTLING_SECONDS;
    Trace trace = channel.trace();
    double end = trace.size() == 0 ? from : trace.secondsAt(trace.size() - 1);
    double to = Math.min(end, lidMovedAfter(off.getAsDouble()));
    if (to <= from) {
      return Optional.empty();
    }
    BlockMeans blocks = blocks(trace, from, to, COOLING_BLOCKS, off.getAsDouble());
    return Optional.of(new Part(off.getAsDouble(), blocks.untilJump()));
  }

  private static BlockMeans blocks(Trace trace, double from, double to, int most, double origin) {
    double least = Math.max(LEAST_BLOCK_SECONDS, trace.interval());
    return BlockMeans.of(trace, from, to, most, least, origin);
  }

  /** When the lid was moved after a time; never, if it was not. */
  private double lidMovedAfter(double seconds) {
    return events.timeline().events().stream()
        .filter(HeatRecorder::movesLid)
        .mapToDouble(TimedEvent::seconds)
        .filter(at -> at > seconds)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static boolean movesLid(TimedEvent event) {
    return event.event().filter(it -> it == Event.LID_ON || it == Event.LID_OFF).isPresent();
  }

  /** Whether the pot came off with its lid otherwise than its sheet tells. */
  private boolean lidMovedBefore(double potOff) {
    Optional<Lid> told = context.value(RunsSheet.LID);
    Optional<Event> last =
        events.timeline().events().stream()
            .filter(HeatRecorder::movesLid)
            .filter(event -> event.seconds() <= potOff)
            .flatMap(event -> event.event().stream())
            .reduce((earlier, later) -> later);
    return last.filter(it -> told.filter(lid -> lid == lidAfter(it)).isEmpty()).isPresent();
  }

  private static Lid lidAfter(Event event) {
    return event == Event.LID_ON ? Lid.ON : Lid.OFF;
  }

  private Message noCooling() {
    if (water.isEmpty()) {
      return NO_WATER.with();
    }
    OptionalDouble off = events.at(Event.POT_OFF);
    if (off.isEmpty()) {
      return NO_POT_OFF.with();
    }
    return lidMovedBefore(off.getAsDouble())
        ? LID_CHANGED.with()
        : TOO_SHORT.with(
            Argument.value(CoolingFit.LEAST_FALL, 2, Dimension.TEMPERATURE_DIFFERENCE),
            Argument.value(CoolingFit.LEAST_SECONDS, 2, Dimension.DURATION));
  }

  /** As weighed after the run; else what was put on, less what the net power has boiled away. */
  private Figure waterLeft(Figure mass, Figure netPower) {
    Optional<Given<Quantity>> left = context.cell(RunsSheet.WATER_LEFT);
    if (left.isPresent()) {
      return new WaterFinder(context, new PotFinder(context)).left(left.get());
    }
    Optional<Given<Quantity>> before = context.cell(RunsSheet.POT_WITH_WATER);
    Optional<Given<Quantity>> after = context.cell(RunsSheet.POT_WITH_WATER_AFTER);
    double gone =
        before.isPresent() && after.isPresent()
            ? before.get().value().value() - after.get().value().value()
            : boiledAway(netPower);
    double u = before.isPresent() && after.isPresent() ? 0 : BOILED_AWAY * Math.abs(gone);
    double remains = mass.orNaN() - gone;
    return remains > 0
        ? mass.budget()
            .and(Budget.of(BudgetLine.independent(Influence.WATER_MASS, u)))
            .around(remains, Dimension.MASS)
        : Figure.unknown(WaterSays.LEFT_UNKNOWN.with());
  }

  private double boiledAway(Figure netPower) {
    OptionalDouble boil = boilAt();
    OptionalDouble off = events.at(Event.POT_OFF);
    if (boil.isEmpty() || off.isEmpty() || !netPower.isKnown()) {
      return 0;
    }
    double out = events.at(Event.FLAME_OUT).orElse(off.getAsDouble());
    double seconds = Math.min(off.getAsDouble(), out) - boil.getAsDouble();
    return Math.max(0, netPower.orNaN() * seconds / Water.latentHeat(100));
  }
}
