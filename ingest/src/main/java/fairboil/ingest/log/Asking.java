package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Fix;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Sensor;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.List;
import java.util.Optional;

/** Asks what a log leaves unsaid of its columns, with the very row of {@code sensors.csv}. */
final class Asking {

  // No flame of wood is hotter, in any unit.
  private static final double HOTTEST = 3500;

  private final List<ChannelReader> channels;
  private final Remarks remarks;
  private final int headerLine;
  private final boolean asked;

  /**
   * What is to be asked of the columns.
   *
   * @param channels the columns, read
   * @param shape the table
   * @param asked whether an error already asks which of several columns has a role
   */
  Asking(List<ChannelReader> channels, TableShape shape, boolean asked, Remarks remarks) {
    this.channels = channels;
    this.headerLine = shape.header().map(Sample.Line::number).orElse(shape.firstLine());
    this.asked = asked;
    this.remarks = remarks;
  }

  /** Asks for units that are not said and for roles that nothing has. */
  void ask() {
    channels.stream()
        .filter(channel -> channel.plan().role().isPresent() && channel.plan().unit().isEmpty())
        .forEach(this::askUnit);
    boolean flame = has(Role.FLAME);
    boolean water = has(Role.WATER);
    List<ChannelReader> open = channels.stream().filter(this::isOpen).toList();
    if (!flame && !water && !asked) {
      askRoles(open);
    } else if (!asked && !open.isEmpty()) {
      tellUnused(open, flame ? Role.WATER : Role.FLAME, flame && water);
    }
  }

  private boolean has(Role role) {
    return channels.stream().anyMatch(channel -> channel.plan().role().equals(Optional.of(role)));
  }

  private boolean isOpen(ChannelReader channel) {
    return channel.plan().role().isEmpty() && channel.range().count() > 0;
  }

  private void askUnit(ChannelReader channel) {
    ChannelPlan plan = channel.plan();
    Role role = plan.role().orElseThrow();
    Optional<Fix> fix = answer(channel, role, guess(channel));
    Argument held = Argument.clause(channel.words());
    Message remedy =
        AskingSays.SAY_UNIT.with(Arguments.SENSORS, Argument.name(plan.column().header().bare()));
    if (role == Role.FLAME || role == Role.WATER) {
      remarks.error(place(channel), AskingSays.UNIT_UNSAID.with(held), remedy, fix);
    } else {
      remarks.warning(place(channel), AskingSays.UNIT_UNSAID_UNUSED.with(held), remedy, fix);
    }
  }

  /** What to type about a column, with its scale where its numbers call for one. */
  private static Optional<Fix> answer(ChannelReader channel, Role role, Optional<Unit> unit) {
    SensorFix fix = fix(channel.plan(), role.label(), unit);
    return Scales.mayBeLacking(channel.plan(), channel.range())
        ? fix.with(SensorsSheet.SCALE, Scales.of(channel.plan(), channel.range()).cell()).fix()
        : fix.fix();
  }

  // A flame's range tells little: then the water's unit, if its range tells that.
  private Optional<Unit> guess(ChannelReader channel) {
    Optional<Unit> own = channel.likeness().likelyUnit();
    if (own.isPresent()) {
      return own;
    }
    return channels.stream()
        .filter(other -> other != channel && other.range().count() > 0)
        .filter(other -> changes(other) && !RoleWords.sayNoReading(words(other)))
        .flatMap(other -> other.plan().unit().or(other.likeness()::likelyUnit).stream())
        .filter(unit -> unit.dimension() == Dimension.TEMPERATURE)
        .findFirst();
  }

  private Place place(ChannelReader channel) {
    return remarks.line(headerLine).column(channel.plan().column().name());
  }

  private void askRoles(List<ChannelReader> open) {
    if (open.isEmpty()) {
      remarks.error(
          remarks.line(headerLine), AskingSays.NO_TEMPERATURES.with(), AskingSays.CHECK_LOG.with());
      return;
    }
    List<ChannelReader> candidates = candidates(open);
    List<ChannelReader> offered = offered(candidates);
    if (offered.isEmpty()) {
      remarks.error(
          remarks.line(headerLine),
          AskingSays.NONE_SEEMS.with(ranges(candidates)),
          AskingSays.CHECK_OR_SAY.with(Arguments.SENSORS));
      return;
    }
    ChannelReader likely = hottest(offered);
    remarks.error(
        remarks.line(headerLine),
        AskingSays.NONE_CALLED.with(ranges(candidates)),
        AskingSays.SAY_WHICH.with(Arguments.SENSORS),
        likely.likeness().likelyRole().flatMap(role -> answer(likely, role, unit(likely))));
    offered.stream().filter(channel -> channel != likely).forEach(this::suggest);
  }

  private static List<ChannelReader> candidates(List<ChannelReader> open) {
    List<ChannelReader> temperatures = open.stream().filter(Asking::saysTemperature).toList();
    List<ChannelReader> unnamed = open.stream().filter(channel -> !isCounter(channel)).toList();
    List<ChannelReader> others = unnamed.isEmpty() ? open : unnamed;
    return temperatures.isEmpty() ? others : temperatures;
  }

  private static Argument ranges(List<ChannelReader> channels) {
    return new Argument.Listed(
        channels.stream().map(Asking::columnHolds).toList(), Argument.Joining.SEMICOLON);
  }

  private static Argument columnHolds(ChannelReader channel) {
    return Argument.clause(
        AskingSays.COLUMN_HOLDS.with(
            Argument.name(channel.plan().column().name()), Argument.clause(channel.words())));
  }

  // A set point, a pressure, a count of time or what never changes is not offered beside what may
  // be a reading, and what its name says is no temperature never is.
  private static List<ChannelReader> offered(List<ChannelReader> candidates) {
    List<ChannelReader> readings =
        candidates.stream()
            .filter(channel -> !RoleWords.sayNoReading(words(channel)))
            .filter(channel -> channel.range().highest() <= HOTTEST)
            .filter(Asking::changes)
            .toList();
    if (!readings.isEmpty()) {
      return readings;
    }
    List<ChannelReader> possible = candidates.stream().filter(Asking::mayBeTemperature).toList();
    return possible.stream().anyMatch(Asking::changes)
        ? possible.stream().filter(Asking::changes).toList()
        : possible;
  }

  private static boolean changes(ChannelReader channel) {
    return channel.range().lowest() < channel.range().highest();
  }

  private static boolean mayBeTemperature(ChannelReader channel) {
    return !RoleWords.sayOtherQuantity(words(channel))
        && (channel.range().highest() <= HOTTEST
            || Scales.mayBeLacking(channel.plan(), channel.range()));
  }

  private static List<String> words(ChannelReader channel) {
    return channel.plan().column().header().words();
  }

  private static boolean isCounter(ChannelReader channel) {
    return RowCounter.isCalled(channel.plan().column().header().written());
  }

  private static boolean saysTemperature(ChannelReader channel) {
    return channel.plan().column().header().saysTemperature();
  }

  private void suggest(ChannelReader channel) {
    channel.likeness().likelyRole().ifPresent(role -> tell(channel, AskingSays.HOLDS, role));
  }

  private void tell(ChannelReader channel, Template holds, Role role) {
    remarks.note(
        place(channel),
        holds.with(Argument.clause(channel.words())),
        AskingSays.IF_ROLE.with(Argument.word(role.label()), Arguments.SENSORS),
        answer(channel, role, unit(channel)));
  }

  private static ChannelReader hottest(List<ChannelReader> channels) {
    return channels.stream()
        .reduce((a, b) -> b.likeness().highest() > a.likeness().highest() ? b : a)
        .orElseThrow();
  }

  private static Optional<Unit> unit(ChannelReader channel) {
    return channel.plan().unit().or(channel.likeness()::likelyUnit);
  }

  private void tellUnused(List<ChannelReader> open, Role missing, boolean both) {
    for (ChannelReader channel : open) {
      if (saysTemperature(channel) && !both) {
        tell(channel, AskingSays.UNUSED, missing);
      }
    }
  }

  /** What to type into {@code sensors.csv} about a column. */
  static SensorFix fix(ChannelPlan plan, String role, Optional<Unit> unit) {
    return fix(plan.column(), plan.sensor(), role, unit);
  }

  /** What to type into {@code sensors.csv} about a column without a plan. */
  static SensorFix fix(LogColumn column, Optional<Sensor> known, String role, Optional<Unit> unit) {
    String called = column.header().written().isEmpty() ? column.number() : column.name();
    return new SensorFix(called, known)
        .with(SensorsSheet.ROLE, role)
        .with(SensorsSheet.UNIT, unit.map(Unit::symbol).orElse(""));
  }
}
