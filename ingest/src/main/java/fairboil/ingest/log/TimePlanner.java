package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Decides which columns of a log tell time, and how; asks where the log does not say. */
final class TimePlanner {

  private static final Template PUT_TOGETHER =
      Template.of("the time was put together from the columns {list}");

  private final TableShape shape;
  private final List<LogColumn> columns;
  private final SensorAnswers answers;
  private final Remarks remarks;
  private final StampPlanner stamps;
  private final TimeAsking asking;
  private final Set<Integer> telling = new LinkedHashSet<>();
  private boolean sideBySide;

  TimePlanner(
      TableShape shape, List<LogColumn> columns, SensorAnswers answers, Run run, Remarks remarks) {
    this.shape = shape;
    this.columns = columns;
    this.answers = answers;
    this.remarks = remarks;
    this.stamps = new StampPlanner(shape, answers, remarks);
    this.asking = new TimeAsking(shape, columns, answers, run, remarks);
  }

  /** The plan, or empty after an error. */
  Optional<TimePlan> plan() {
    List<LogColumn> told = answers.with(Role.TIME, columns);
    List<LogColumn> candidates = candidates();
    candidates.forEach(column -> telling.add(column.index()));
    told.forEach(column -> telling.add(column.index()));
    if (!told.isEmpty()) {
      return reader(told, candidates).map(reader -> plan(reader, candidates));
    }
    if (areSideBySide(candidates)) {
      sideBySide = true;
      asking.whichRun(candidates);
      return Optional.empty();
    }
    List<LogColumn> chosen = choose(candidates);
    if (chosen.isEmpty()) {
      asking.forTime().ifPresent(column -> telling.add(column.index()));
      return Optional.empty();
    }
    Optional<TimeReader> reader = reader(chosen, candidates);
    reader.ifPresent(found -> noteOthers(chosen, candidates));
    return reader.map(found -> plan(clocked(found, chosen, candidates), candidates));
  }

  /** The columns, from 0, that tell time or may do so. */
  Set<Integer> columns() {
    return Set.copyOf(telling);
  }

  /** Whether several runs stand side by side, about which an error asks. */
  boolean isSideBySide() {
    return sideBySide;
  }

  private TimePlan plan(TimeReader reader, List<LogColumn> candidates) {
    boolean several = areSideBySide(candidates);
    return new TimePlan(reader, columns(), several ? RowFate.OUTSIDE_RUN : RowFate.NO_TIME);
  }

  // Elapsed times, and beside them moments that tell when the log was started.
  private TimeReader clocked(
      TimeReader reader, List<LogColumn> chosen, List<LogColumn> candidates) {
    List<LogColumn> moments =
        moments(candidates.stream().filter(column -> !chosen.contains(column)).toList());
    boolean elapsed = reader instanceof NumberTimes && chosen.size() == 1;
    return elapsed && !moments.isEmpty()
        ? stamps
            .plan(moments)
            .<TimeReader>map(clock -> new ClockedTimes(reader, clock))
            .orElse(reader)
        : reader;
  }

  private List<LogColumn> candidates() {
    return columns.stream()
        .filter(column -> answers.roleOf(column).map(role -> role == Role.TIME).orElse(true))
        .filter(this::mayTellTime)
        .toList();
  }

  private boolean mayTellTime(LogColumn column) {
    if (column.looks() == LogColumn.Looks.STAMPS) {
      return true;
    }
    HeaderName header = column.header();
    return column.looks() == LogColumn.Looks.NUMBERS
        && header.unit().isEmpty()
        && !header.other()
        && (header.time().isPresent() || saysTime(header));
  }

  // A small t is a time; a capital T, or a t beside water or flame, may be a temperature.
  private static boolean saysTime(HeaderName header) {
    boolean temperature =
        header.bare().strip().matches("T(?:[\\s_-].*)?")
            || RoleWords.of(header.words()).isPresent();
    return header.words().stream()
        .anyMatch(word -> TimeWords.contains(word) && !(temperature && word.equals("t")));
  }

  // The same name, or the same kind of stamp, under different names of runs.
  private static boolean areSideBySide(List<LogColumn> candidates) {
    Set<String> seen = new LinkedHashSet<>();
    return candidates.stream()
        .map(column -> HeaderName.plain(column.header().written()))
        .anyMatch(name -> !name.isEmpty() && !seen.add(name));
  }

  private Place headerPlace() {
    return remarks.line(shape.header().map(Sample.Line::number).orElse(shape.firstLine()));
  }

  // Elapsed numbers with a unit, then moments, then numbers whose unit is to be asked.
  private List<LogColumn> choose(List<LogColumn> candidates) {
    List<LogColumn> parts = parts(candidates);
    if (!parts.isEmpty()) {
      return parts;
    }
    Optional<LogColumn> elapsed =
        candidates.stream()
            .filter(column -> column.looks() == LogColumn.Looks.NUMBERS)
            .filter(column -> secondsOf(column).isPresent())
            .findFirst();
    if (elapsed.isPresent()) {
      return List.of(elapsed.get());
    }
    List<LogColumn> moments = moments(candidates);
    return moments.isEmpty() ? candidates.stream().limit(1).toList() : moments;
  }

  private List<LogColumn> moments(List<LogColumn> candidates) {
    List<LogColumn> moments =
        candidates.stream().filter(column -> column.looks() == LogColumn.Looks.STAMPS).toList();
    Optional<LogColumn> date = Optional.empty();
    for (LogColumn column : moments) {
      StampFacts facts = StampFacts.of(shape, List.of(column));
      if (facts.hasTimes()) {
        boolean dated = facts.hasDates() || date.isEmpty();
        return dated ? List.of(column) : List.of(date.get(), column);
      }
      date = date.or(() -> Optional.of(column));
    }
    return List.of();
  }

  // Columns called year, month, day, hour, minute, second, or the last three of them.
  private List<LogColumn> parts(List<LogColumn> candidates) {
    List<LogColumn> initials = initials();
    List<LogColumn> named =
        initials.isEmpty()
            ? candidates.stream()
                .filter(column -> TimeWord.of(column.header().written()).isPresent())
                .filter(column -> column.looks() == LogColumn.Looks.NUMBERS)
                .toList()
            : initials;
    List<TimeWord> words = named.stream().map(column -> word(column).orElseThrow()).toList();
    boolean distinct = Set.copyOf(words).size() == words.size();
    boolean clock = words.contains(TimeWord.MINUTES) && words.contains(TimeWord.SECONDS);
    boolean hours = words.contains(TimeWord.HOURS);
    if (!distinct || !clock || (!hours && named.size() != 2)) {
      return List.of();
    }
    remarks.note(headerPlace(), PUT_TOGETHER.with(Arguments.names(named)));
    return named;
  }

  // Columns called h, m and s side by side: an m alone is a metre.
  private List<LogColumn> initials() {
    for (int i = 0; i + 2 < columns.size(); i++) {
      List<LogColumn> three = columns.subList(i, i + 3);
      boolean called =
          isCalled(three.get(0), "h+")
              && isCalled(three.get(1), "m+")
              && isCalled(three.get(2), "s+");
      if (called && three.stream().allMatch(column -> column.looks() == LogColumn.Looks.NUMBERS)) {
        return three;
      }
    }
    return List.of();
  }

  private static boolean isCalled(LogColumn column, String pattern) {
    return column.header().written().strip().toLowerCase(Locale.ROOT).matches(pattern);
  }

  private Optional<TimeReader> reader(List<LogColumn> chosen, List<LogColumn> candidates) {
    boolean moments = chosen.stream().anyMatch(column -> column.looks() == LogColumn.Looks.STAMPS);
    if (moments) {
      return momentsReader(chosen, candidates);
    }
    if (chosen.stream().anyMatch(column -> word(column).equals(Optional.of(TimeWord.YEAR)))) {
      return partsReader(chosen);
    }
    List<NumberTimes.Part> parts = new ArrayList<>();
    for (LogColumn column : chosen) {
      OptionalDouble seconds = secondsOf(column);
      if (seconds.isEmpty()) {
        asking.forUnit(column);
        return Optional.empty();
      }
      parts.add(new NumberTimes.Part(column.index(), column.mark(), seconds.getAsDouble()));
    }
    return Optional.of(new NumberTimes(parts));
  }

  private Optional<TimeReader> momentsReader(List<LogColumn> chosen, List<LogColumn> candidates) {
    List<LogColumn> moments =
        chosen.stream().filter(column -> column.looks() == LogColumn.Looks.STAMPS).toList();
    boolean dateAlone = !StampFacts.of(shape, moments.subList(0, 1)).hasTimes();
    List<LogColumn> used =
        moments.size() == 1 && dateAlone ? moments(candidates) : ordered(moments);
    Optional<TimeReader> reader = used.isEmpty() ? Optional.empty() : stamps.plan(used);
    if (used.isEmpty()) {
      asking.forTime().ifPresent(column -> telling.add(column.index()));
    }
    return reader;
  }

  // The date first, at most one of each.
  private List<LogColumn> ordered(List<LogColumn> moments) {
    if (moments.size() < 2) {
      return moments;
    }
    LogColumn first = moments.get(0);
    LogColumn second = moments.get(1);
    boolean swapped = StampFacts.of(shape, List.of(first)).hasTimes();
    return swapped ? List.of(second, first) : List.of(first, second);
  }

  private Optional<TimeReader> partsReader(List<LogColumn> chosen) {
    Map<TimeWord, LogColumn> by = new LinkedHashMap<>();
    chosen.forEach(column -> word(column).ifPresent(word -> by.putIfAbsent(word, column)));
    if (!by.keySet().containsAll(List.of(TimeWord.YEAR, TimeWord.MONTH, TimeWord.DAYS))) {
      asking.forTime().ifPresent(column -> telling.add(column.index()));
      return Optional.empty();
    }
    List<NumberTimes.Part> clock =
        by.entrySet().stream()
            .filter(entry -> entry.getKey() != TimeWord.DAYS)
            .filter(entry -> entry.getKey().unit().isPresent())
            .map(entry -> part(entry.getValue(), entry.getKey()))
            .toList();
    return Optional.of(
        new PartTimes(
            part(Objects.requireNonNull(by.get(TimeWord.YEAR)), TimeWord.YEAR),
            part(Objects.requireNonNull(by.get(TimeWord.MONTH)), TimeWord.MONTH),
            part(Objects.requireNonNull(by.get(TimeWord.DAYS)), TimeWord.DAYS),
            clock));
  }

  private static NumberTimes.Part part(LogColumn column, TimeWord word) {
    double seconds = word.unit().map(TimePlanner::seconds).orElse(1.0);
    return new NumberTimes.Part(column.index(), column.mark(), seconds);
  }

  private static double seconds(Unit unit) {
    return unit.toHeld(1, unit.dimension());
  }

  private Optional<TimeWord> word(LogColumn column) {
    return answers
        .of(column)
        .flatMap(sensor -> sensor.row().value(SensorsSheet.UNIT))
        .flatMap(TimeWord::of)
        .or(() -> initialOf(column))
        .or(() -> column.header().time());
  }

  private Optional<TimeWord> initialOf(LogColumn column) {
    return initials().contains(column)
        ? Optional.of(
            switch (Character.toLowerCase(column.header().written().strip().charAt(0))) {
              case 'h' -> TimeWord.HOURS;
              case 'm' -> TimeWord.MINUTES;
              default -> TimeWord.SECONDS;
            })
        : Optional.empty();
  }

  // Seconds of one unit of a column's numbers: as told, as in its header, or as epochs are known
  // by.
  private OptionalDouble secondsOf(LogColumn column) {
    double scale =
        answers
            .of(column)
            .flatMap(sensor -> sensor.row().value(SensorsSheet.SCALE))
            .map(Quantity::value)
            .orElse(1.0);
    Optional<Unit> unit = word(column).flatMap(TimeWord::unit);
    OptionalDouble epoch = new NumberRange(shape, column).epochUnit();
    if (epoch.isPresent() && unit.map(u -> u == Unit.SECOND).orElse(true)) {
      return epoch;
    }
    return unit.isPresent()
        ? OptionalDouble.of(seconds(unit.get()) * scale)
        : OptionalDouble.empty();
  }

  private void noteOthers(List<LogColumn> chosen, List<LogColumn> candidates) {
    TimeCheck.compare(shape, chosen, candidates, this::secondsOf, remarks);
  }
}
