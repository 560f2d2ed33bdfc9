package fairboil.ingest.log;

import static java.util.stream.Collectors.toSet;

import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Sensor;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Decides which columns of a log hold the flame, the water and the air, and in which unit. */
final class ChannelPlanner {

  private static final Template SEVERAL = Template.of("{count|column} say {word}: {list}");
  private static final Template SEVERAL_UNUSED =
      Template.of("{count|column} say {word}: {list}; none of them was used");
  private static final Template WHICH_ONE = Template.of("in {sheet}, type which one is the {word}");
  private static final Template TWINS_DIFFER =
      Template.of(
          "this column differs from {name} by up to {value}, though both should be the same"
              + " temperature");
  private static final Template CHECK_LOGGER = Template.of("check the logger; {name} was used");
  private static final Template ROW_USED =
      Template.of("the log's header says {name}, this row says {word}: this row was used");
  private static final Template HEADER_USED =
      Template.of(
          "the log's header says {name}, this row says {word} for all logs: the header was used");
  private static final Template NAME_LOG =
      Template.of("if the header is wrong, type the name of the log in the column log");
  private static final Template UNIT_ABOVE =
      Template.of(
          "the lines before the table say {word}; it was used for temperatures without a unit in"
              + " their header");

  /** The most columns whose range is told when a role is asked for. */
  private static final int MOST_ASKED = 8;

  private static final Pattern UNIT_IN_PREAMBLE =
      Pattern.compile(
          "(?i)\\bunits?\\b[\"\\s:=,;\\t]*((?:deg(?:rees)?|[\u00b0\u00ba])?\\s*[CFK]|celsius|fahrenheit)\\b");

  private final TableShape shape;
  private final List<LogColumn> columns;
  private final Set<Integer> times;
  private final SensorAnswers answers;
  private final Remarks remarks;
  private final Optional<Unit> preambleUnit;
  private boolean ambiguous;

  ChannelPlanner(
      TableShape shape,
      List<LogColumn> columns,
      Set<Integer> times,
      SensorAnswers answers,
      Remarks remarks) {
    this.shape = shape;
    this.columns = columns;
    this.times = times;
    this.answers = answers;
    this.remarks = remarks;
    this.preambleUnit = preambleUnit();
  }

  /** Whether several columns say the same role, about which an error asks. */
  boolean isAmbiguous() {
    return ambiguous;
  }

  /**
   * Plans for the columns with a role, and for those that may have one, in the order of the log.
   */
  List<ChannelPlan> plan() {
    List<ChannelPlan> plans = new ArrayList<>();
    Set<Integer> taken = new HashSet<>();
    for (Role role : List.of(Role.FLAME, Role.WATER, Role.AMBIENT, Role.COLD_JUNCTION)) {
      for (LogColumn column : withRole(role)) {
        plans.add(plan(column, Optional.of(role)));
        taken.add(column.index());
      }
    }
    Set<Role> roles = plans.stream().map(plan -> plan.role().orElseThrow()).collect(toSet());
    columns.stream()
        .filter(column -> !taken.contains(column.index()) && mayBeReading(column))
        .filter(column -> roles.stream().noneMatch(role -> mentions(column, role)))
        .limit(MOST_ASKED)
        .forEach(column -> plans.add(plan(column, Optional.empty())));
    plans.sort((a, b) -> Integer.compare(a.column().index(), b.column().index()));
    return plans;
  }

  private static boolean mentions(LogColumn column, Role role) {
    return RoleWords.mention(column.header().words(), role);
  }

  private List<LogColumn> withRole(Role role) {
    List<LogColumn> told = answers.with(role, columns);
    if (!told.isEmpty()) {
      return told;
    }
    List<LogColumn> named =
        columns.stream()
            .filter(this::mayBeReading)
            .filter(column -> RoleWords.of(column.header().words()).equals(Optional.of(role)))
            .toList();
    return named.size() < 2 ? named : onlyOne(named, role);
  }

  private boolean mayBeReading(LogColumn column) {
    boolean looks =
        column.looks() == LogColumn.Looks.NUMBERS
            || (column.looks() == LogColumn.Looks.EMPTY && !column.header().written().isEmpty())
            || (column.looks() == LogColumn.Looks.TEXT && hasRoleWord(column));
    return looks
        && !times.contains(column.index())
        && answers.roleOf(column).isEmpty()
        && !column.header().other()
        && column.header().time().isEmpty();
  }

  // One temperature in two units is one column; anything else is to be asked.
  private List<LogColumn> onlyOne(List<LogColumn> named, Role role) {
    Set<String> bare =
        named.stream().map(column -> HeaderName.plain(column.header().bare())).collect(toSet());
    Set<Optional<Unit>> units =
        named.stream().map(column -> column.header().unit()).collect(toSet());
    if (bare.size() == 1 && units.size() == named.size() && !units.contains(Optional.empty())) {
      noteTwin(named);
      return named.subList(0, 1);
    }
    List<LogColumn> stated =
        named.stream().filter(column -> column.header().unit().isPresent()).toList();
    if (stated.size() == 1) {
      return stated;
    }
    askWhich(named, role);
    return List.of();
  }

  // Without a flame or a water there is no result; without the others there is.
  private void askWhich(List<LogColumn> named, Role role) {
    boolean needed = role == Role.FLAME || role == Role.WATER;
    ambiguous |= needed;
    SensorFix fix =
        Asking.fix(named.get(0), Optional.empty(), role.label(), named.get(0).header().unit());
    Message remedy = WHICH_ONE.with(Arguments.SENSORS, Argument.word(role.label()));
    if (needed) {
      remarks.error(headerPlace(), say(SEVERAL, named, role), remedy, fix.fix());
    } else {
      remarks.warning(headerPlace(), say(SEVERAL_UNUSED, named, role), remedy, fix.fix());
    }
  }

  private static Message say(Template several, List<LogColumn> named, Role role) {
    return several.with(
        Argument.count(named.size()), Argument.word(role.label()), Arguments.names(named));
  }

  private void noteTwin(List<LogColumn> named) {
    LogColumn used = named.get(0);
    LogColumn other = named.get(1);
    double farthest = 0;
    for (Sample.Line row : shape.rows()) {
      double first = celsius(row, used);
      double second = celsius(row, other);
      farthest = Math.max(farthest, Double.isNaN(first - second) ? 0 : Math.abs(first - second));
    }
    if (farthest > 1) {
      remarks.warning(
          headerPlace().column(other.name()),
          TWINS_DIFFER.with(
              Argument.name(used.name()),
              Argument.value(farthest, 0.2, Dimension.TEMPERATURE_DIFFERENCE)),
          CHECK_LOGGER.with(Argument.name(used.name())));
    }
  }

  private static double celsius(Sample.Line row, LogColumn column) {
    NumberScanner numbers = new NumberScanner();
    String cell = row.cell(column.index());
    boolean number = numbers.scan(cell.toCharArray(), 0, cell.length(), column.mark());
    Unit unit = column.header().unit().orElseThrow();
    return number && unit.dimension() == Dimension.TEMPERATURE
        ? unit.toHeld(numbers.value(), Dimension.TEMPERATURE)
        : Double.NaN;
  }

  private Place headerPlace() {
    return remarks.line(shape.header().map(Sample.Line::number).orElse(shape.firstLine()));
  }

  private ChannelPlan plan(LogColumn column, Optional<Role> role) {
    Optional<Sensor> sensor = answers.of(column);
    double scale =
        sensor
            .flatMap(known -> known.row().value(SensorsSheet.SCALE))
            .map(Quantity::value)
            .orElse(1.0);
    OptionalInt unitColumn = unitColumn(column);
    return new ChannelPlan(
        column, role, sensor, unit(column, sensor, unitColumn), scale, unitColumn);
  }

  private Optional<Unit> unit(LogColumn column, Optional<Sensor> sensor, OptionalInt unitColumn) {
    Optional<String> told = sensor.flatMap(known -> known.row().value(SensorsSheet.UNIT));
    Optional<Unit> stated = column.header().unit();
    if (told.isPresent()) {
      return settled(column, sensor.orElseThrow(), UnitWords.ofReading(told.get()), stated);
    }
    return column
        .glued()
        .or(() -> unitIn(unitColumn))
        .or(() -> stated)
        .or(() -> column.header().saysTemperature() || hasRoleWord(column) ? preambleUnit : stated);
  }

  private static boolean hasRoleWord(LogColumn column) {
    return RoleWords.of(column.header().words()).isPresent();
  }

  /**
   * The unit where a sheet says one. Against a header only a row that names its log is followed:
   * one for all logs may have been meant for others. A unit that is none is a fault of the sheet,
   * and here as good as not said.
   */
  private Optional<Unit> settled(
      LogColumn column, Sensor sensor, Optional<Unit> told, Optional<Unit> stated) {
    if (told.isEmpty() || stated.isEmpty() || stated.equals(told)) {
      return told;
    }
    boolean named = sensor.row().value(SensorsSheet.LOG).isPresent();
    remarks.note(
        sensor.row().place(SensorsSheet.UNIT),
        (named ? ROW_USED : HEADER_USED)
            .with(Argument.name(column.name()), Argument.word(told.get().symbol())),
        named ? Message.NONE : NAME_LOG.with());
    return named ? told : stated;
  }

  private OptionalInt unitColumn(LogColumn column) {
    int next = column.index() + 1;
    return next < columns.size() && columns.get(next).looks() == LogColumn.Looks.UNITS
        ? OptionalInt.of(next)
        : OptionalInt.empty();
  }

  private Optional<Unit> unitIn(OptionalInt column) {
    if (column.isEmpty()) {
      return Optional.empty();
    }
    return shape.rows().stream()
        .flatMap(row -> UnitWords.ofTemperature(row.cell(column.getAsInt())).stream())
        .findFirst();
  }

  // Only if the lines before the table name one unit of temperature.
  private Optional<Unit> preambleUnit() {
    Set<Unit> units = new HashSet<>();
    for (String line : shape.preamble()) {
      Matcher matcher = UNIT_IN_PREAMBLE.matcher(line.replace('_', ' '));
      while (matcher.find()) {
        UnitWords.ofTemperature(matcher.group(1)).ifPresent(units::add);
      }
    }
    if (units.size() != 1) {
      return Optional.empty();
    }
    Unit unit = units.iterator().next();
    remarks.note(remarks.file(), UNIT_ABOVE.with(Argument.word(unit.symbol())));
    return Optional.of(unit);
  }
}
