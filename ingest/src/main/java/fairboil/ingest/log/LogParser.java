package fairboil.ingest.log;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.grid.SourceText;
import fairboil.ingest.grid.TextLines;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.Sensor;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Turns the text of one log into times and channels: first the shape of the table, then its times,
 * then its channels, then the rows, then the run among them. Each step ends in an error where it
 * cannot go on. For one thread and one log.
 */
final class LogParser {

  private static final Pattern DATE =
      Pattern.compile(
          "(?<!\\d)(?:\\d{4}[-/.]\\d{1,2}[-/.]\\d{1,2}|\\d{1,2}[-/.]\\d{1,2}[-/.]\\d{2,4})(?!\\d)");

  private final SourceText text;
  private final Run run;
  private final List<Sensor> sensors;
  private final Remarks remarks;

  LogParser(SourceText text, Run run, List<Sensor> sensors, Remarks remarks) {
    this.text = text;
    this.run = run;
    this.sensors = sensors;
    this.remarks = remarks;
  }

  /** The log, or empty after an error. */
  Optional<ParsedLog> parse() throws IOException {
    Replay replay = new Replay(text);
    Optional<TableShape> shape =
        ShapeChoice.find(remarks.file(), Head.of(replay)).map(this::byNumber);
    if (shape.isEmpty()) {
      NoTable.tell(replay, remarks);
      return Optional.empty();
    }
    return ShapeCheck.accepts(shape.get(), remarks) ? parse(shape.get(), replay) : Optional.empty();
  }

  // Names that do not fit the rows are not needed where sensors.csv goes by numbers.
  private TableShape byNumber(TableShape shape) {
    if (HeaderFit.of(shape) != HeaderFit.DISAGREES
        || !SensorAnswers.goByNumber(sensors, run, remarks.file().file())) {
      return shape;
    }
    remarks.note(
        remarks.line(shape.header().orElseThrow().number()),
        ParserSays.BY_NUMBER.with(Arguments.SENSORS));
    return shape.unnamed();
  }

  private Optional<ParsedLog> parse(TableShape shape, Replay replay) throws IOException {
    tellShape(shape);
    List<LogColumn> columns = LogColumn.of(shape);
    SensorAnswers answers = answers(columns);
    TimePlanner planner = new TimePlanner(shape, columns, answers, run, remarks);
    Optional<TimePlan> times = planner.plan();
    if (planner.isSideBySide()) {
      return Optional.empty();
    }
    Optional<LongForm> longForm = LongForm.find(shape, columns, planner.columns());
    List<LogColumn> readings = longForm.map(LongForm::columns).orElse(columns);
    List<LogColumn> all = new ArrayList<>(columns);
    longForm.ifPresent(form -> all.addAll(form.columns()));
    answers.tellUnknown(all, remarks);
    ChannelPlanner channelPlanner =
        new ChannelPlanner(
            shape,
            readings,
            longForm.isPresent() ? Set.of() : planner.columns(),
            longForm.isPresent() ? answers(readings) : answers,
            remarks);
    List<ChannelReader> channels = channelPlanner.plan().stream().map(ChannelReader::new).toList();
    Optional<LongForm.Joiner> joiner = longForm.map(form -> form.joiner(channels));
    Asking asking = new Asking(channels, shape, channelPlanner.isAmbiguous(), remarks);
    if (times.isEmpty()) {
      readSample(shape, channels, joiner);
      asking.ask();
      return Optional.empty();
    }
    tellDate(shape, times.get().reader());
    TextLines lines = new TextLines(remarks.file(), replay);
    TableReader table =
        new TableReader(
            lines,
            shape,
            times.get(),
            channels,
            joiner,
            RowCounter.find(shape, columns, planner.columns()),
            remarks);
    table.readAll();
    asking.ask();
    return build(table, times.get(), channels);
  }

  private SensorAnswers answers(List<LogColumn> columns) {
    return SensorAnswers.of(sensors, run, remarks.file().file(), columns);
  }

  private void tellShape(TableShape shape) {
    switch (shape.place()) {
      case COMMENT -> tellHeader(shape, ParserSays.NAMES_IN_COMMENT.with());
      case PARTED_OTHERWISE ->
          tellHeader(
              shape,
              ParserSays.NAMES_PARTED_OTHERWISE.with(Argument.word(shape.separator().label())));
      case TABLE -> {}
    }
    int named = shape.names();
    boolean some =
        shape.rows().stream().anyMatch(row -> row.filled() > named && row.kinds().size() > named);
    if (named > 0 && named < shape.width() && some) {
      remarks.note(
          remarks.line(shape.header().orElseThrow().number()),
          ParserSays.UNNAMED.with(
              Argument.word(LogColumn.number(named - 1)), Argument.count(shape.width())),
          ParserSays.NAME_BY_NUMBER.with(
              Arguments.SENSORS, Argument.word(LogColumn.number(named))));
    }
  }

  private void tellHeader(TableShape shape, Message said) {
    remarks.note(remarks.line(shape.header().orElseThrow().number()), said);
  }

  private void tellDate(TableShape shape, TimeReader clock) {
    boolean said = shape.preamble().stream().anyMatch(line -> DATE.matcher(line).find());
    if (said && clock.kind() == TimeAxis.Kind.ELAPSED) {
      remarks.note(remarks.file(), ParserSays.DATE_UNUSED.with());
    }
  }

  // Without times there is no log, but what is to be said of its channels is said in one go.
  private static void readSample(
      TableShape shape, List<ChannelReader> channels, Optional<LongForm.Joiner> joiner) {
    LineCells cells = new LineCells();
    for (Sample.Line row : shape.rows()) {
      cells.set(row.cells());
      joiner.ifPresent(joined -> joined.take(cells, 0, row.number()));
      if (joiner.isEmpty()) {
        channels.forEach(channel -> channel.read(cells, row.number()));
      }
    }
  }

  private Optional<ParsedLog> build(
      TableReader table, TimePlan times, List<ChannelReader> channels) {
    if (!table.judge()) {
      return Optional.empty();
    }
    List<ChannelReader> good =
        channels.stream()
            .filter(channel -> channel.plan().isKept())
            .filter(channel -> channel.judge(remarks))
            .toList();
    if (table.times().size() == 0) {
      remarks.error(
          remarks.file(), ParserSays.NOTHING_READ.with(), ParserSays.LOOK_AT_FIRST.with());
    }
    if (good.isEmpty() || table.times().size() == 0) {
      return Optional.empty();
    }
    Timeline timeline =
        Timeline.of(
            table,
            times.reader().kind(),
            good.stream().map(ChannelReader::values).toList(),
            remarks);
    return timeline.hasFailed() ? Optional.empty() : cut(table, times.reader(), good, timeline);
  }

  private Optional<ParsedLog> cut(
      TableReader table, TimeReader clock, List<ChannelReader> channels, Timeline timeline) {
    double[] seconds = timeline.seconds();
    RunCut cut = new RunCut(run, clock, seconds[seconds.length - 1], remarks);
    SeveralRuns several = new SeveralRuns(timeline, table.lines(), cut, remarks);
    if (!cut.isGiven() && several.ask()) {
      return Optional.empty();
    }
    Readings readings = Readings.between(cut.from(), cut.to(), seconds, timeline.repeated());
    if (readings.size() == 0) {
      cut.tellNothingLeft();
      return Optional.empty();
    }
    ParsedLog log = make(table, clock, channels, seconds, readings);
    if (!cut.isGiven()) {
      several.warnOfNewWater(log.channels(), log.time());
    }
    return Optional.of(log);
  }

  private ParsedLog make(
      TableReader table,
      TimeReader clock,
      List<ChannelReader> channels,
      double[] seconds,
      Readings readings) {
    TimeAxis time = new AxisMaker(clock, table.lines(), remarks).make(readings, seconds);
    List<Channel> made =
        channels.stream()
            .map(
                channel ->
                    new ChannelMaker(channel, remarks.file().column(channel.plan().column().name()))
                        .make(readings))
            .toList();
    Tally tally = table.tally();
    tally.setAside(
        RowFate.REPEATED, firstRepeated(table, readings), readings.repeated().cardinality());
    tally.setAside(RowFate.OUTSIDE_RUN, 1, readings.outside(seconds.length));
    return new ParsedLog(time, made, tally.ledger(readings.size()));
  }

  private static int firstRepeated(TableReader table, Readings readings) {
    int first = readings.repeated().nextSetBit(0);
    return first < 0 ? 0 : table.lines().of(first);
  }
}
