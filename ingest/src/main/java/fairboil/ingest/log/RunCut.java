package fairboil.ingest.log;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.CellFix;
import fairboil.ingest.finding.Fix;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * Where a run starts and ends in its log: {@code log from} and {@code log to}. Elapsed times count
 * from the first reading of the file; where the log tells the time of day, a time of day may be
 * given instead. A time such as {@code 14:05} is the time of day if the log has it then, or nearly,
 * else elapsed minutes and seconds.
 */
final class RunCut {

  private static final Template NOTHING_LEFT =
      Template.of(
          "no reading of {name} lies between log from and log to; the log goes from {clause}");
  private static final Template CORRECT = Template.of("correct log from and log to");
  private static final Template ELAPSED = Template.of("{typed} to {typed}");
  private static final Template CLOCK = Template.of("{word} to {word}");

  private static final double DAY = 86_400;
  private static final double NEARLY = 3600;
  private static final Pattern TWO_PARTS = Pattern.compile("\\d+:\\d{1,2}");

  private final Run run;
  private final TimeReader clock;
  private final double last;
  private final Remarks remarks;

  RunCut(Run run, TimeReader clock, double last, Remarks remarks) {
    this.run = run;
    this.clock = clock;
    this.last = last;
    this.remarks = remarks;
  }

  /** Whether the run says where it starts or ends. */
  boolean isGiven() {
    return run.row().cell(RunsSheet.LOG_FROM).isPresent()
        || run.row().cell(RunsSheet.LOG_TO).isPresent();
  }

  /** Seconds of the file's clock from which readings belong to the run. */
  double from() {
    return bound(RunsSheet.LOG_FROM).orElse(Double.NEGATIVE_INFINITY);
  }

  /** Seconds of the file's clock up to which readings belong to the run. */
  double to() {
    return bound(RunsSheet.LOG_TO).orElse(Double.POSITIVE_INFINITY);
  }

  /** Says that no reading is left; the place is that of the cell. */
  void tellNothingLeft() {
    Place place =
        run.row().cell(RunsSheet.LOG_FROM).isPresent()
            ? run.row().place(RunsSheet.LOG_FROM)
            : run.row().place(RunsSheet.LOG_TO);
    remarks.error(
        place,
        NOTHING_LEFT.with(Argument.name(remarks.file().file()), Argument.clause(span(0, last))),
        CORRECT.with());
  }

  private OptionalDouble bound(Column<ClockTime> column) {
    Optional<Given<ClockTime>> given = run.row().cell(column);
    if (given.isEmpty()) {
      return OptionalDouble.empty();
    }
    ClockTime value = given.get().value();
    boolean twoParts = TWO_PARTS.matcher(given.get().written().strip()).matches();
    if (value instanceof ClockTime.TimeOfDay moment) {
      return OptionalDouble.of(ofMoment(moment, twoParts));
    }
    double elapsed = ((ClockTime.Elapsed) value).seconds();
    boolean colons = given.get().written().indexOf(':') >= 0;
    return OptionalDouble.of(
        colons ? either(twoParts ? elapsed * 60 : elapsed, elapsed, Optional.empty()) : elapsed);
  }

  private double ofMoment(ClockTime.TimeOfDay moment, boolean twoParts) {
    double ofDay = moment.secondOfDay();
    return either(ofDay, twoParts ? ofDay / 60 : ofDay, moment.date());
  }

  private double either(double secondOfDay, double elapsed, Optional<LocalDate> date) {
    OptionalDouble asClock = onAxis(secondOfDay, date);
    if (asClock.isEmpty()) {
      return elapsed;
    }
    double seconds = asClock.getAsDouble();
    boolean near = seconds >= -NEARLY && seconds <= last + NEARLY;
    boolean elapsedFits = date.isEmpty() && elapsed >= 0 && elapsed <= last;
    return near || !elapsedFits ? seconds : elapsed;
  }

  // Without a date: on the log's first day, or on the next if it is over by then.
  private OptionalDouble onAxis(double secondOfDay, Optional<LocalDate> date) {
    if (clock.startSecondOfDay().isEmpty()) {
      return OptionalDouble.empty();
    }
    double seconds = secondOfDay - clock.startSecondOfDay().getAsDouble();
    if (date.isPresent() && clock.startDate().isPresent()) {
      long days = date.get().toEpochDay() - clock.startDate().get().toEpochDay();
      return OptionalDouble.of(seconds + days * DAY);
    }
    boolean tomorrow = seconds < -NEARLY && seconds + DAY <= last + NEARLY;
    return OptionalDouble.of(tomorrow ? seconds + DAY : seconds);
  }

  /** A part of the file's clock, its ends as {@code log from} takes them. */
  Message span(double from, double to) {
    return (clock.startSecondOfDay().isEmpty() ? ELAPSED : CLOCK).with(typed(from), typed(to));
  }

  private Argument typed(double seconds) {
    if (clock.startSecondOfDay().isEmpty()) {
      return Arguments.typedSeconds(seconds);
    }
    double total = clock.startSecondOfDay().getAsDouble() + seconds;
    long days = (long) Math.floor(total / DAY);
    String time = Spell.elapsed(total - days * DAY);
    String padded = time.indexOf(':') == 1 ? "0" + time : time;
    boolean dated = clock.startDate().isPresent() && (days > 0 || last > DAY);
    return Argument.word(dated ? clock.startDate().get().plusDays(days) + " " + padded : padded);
  }

  /** What to type into the run's row so that it is that part of the log. */
  Optional<Fix> fix(double from, double to) {
    Map<String, Argument> cells = new LinkedHashMap<>();
    cells.put(RunsSheet.LOG_FROM.name(), typed(from));
    cells.put(RunsSheet.LOG_TO.name(), typed(to));
    return Optional.of(new CellFix(run.row().place(), cells));
  }
}
