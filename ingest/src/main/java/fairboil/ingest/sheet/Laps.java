package fairboil.ingest.sheet;

import fairboil.ingest.choice.Event;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.DecimalMark;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.MomentText;
import fairboil.ingest.quantity.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * Laps, which count from mark to mark, where times count from the start of the stopwatch: a column
 * of laps is compared with the times beside it, and laps typed as times are asked about.
 */
final class Laps {

  private static final Pattern HEADER =
      Pattern.compile("(?i)laps?(?:[ _-]?times?)?|intervals?|lap[ _-]?duration");

  /** How far sums of laps may be from the times beside them, s: a stopwatch's own rounding. */
  private static final double ROUNDING = 0.1;

  private Laps() {}

  /** Whether a column is headed as one of laps. */
  static boolean isHeader(String name) {
    return HEADER.matcher(name.strip()).matches();
  }

  /** What is said of a column of laps. */
  static Finding column(Place place, boolean hasTimes) {
    return hasTimes
        ? Finding.note(place, MarkSays.LAPS_COMPARED, Message.NONE)
        : Finding.error(place, MarkSays.ONLY_LAPS, MarkSays.ADD_UP_COLUMN);
  }

  /** Compares the laps of a run's marks with their times; the first that differ are a finding. */
  static Optional<Finding> compare(List<Row> marks) {
    double sum = 0;
    for (Row mark : marks) {
      Optional<Given<String>> cell = lap(mark);
      OptionalDouble lap = cell.map(Laps::seconds).orElse(OptionalDouble.empty());
      OptionalDouble time = seconds(mark);
      if (lap.isEmpty() || time.isEmpty()) {
        return Optional.empty();
      }
      sum += lap.getAsDouble();
      if (Math.abs(sum - time.getAsDouble()) > ROUNDING + 1e-9) {
        return Optional.of(
            Finding.warning(
                cell.orElseThrow().place(),
                MarkSays.LAPS_DIFFER.with(typed(sum), typed(time.getAsDouble())),
                MarkSays.WHICH_IS_RIGHT));
      }
    }
    return Optional.empty();
  }

  private static Optional<Given<String>> lap(Row mark) {
    return mark.extras().entrySet().stream()
        .filter(extra -> isHeader(extra.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  private static OptionalDouble seconds(Given<String> lap) {
    Reading<ClockTime> reading =
        MomentText.read(lap.value(), Optional.empty(), DecimalMark.UNKNOWN);
    return reading instanceof Reading.Read<ClockTime> read
            && read.value() instanceof ClockTime.Elapsed elapsed
        ? OptionalDouble.of(elapsed.seconds())
        : OptionalDouble.empty();
  }

  private static OptionalDouble seconds(Row mark) {
    return mark.get(StopwatchSheet.TIME) instanceof ClockTime.Elapsed elapsed
        ? OptionalDouble.of(elapsed.seconds())
        : OptionalDouble.empty();
  }

  /**
   * What to type if marks, in the order of the sheet, are laps; empty if they cannot be: some are
   * no elapsed times, or they do not stand in the order in which things happen.
   */
  static Optional<Argument> addedUp(List<Row> marks) {
    List<Argument> typed = new ArrayList<>();
    double sum = 0;
    Event before = Event.LIT;
    for (Row mark : marks) {
      Optional<Event> event = StopwatchReader.event(mark.get(StopwatchSheet.EVENT));
      OptionalDouble lap = seconds(mark);
      if (lap.isEmpty() || event.filter(Laps::comesInOrder).isEmpty()) {
        return Optional.empty();
      }
      if (event.get().compareTo(before) < 0) {
        return Optional.empty();
      }
      before = event.get();
      sum += lap.getAsDouble();
      typed.add(
          Argument.clause(MarkSays.MARK_AT.with(Argument.word(event.get().label()), typed(sum))));
    }
    return Optional.of(Argument.list(typed));
  }

  // Refuelling and lids come at any time.
  private static boolean comesInOrder(Event event) {
    return switch (event) {
      case LIT, GAS_LIT, POT_ON, BOIL, POT_OFF, FLAME_OUT, GLOW_OUT -> true;
      case REFUELLED, LID_ON, LID_OFF -> false;
    };
  }

  private static Argument typed(double seconds) {
    long tenths = Math.round(seconds * 10);
    return Argument.typed(tenths / 10.0, tenths % 10 == 0 ? 1 : 0.1, Dimension.DURATION);
  }
}
