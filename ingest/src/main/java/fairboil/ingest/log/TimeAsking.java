package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Fix;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.Sensor;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Asks what a log leaves unsaid of its time, with what to type into {@code sensors.csv}. */
final class TimeAsking {

  private final TableShape shape;
  private final List<LogColumn> columns;
  private final SensorAnswers answers;
  private final Run run;
  private final Remarks remarks;
  private final Place headerPlace;

  TimeAsking(
      TableShape shape, List<LogColumn> columns, SensorAnswers answers, Run run, Remarks remarks) {
    this.shape = shape;
    this.columns = columns;
    this.answers = answers;
    this.run = run;
    this.remarks = remarks;
    this.headerPlace =
        remarks.line(shape.header().map(Sample.Line::number).orElse(shape.firstLine()));
  }

  /** Asks which of the runs that stand side by side is meant. */
  void whichRun(List<LogColumn> candidates) {
    List<Argument> names = candidates.stream().map(TimeAsking::numberAndName).toList();
    remarks.error(
        headerPlace,
        TimeSays.SIDE_BY_SIDE.with(Argument.list(names)),
        TimeSays.SAY_COLUMNS.with(Arguments.SENSORS),
        new SensorFix(candidates.get(0).number(), Optional.empty())
            .with(SensorsSheet.ROLE, Role.TIME.label())
            .open(SensorsSheet.UNIT)
            .with(SensorsSheet.LOG, Argument.name(run.key().name()))
            .fix());
  }

  private static Argument numberAndName(LogColumn column) {
    return Argument.clause(
        TimeSays.NUMBER_AND_NAME.with(
            Argument.word(column.number()), Argument.name(column.name())));
  }

  /** Asks for the unit of a count of time. */
  void forUnit(LogColumn column) {
    NumberRange range = new NumberRange(shape, column);
    Optional<String> guess = range.likelyTimeUnit();
    Message like =
        guess.map(unit -> TimeSays.LOOKS_LIKE.with(Argument.word(unit))).orElse(Message.NONE);
    remarks.error(
        headerPlace.column(column.name()),
        TimeSays.UNIT_UNSAID.with(
            Argument.clause(range.fromTo()),
            Argument.clause(like),
            Argument.clause(range.meanings())),
        TimeSays.SAY_UNIT.with(Arguments.SENSORS),
        answer(column, answers.of(column), guess.orElse("")));
  }

  /**
   * Asks which column tells the time.
   *
   * @return the column that may do so, which is then no reading
   */
  Optional<LogColumn> forTime() {
    Optional<LogColumn> rising =
        counting(NumberRange::isRising).or(() -> counting(NumberRange::isCountingWithRestarts));
    Template problem = shape.header().isEmpty() ? TimeSays.NO_HEADER : TimeSays.NO_TIME;
    if (rising.isEmpty()) {
      remarks.error(
          headerPlace, problem.with(Argument.clause(Message.NONE)), TimeSays.ADD_TIME.with());
      return rising;
    }
    LogColumn likely = rising.get();
    NumberRange range = new NumberRange(shape, likely);
    remarks.error(
        headerPlace,
        problem.with(Argument.clause(counts(likely, range))),
        TimeSays.GIVE_ROLES.with(Arguments.SENSORS),
        answer(likely, answers.of(likely), range.likelyTimeUnit().orElse("")));
    return rising;
  }

  private static Message counts(LogColumn column, NumberRange range) {
    boolean rises = range.isRising();
    return (rises ? TimeSays.RISES : TimeSays.COUNTS)
        .with(
            Argument.word(column.number()),
            Argument.clause(rises ? range.fromTo() : range.span()),
            Argument.clause(range.meanings()));
  }

  private static boolean saysReading(HeaderName header) {
    return header.unit().isPresent() || RoleWords.of(header.words()).isPresent();
  }

  private Optional<LogColumn> counting(Predicate<NumberRange> how) {
    return columns.stream()
        .filter(column -> !saysReading(column.header()))
        .filter(column -> how.test(new NumberRange(shape, column)))
        .findFirst();
  }

  /** What to type into {@code sensors.csv} so that a column is the time. */
  static Optional<Fix> answer(LogColumn column, Optional<Sensor> known, String unit) {
    boolean named = !column.header().written().isEmpty() && column.name().indexOf('#') < 0;
    return new SensorFix(named ? column.name() : column.number(), known)
        .with(SensorsSheet.ROLE, Role.TIME.label())
        .with(SensorsSheet.UNIT, unit)
        .fix();
  }
}
