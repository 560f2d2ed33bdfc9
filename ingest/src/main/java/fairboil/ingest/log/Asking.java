package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

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
    Optional<Unit> guess = guess(channel);
    String problem = "the unit of this column is not said; it holds " + channel.words();
    String remedy =
        "write it in the header, as in "
            + plan.column().header().bare()
            + " (°C), or say it in sensors.csv";
    if (role == Role.FLAME || role == Role.WATER) {
      remarks.error(place(channel), problem, remedy, answer(channel, role.label(), guess));
    } else {
      remarks.warning(
          place(channel),
          problem + ", and was not used",
          remedy,
          answer(channel, role.label(), guess));
    }
  }

  /** The row to paste about a column, with its scale where its numbers call for one. */
  private static SheetRow answer(ChannelReader channel, String role, Optional<Unit> unit) {
    SheetRow row = row(channel.plan().column(), role, unit);
    return Scales.mayBeLacking(channel.plan(), channel.range())
        ? Scales.of(channel.plan(), channel.range()).row(row)
        : row;
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
          remarks.line(headerLine),
          "no column of this log holds temperatures",
          "check that this is the log of the run");
      return;
    }
    List<ChannelReader> temperatures =
        open.stream().filter(channel -> saysTemperature(channel)).toList();
    List<ChannelReader> unnamed = open.stream().filter(channel -> !isCounter(channel)).toList();
    List<ChannelReader> others = unnamed.isEmpty() ? open : unnamed;
    List<ChannelReader> candidates = temperatures.isEmpty() ? others : temperatures;
    List<ChannelReader> offered = offered(candidates);
    String ranges =
        candidates.stream()
            .map(channel -> channel.plan().column().name() + " holds " + channel.words())
            .collect(Collectors.joining("; "));
    if (offered.isEmpty()) {
      remarks.error(
          remarks.line(headerLine),
          "no column of this log seems to hold temperatures; " + ranges,
          "check that this is the log of the run; if one of them is the flame or the water, say so"
              + " in sensors.csv, with its unit and scale");
      return;
    }
    ChannelReader likely = hottest(offered);
    remarks.error(
        remarks.line(headerLine),
        "no column is called flame or water; " + ranges,
        "say in sensors.csv which column is the flame and which the water, a row each",
        answer(likely, likely.likeness().likelyRole(), unit(likely)));
    offered.stream()
        .filter(channel -> channel != likely && !channel.likeness().likelyRole().isEmpty())
        .forEach(this::suggest);
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
    remarks.note(
        place(channel),
        "this column holds " + channel.words(),
        "if it is the " + channel.likeness().likelyRole() + ", say so in sensors.csv",
        answer(channel, channel.likeness().likelyRole(), unit(channel)));
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
        remarks.note(
            place(channel),
            "this column was not used; it holds " + channel.words(),
            "if it is the " + missing.label() + ", say so in sensors.csv",
            answer(channel, missing.label(), unit(channel)));
      }
    }
  }

  /** A row of {@code sensors.csv} about a column. */
  static SheetRow row(LogColumn column, String role, Optional<Unit> unit) {
    Map<String, String> cells = new LinkedHashMap<>();
    cells.put(
        SensorsSheet.COLUMN.name(),
        column.header().written().isEmpty() ? column.number() : column.name());
    cells.put(SensorsSheet.ROLE.name(), role);
    cells.put(SensorsSheet.UNIT.name(), unit.map(Unit::symbol).orElse(""));
    return SheetRow.of(SensorsSheet.SCHEMA.file(), cells);
  }
}
