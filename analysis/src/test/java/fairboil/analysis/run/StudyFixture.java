package fairboil.analysis.run;

import fairboil.ingest.Study;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Feed;
import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Ledger;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.log.Channel;
import fairboil.ingest.log.Log;
import fairboil.ingest.log.OpenedLog;
import fairboil.ingest.log.RowFate;
import fairboil.ingest.log.TimeAxis;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Mark;
import fairboil.ingest.sheet.Pot;
import fairboil.ingest.sheet.PotsSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Sensor;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import tech.tablesaw.api.DoubleColumn;

/** A study of one run, put together in a test. */
final class StudyFixture {

  private static final String STUDY = "fixture";
  private static final String LOG_FILE = "logs/A-1.csv";

  private final Row.Builder settings = Row.at(Place.of("study.csv"));
  private final Row.Builder cells = Row.at(Place.of("runs.csv", 2));
  private final List<Pot> pots = new ArrayList<>();
  private final List<Run> others = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private final List<Channel> channels = new ArrayList<>();
  private double[] seconds = new double[0];
  private OptionalDouble startOfDay = OptionalDouble.empty();
  private OptionalDouble lag = OptionalDouble.empty();
  private final List<Consumer<Row.Builder>> sensorCells = new ArrayList<>();

  <T> StudyFixture set(Column<T> setting, T value) {
    settings.put(setting, value);
    return this;
  }

  <T> StudyFixture cell(Column<T> column, T value) {
    cells.put(column, value);
    return this;
  }

  StudyFixture cell(Column<Quantity> column, double number, Unit unit) {
    return cell(column, Quantity.of(number, unit));
  }

  StudyFixture pot(String name, double grams, String material) {
    Row row =
        Row.at(Place.of("pots.csv", 2))
            .put(PotsSheet.POT, name)
            .put(PotsSheet.MASS, Quantity.of(grams, Unit.GRAM))
            .put(PotsSheet.MATERIAL, material)
            .build();
    pots.add(new Pot(new Key(STUDY, name), row));
    return this;
  }

  StudyFixture mark(Event event, double elapsed) {
    return mark(event, new ClockTime.Elapsed(elapsed, 1));
  }

  StudyFixture mark(Event event, ClockTime time) {
    Place place = Place.of("stopwatch.csv", marks.size() + 2, "time");
    marks.add(
        new Mark(
            key(),
            Optional.of(event),
            event.label(),
            Given.of(time, time.toString(), place),
            Optional.empty()));
    return this;
  }

  StudyFixture times(double... values) {
    seconds = values;
    return this;
  }

  StudyFixture startingAt(double secondOfDay) {
    startOfDay = OptionalDouble.of(secondOfDay);
    return this;
  }

  /** A cell of sensors.csv for channels added later. */
  <T> StudyFixture sensor(Column<T> column, T value) {
    sensorCells.add(row -> row.put(column, value));
    return this;
  }

  /** The time constant of the probes of channels added later, s. */
  StudyFixture lag(double timeConstant) {
    lag = OptionalDouble.of(timeConstant);
    return this;
  }

  StudyFixture channel(Role role, double... celsius) {
    return channel(role, Unit.CELSIUS, celsius);
  }

  StudyFixture channel(Role role, Unit unit, double... values) {
    Row.Builder row =
        Row.at(Place.of("sensors.csv", 2))
            .put(SensorsSheet.COLUMN, role.label())
            .put(SensorsSheet.ROLE, role);
    lag.ifPresent(s -> row.put(SensorsSheet.TIME_CONSTANT, Quantity.of(s, Unit.SECOND)));
    sensorCells.forEach(cell -> cell.accept(row));
    int empty = 0;
    for (double value : values) {
      empty += Double.isNaN(value) ? 1 : 0;
    }
    channels.add(
        new Channel(
            role.label(),
            role,
            Optional.of(new Sensor(STUDY, row.build())),
            unit,
            DoubleColumn.create(role.label(), values),
            0.1,
            0,
            empty,
            Place.of(LOG_FILE).column(role.label())));
    return this;
  }

  /** A channel of which so many missing readings are faults. */
  StudyFixture faulty(int faults, Role role, double... celsius) {
    Channel last = channel(role, celsius).channels.remove(channels.size() - 1);
    channels.add(
        new Channel(
            last.name(),
            role,
            last.sensor(),
            last.unit(),
            last.values(),
            last.resolution(),
            faults,
            last.empty() - faults,
            last.place()));
    return this;
  }

  private static Key key() {
    return new Key(STUDY, "A-1");
  }

  Study study() {
    return new Study(
        STUDY,
        settings.build(),
        List.of(),
        List.of(),
        List.of(),
        pots,
        runs(),
        marks,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private List<Run> runs() {
    List<Run> runs = new ArrayList<>(List.of(run()));
    runs.addAll(others);
    return runs;
  }

  private Run run() {
    return new Run(key(), new Key(STUDY, "A"), cells.build());
  }

  private OpenedLog log() {
    if (channels.isEmpty()) {
      return new OpenedLog(Optional.empty(), Optional.empty(), List.of());
    }
    SourceFile source = new SourceFile(LOG_FILE, 1, "0".repeat(64));
    double interval = seconds.length > 1 ? seconds[1] - seconds[0] : 0;
    TimeAxis time =
        new TimeAxis(
            DoubleColumn.create("seconds", seconds),
            startOfDay.isPresent() ? TimeAxis.Kind.TIME_OF_DAY : TimeAxis.Kind.ELAPSED,
            startOfDay,
            Optional.empty(),
            interval,
            1);
    Map<RowFate, Long> aside = Map.of();
    Log log = new Log(source, time, channels, new Ledger<>(seconds.length, seconds.length, aside));
    return new OpenedLog(Optional.of(log), Optional.of(source), List.of());
  }

  /** Works out the run in a study that has others too, fed like this. */
  RunResult analyseAmong(Feed... feeds) {
    for (Feed feed : feeds) {
      Row row = Row.at(Place.of("runs.csv", 3 + others.size())).put(RunsSheet.FEED, feed).build();
      others.add(new Run(new Key(STUDY, "A-" + (2 + others.size())), new Key(STUDY, "A"), row));
    }
    return analyse();
  }

  RunResult analyse() {
    Study study = study();
    return new RunAnalysis(study, References.of(study)).analyse(run(), unused -> log());
  }
}
