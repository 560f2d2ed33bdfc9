package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Asks what a log leaves unsaid of its time, with the very row of {@code sensors.csv}. */
final class TimeAsking {

  private final TableShape shape;
  private final List<LogColumn> columns;
  private final Run run;
  private final Remarks remarks;
  private final Place headerPlace;

  TimeAsking(TableShape shape, List<LogColumn> columns, Run run, Remarks remarks) {
    this.shape = shape;
    this.columns = columns;
    this.run = run;
    this.remarks = remarks;
    this.headerPlace =
        remarks.line(shape.header().map(Sample.Line::number).orElse(shape.firstLine()));
  }

  /** Asks which of the runs that stand side by side is meant. */
  void whichRun(List<LogColumn> candidates) {
    String names =
        candidates.stream()
            .map(column -> column.number() + " (" + column.name() + ")")
            .collect(Collectors.joining(", "));
    Map<String, Argument> cells = new LinkedHashMap<>(answer(candidates.get(0), "").cells());
    cells.put(SensorsSheet.COLUMN.name(), Argument.word(candidates.get(0).number()));
    cells.put(SensorsSheet.LOG.name(), Argument.name(run.key().name()));
    remarks.error(
        headerPlace,
        "several runs stand side by side, with times in columns " + names,
        "say in sensors.csv which columns are those of this run: one row with role time, one with"
            + " flame, one with water, each with the name of the run under log",
        new SheetRow(SensorsSheet.SCHEMA.file(), cells));
  }

  /** Asks for the unit of a count of time. */
  void forUnit(LogColumn column) {
    NumberRange range = new NumberRange(shape, column);
    Optional<String> guess = range.likelyTimeUnit();
    remarks.error(
        headerPlace.column(column.name()),
        "the unit of the time is not said; it goes from "
            + range.words()
            + guess.map(unit -> ": looks like " + unit).orElse("")
            + meanings(range),
        "say s, min or ms in brackets in the header, or as its unit in sensors.csv",
        answer(column, guess.orElse("")));
  }

  private static String meanings(NumberRange range) {
    String meanings = range.meanings();
    return meanings.isEmpty() ? "" : "; " + meanings;
  }

  /**
   * Asks which column tells the time.
   *
   * @return the column that may do so, which is then no reading
   */
  Optional<LogColumn> forTime() {
    Optional<LogColumn> rising =
        counting(NumberRange::isRising).or(() -> counting(NumberRange::isCountingWithRestarts));
    String problem =
        shape.header().isEmpty()
            ? "the table has no header: say which column is time and which is temperature"
            : "no column of this log tells the time";
    if (rising.isEmpty()) {
      remarks.error(
          headerPlace, problem, "add a column with the time of each reading, such as time (s)");
      return rising;
    }
    NumberRange range = new NumberRange(shape, rising.get());
    remarks.error(
        headerPlace,
        problem
            + "; column "
            + rising.get().number()
            + (range.isRising()
                ? " rises from " + range.words()
                : " counts from " + range.span() + " and starts again")
            + meanings(range),
        "give it the role time and its unit in sensors.csv, and the other columns theirs",
        answer(rising.get(), range.likelyTimeUnit().orElse("")));
    return rising;
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

  /** A row of {@code sensors.csv} that makes a column the time. */
  static SheetRow answer(LogColumn column, String unit) {
    Map<String, String> cells = new LinkedHashMap<>();
    boolean named = !column.header().written().isEmpty() && column.name().indexOf('#') < 0;
    cells.put(SensorsSheet.COLUMN.name(), named ? column.name() : column.number());
    cells.put(SensorsSheet.ROLE.name(), Role.TIME.label());
    cells.put(SensorsSheet.UNIT.name(), unit);
    return SheetRow.of(SensorsSheet.SCHEMA.file(), cells);
  }
}
