package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.choice.YesNo;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Fix;
import fairboil.ingest.finding.Place;
import fairboil.ingest.sheet.Sensor;
import fairboil.ingest.sheet.SensorsSheet;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Decides how a log writes moments; asks where two readings would give different times. */
final class StampPlanner {

  /** A clock that shows an earlier year was never set. */
  private static final int FIRST_YEAR = 2005;

  /** A time of day without a date that starts later than this is that of a clock, in seconds. */
  private static final double CLOCK_FROM = 3600;

  private static final double CERTAINLY_ELAPSED = 600;

  private final TableShape shape;
  private final SensorAnswers answers;
  private final Remarks remarks;

  StampPlanner(TableShape shape, SensorAnswers answers, Remarks remarks) {
    this.shape = shape;
    this.answers = answers;
    this.remarks = remarks;
  }

  /** A reader of the moments in a column, or in one of dates and one of times. */
  Optional<TimeReader> plan(List<LogColumn> columns) {
    StampFacts facts = StampFacts.of(shape, columns);
    if (!facts.hasTimes()) {
      return Optional.empty();
    }
    if (facts.hasColonDecimals()) {
      remarks.note(place(columns), StampSays.COLON.with());
    }
    Optional<StampFormat> format =
        facts.hasDates() ? dated(columns, facts) : undated(columns, facts);
    int[] indices = columns.stream().mapToInt(LogColumn::index).toArray();
    return format.map(known -> new StampTimes(known, indices));
  }

  private Place place(List<LogColumn> columns) {
    return remarks.file().column(columns.get(0).name());
  }

  private Optional<StampFormat> dated(List<LogColumn> columns, StampFacts facts) {
    List<DateOrder> orders = facts.orders();
    if (orders.isEmpty()) {
      return Optional.empty();
    }
    Optional<DateOrder> told = toldOrder(columns, orders);
    if (firstYear(facts, orders.get(0)) < FIRST_YEAR) {
      return Optional.of(dated(columns, facts, orders.get(0)));
    }
    if (told.isPresent() || orders.size() == 1) {
      return Optional.of(dated(columns, facts, told.orElseGet(() -> orders.get(0))));
    }
    if (orders.stream().allMatch(order -> facts.longestStep(order) == 0)) {
      remarks.note(
          place(columns),
          StampSays.ORDER_UNNEEDED.with(Arguments.cell(facts.firstText())),
          StampSays.FOR_THE_DATE.with(Arguments.SENSORS),
          dayFirst(columns));
      return Optional.of(format(facts, orders.get(0), StampFormat.Trust.CLOCK));
    }
    Optional<DateOrder> unbroken = facts.onlyUnbroken(orders);
    if (unbroken.isPresent()) {
      remarks.note(
          place(columns),
          StampSays.ORDER_FOUND.with(
              Argument.word(unbroken.get() == DateOrder.DAY_MONTH_YEAR ? "day" : "month")));
      return Optional.of(dated(columns, facts, unbroken.get()));
    }
    askOrder(columns, facts);
    return Optional.empty();
  }

  private void askOrder(List<LogColumn> columns, StampFacts facts) {
    remarks.error(
        place(columns),
        StampSays.ORDER_UNKNOWN.with(Arguments.cell(facts.firstText())),
        StampSays.SAY_ORDER.with(Arguments.SENSORS),
        dayFirst(columns));
  }

  private Optional<Fix> dayFirst(List<LogColumn> columns) {
    return new SensorFix(columns.get(0).name(), answers.of(columns.get(0)))
        .with(SensorsSheet.ROLE, Role.TIME.label())
        .open(SensorsSheet.DAY_FIRST)
        .fix();
  }

  private Optional<Fix> unit(List<LogColumn> columns, String unit) {
    return TimeAsking.answer(columns.get(0), answers.of(columns.get(0)), unit);
  }

  private Optional<DateOrder> toldOrder(List<LogColumn> columns, List<DateOrder> orders) {
    return columns.stream()
        .flatMap(column -> answers.of(column).stream())
        .flatMap(sensor -> sensor.row().value(SensorsSheet.DAY_FIRST).stream())
        .map(yes -> yes == YesNo.YES ? DateOrder.DAY_MONTH_YEAR : DateOrder.MONTH_DAY_YEAR)
        .filter(orders::contains)
        .findFirst();
  }

  private static int firstYear(StampFacts facts, DateOrder order) {
    return facts.firstDate(order).map(LocalDate::getYear).orElse(FIRST_YEAR);
  }

  private StampFormat dated(List<LogColumn> columns, StampFacts facts, DateOrder order) {
    int year = firstYear(facts, order);
    if (year < FIRST_YEAR) {
      remarks.note(place(columns), StampSays.UNSET.with(Argument.number(year, 0)));
      return format(facts, order, StampFormat.Trust.NOTHING);
    }
    if (facts.isUtc()) {
      remarks.note(place(columns), StampSays.UTC.with(), StampSays.JOIN_BY_ELAPSED.with());
      return format(facts, order, StampFormat.Trust.NOTHING);
    }
    return format(facts, order, StampFormat.Trust.DATE_AND_CLOCK);
  }

  private static StampFormat format(StampFacts facts, DateOrder order, StampFormat.Trust trust) {
    return new StampFormat(
        trust == StampFormat.Trust.NOTHING
            ? TimeAxis.Kind.ELAPSED
            : trust == StampFormat.Trust.CLOCK
                ? TimeAxis.Kind.TIME_OF_DAY
                : TimeAxis.Kind.DATE_TIME,
        Optional.of(order),
        ClockStyle.HOURS_FIRST,
        offsets(facts),
        trust);
  }

  private static StampFormat.Offsets offsets(StampFacts facts) {
    return facts.hasOffsets() ? StampFormat.Offsets.IN_EVERY_CELL : StampFormat.Offsets.NONE;
  }

  private Optional<StampFormat> undated(List<LogColumn> columns, StampFacts facts) {
    Optional<TimeWord> word = word(columns);
    Optional<ClockStyle> style = style(columns, facts, word);
    if (style.isEmpty()) {
      return Optional.empty();
    }
    boolean clock = isClock(columns, facts, word, style.get());
    return Optional.of(
        new StampFormat(
            clock ? TimeAxis.Kind.TIME_OF_DAY : TimeAxis.Kind.ELAPSED,
            Optional.empty(),
            style.get(),
            offsets(facts),
            clock ? StampFormat.Trust.CLOCK : StampFormat.Trust.NOTHING));
  }

  private Optional<TimeWord> word(List<LogColumn> columns) {
    return columns.stream()
        .flatMap(column -> toldUnit(column).stream())
        .flatMap(text -> TimeWord.of(text).stream())
        .findFirst()
        .or(() -> columns.stream().flatMap(column -> column.header().time().stream()).findFirst());
  }

  private Optional<String> toldUnit(LogColumn column) {
    return answers.of(column).map(Sensor::row).flatMap(row -> row.value(SensorsSheet.UNIT));
  }

  private Optional<ClockStyle> style(
      List<LogColumn> columns, StampFacts facts, Optional<TimeWord> word) {
    if (facts.hasMilliseconds()) {
      return milliseconds(columns, facts, word);
    }
    if (word.equals(Optional.of(TimeWord.HOURS_MINUTES)) || facts.hasHalves()) {
      return Optional.of(ClockStyle.HOURS_FIRST);
    }
    boolean minutes =
        word.equals(Optional.of(TimeWord.MINUTES_SECONDS))
            || facts.hasThreeParts()
            || facts.isFinerThanSeconds()
            || facts.mostFirst() > 24
            || facts.firstSeconds() < 60;
    if (minutes) {
      return Optional.of(ClockStyle.MINUTES_FIRST);
    }
    remarks.error(
        place(columns),
        StampSays.HOURS_OR_MINUTES.with(Arguments.cell(facts.firstText())),
        StampSays.SAY_WHICH.with(Arguments.SENSORS),
        unit(columns, ""));
    return Optional.empty();
  }

  private Optional<ClockStyle> milliseconds(
      List<LogColumn> columns, StampFacts facts, Optional<TimeWord> word) {
    boolean told = word.equals(Optional.of(TimeWord.MINUTES_SECONDS_MILLISECONDS));
    if (!told && !facts.provesMilliseconds()) {
      remarks.error(
          place(columns),
          StampSays.MILLISECONDS.with(Arguments.cell(facts.firstText())),
          StampSays.SAY_MILLISECONDS.with(Arguments.SENSORS),
          unit(columns, "m:ss:mmm"));
      return Optional.empty();
    }
    if (!told) {
      remarks.note(
          place(columns), StampSays.READ_AS_MILLISECONDS.with(Arguments.cell(facts.firstText())));
    }
    return Optional.of(ClockStyle.MILLISECONDS_LAST);
  }

  private boolean isClock(
      List<LogColumn> columns, StampFacts facts, Optional<TimeWord> word, ClockStyle style) {
    if (facts.hasHalves() || word.equals(Optional.of(TimeWord.TIME_OF_DAY))) {
      return true;
    }
    boolean saysElapsed = word.equals(Optional.of(TimeWord.ELAPSED)) || says(columns, true);
    boolean minutes =
        style == ClockStyle.MILLISECONDS_LAST
            || (!facts.hasThreeParts() && style == ClockStyle.MINUTES_FIRST);
    if (saysElapsed || minutes || facts.mostFirst() > 24) {
      return false;
    }
    if (says(columns, false) || facts.firstSeconds() >= CLOCK_FROM || !facts.hasThreeParts()) {
      return true;
    }
    if (facts.firstSeconds() > CERTAINLY_ELAPSED) {
      remarks.note(
          place(columns),
          StampSays.MIDNIGHT.with(Arguments.cell(facts.firstText())),
          StampSays.SAY_CLOCK.with(Arguments.SENSORS),
          unit(columns, "time of day"));
    }
    return false;
  }

  private static boolean says(List<LogColumn> columns, boolean elapsed) {
    return columns.stream()
        .flatMap(column -> column.header().words().stream())
        .anyMatch(word -> elapsed ? TimeWords.isElapsed(word) : TimeWords.isClock(word));
  }
}
