package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.choice.YesNo;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.sheet.Sensor;
import fairboil.ingest.sheet.SensorsSheet;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
      remarks.note(
          place(columns),
          "a colon stands before the decimals of the seconds: taken as a point",
          "");
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
          "whether day or month comes first in "
              + Spell.quoted(facts.firstText())
              + " cannot be told; all dates are the same, so the date was left aside",
          "say yes or no under \u201cday first\u201d in sensors.csv to have the date",
          dayFirst(columns));
      return Optional.of(format(facts, orders.get(0), StampFormat.Trust.CLOCK));
    }
    Optional<DateOrder> unbroken = facts.onlyUnbroken(orders);
    if (unbroken.isPresent()) {
      remarks.note(
          place(columns),
          "the dates were read "
              + (unbroken.get() == DateOrder.DAY_MONTH_YEAR ? "day" : "month")
              + " first: otherwise the log would break off for weeks",
          "");
      return Optional.of(dated(columns, facts, unbroken.get()));
    }
    askOrder(columns, facts);
    return Optional.empty();
  }

  private void askOrder(List<LogColumn> columns, StampFacts facts) {
    remarks.error(
        place(columns),
        "whether day or month comes first in "
            + Spell.quoted(facts.firstText())
            + " cannot be told, and the two give different times",
        "say yes or no under \u201cday first\u201d in sensors.csv",
        dayFirst(columns));
  }

  private static SheetRow dayFirst(List<LogColumn> columns) {
    Map<String, String> cells = new LinkedHashMap<>();
    cells.put(SensorsSheet.COLUMN.name(), columns.get(0).name());
    cells.put(SensorsSheet.ROLE.name(), Role.TIME.label());
    cells.put(SensorsSheet.DAY_FIRST.name(), "");
    return SheetRow.of(SensorsSheet.SCHEMA.file(), cells);
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
      remarks.note(
          place(columns),
          "the logger's clock looks unset (it shows the year "
              + year
              + "): date and time of day"
              + " were left aside",
          "");
      return format(facts, order, StampFormat.Trust.NOTHING);
    }
    if (facts.isUtc()) {
      remarks.note(
          place(columns),
          "the times are in UTC: the local time of day is not known from them",
          "join this log to a stopwatch by elapsed times");
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
        "whether "
            + Spell.quoted(facts.firstText())
            + " is hours and minutes or minutes and"
            + " seconds cannot be told",
        "say h:mm or m:ss as the unit of this column in sensors.csv",
        TimeAsking.answer(columns.get(0), ""));
    return Optional.empty();
  }

  private Optional<ClockStyle> milliseconds(
      List<LogColumn> columns, StampFacts facts, Optional<TimeWord> word) {
    boolean told = word.equals(Optional.of(TimeWord.MINUTES_SECONDS_MILLISECONDS));
    if (!told && !facts.provesMilliseconds()) {
      remarks.error(
          place(columns),
          "whether the last part of "
              + Spell.quoted(facts.firstText())
              + " is milliseconds cannot"
              + " be told",
          "say m:ss:mmm as the unit of this column in sensors.csv if it is",
          TimeAsking.answer(columns.get(0), "m:ss:mmm"));
      return Optional.empty();
    }
    if (!told) {
      remarks.note(
          place(columns),
          "times such as " + Spell.quoted(facts.firstText()) + " were read as m:ss:mmm",
          "");
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
          "whether "
              + Spell.quoted(facts.firstText())
              + " is elapsed time or just after midnight cannot be told: taken as elapsed",
          "say \u201ctime of day\u201d as its unit in sensors.csv if it is that",
          TimeAsking.answer(columns.get(0), "time of day"));
    }
    return false;
  }

  private static boolean says(List<LogColumn> columns, boolean elapsed) {
    return columns.stream()
        .flatMap(column -> column.header().words().stream())
        .anyMatch(word -> elapsed ? TimeWords.isElapsed(word) : TimeWords.isClock(word));
  }
}
