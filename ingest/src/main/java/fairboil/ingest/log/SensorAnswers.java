package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.Sensor;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What {@code sensors.csv} says of the columns of one log. */
final class SensorAnswers {

  private static final Template NO_COLUMN = Template.of("there is no column {cell} in {name}");
  private static final Template ITS_COLUMNS =
      Template.of("its columns are {list}; a column can also be named by its number, as #2");

  private final Map<Integer, Sensor> byColumn = new HashMap<>();

  private final List<Sensor> rows;

  private SensorAnswers(List<Sensor> rows) {
    this.rows = rows;
  }

  /**
   * Finds the column of every row that is about this log. A row that names the log wins over one
   * for all logs, an earlier row over a later one; a row for all logs need not find its column.
   */
  static SensorAnswers of(List<Sensor> sensors, Run run, String file, List<LogColumn> columns) {
    List<Sensor> rows =
        sensors.stream()
            .filter(sensor -> isAbout(sensor, run, file))
            .sorted(Comparator.comparing(sensor -> sensor.row().value(SensorsSheet.LOG).isEmpty()))
            .toList();
    SensorAnswers answers = new SensorAnswers(rows);
    for (Sensor sensor : rows) {
      find(sensor, columns)
          .ifPresent(column -> answers.byColumn.putIfAbsent(column.index(), sensor));
    }
    return answers;
  }

  /** Whether rows about this log give the numbers of columns rather than names. */
  static boolean goByNumber(List<Sensor> sensors, Run run, String file) {
    return sensors.stream()
        .filter(sensor -> isAbout(sensor, run, file))
        .anyMatch(sensor -> sensor.row().get(SensorsSheet.COLUMN).strip().matches("#\\d+"));
  }

  /** Warns of rows that name this log but none of its columns. */
  void tellUnknown(List<LogColumn> columns, Remarks remarks) {
    rows.stream()
        .filter(sensor -> sensor.row().value(SensorsSheet.LOG).isPresent())
        .filter(sensor -> find(sensor, columns).isEmpty())
        .forEach(sensor -> tellUnknown(sensor, columns, remarks));
  }

  private static void tellUnknown(Sensor sensor, List<LogColumn> columns, Remarks remarks) {
    remarks.warning(
        sensor.row().place(SensorsSheet.COLUMN),
        NO_COLUMN.with(
            Arguments.cell(sensor.row().get(SensorsSheet.COLUMN)),
            Argument.name(remarks.file().file())),
        ITS_COLUMNS.with(Arguments.names(columns.stream().limit(12).toList())));
  }

  private static boolean isAbout(Sensor sensor, Run run, String file) {
    Optional<String> pattern = sensor.row().value(SensorsSheet.LOG);
    return pattern.isEmpty() || names(run, file).anyMatch(name -> matches(pattern.get(), name));
  }

  // The path, the file's name, that without its ending, and the run's name.
  private static Stream<String> names(Run run, String file) {
    String name = file.substring(file.lastIndexOf('/') + 1);
    int dot = name.lastIndexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    return Stream.of(file, name, stem, run.key().name());
  }

  private static boolean matches(String pattern, String name) {
    String regex =
        Arrays.stream(pattern.strip().replace('\\', '/').split("\\*", -1))
            .map(Pattern::quote)
            .collect(Collectors.joining(".*"));
    return Pattern.compile(regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
        .matcher(name)
        .matches();
  }

  /** By number, by name as written, then by name without its unit. */
  private static Optional<LogColumn> find(Sensor sensor, List<LogColumn> columns) {
    String plain = HeaderName.plain(sensor.row().get(SensorsSheet.COLUMN));
    return first(columns, column -> column.number().equals(plain))
        .or(() -> first(columns, column -> HeaderName.plain(column.name()).equals(plain)))
        .or(() -> first(columns, column -> plainHeader(column).equals(plain)))
        .or(() -> first(columns, column -> plainBare(column).equals(plain)));
  }

  private static String plainHeader(LogColumn column) {
    return HeaderName.plain(column.header().written());
  }

  private static String plainBare(LogColumn column) {
    return HeaderName.plain(column.header().bare());
  }

  private static Optional<LogColumn> first(List<LogColumn> columns, Predicate<LogColumn> test) {
    return columns.stream().filter(test).findFirst();
  }

  /** The row about a column, if there is one. */
  Optional<Sensor> of(LogColumn column) {
    return Optional.ofNullable(byColumn.get(column.index()));
  }

  /** The role that a row gives to a column, if there is one. */
  Optional<Role> roleOf(LogColumn column) {
    return of(column)
        .map(Sensor::role)
        .or(() -> Optional.of(Role.COLD_JUNCTION).filter(role -> isColdJunction(column)));
  }

  private boolean isColdJunction(LogColumn column) {
    return rows.stream()
        .flatMap(sensor -> sensor.row().value(SensorsSheet.COLD_JUNCTION).stream())
        .map(HeaderName::plain)
        .anyMatch(name -> isCalled(column, name));
  }

  private static boolean isCalled(LogColumn column, String plain) {
    return column.number().equals(plain)
        || HeaderName.plain(column.name()).equals(plain)
        || plainHeader(column).equals(plain)
        || plainBare(column).equals(plain);
  }

  /** The columns to which rows give the role, in the order of the log. */
  List<LogColumn> with(Role role, List<LogColumn> columns) {
    return columns.stream().filter(column -> roleOf(column).equals(Optional.of(role))).toList();
  }
}
