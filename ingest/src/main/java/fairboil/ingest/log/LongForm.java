package fairboil.ingest.log;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/**
 * A table with one line for each probe and time: a label says which probe a value is of. The labels
 * take the part of headers, in the log and in {@code sensors.csv} alike.
 */
final class LongForm {

  private static final Set<String> LABELS =
      Set.of(
          "channel",
          "ch",
          "chan",
          "sensor",
          "probe",
          "label",
          "name",
          "point",
          "device",
          "input",
          "variable",
          "series",
          "id",
          "tag");

  private static final int MOST_LABELS = 16;

  /** Places of the columns that stand for labels begin here. */
  private static final int FIRST_PLACE = 10_000;

  private final LogColumn label;
  private final LogColumn value;
  private final List<LogColumn> columns;

  private LongForm(LogColumn label, LogColumn value, List<LogColumn> columns) {
    this.label = label;
    this.value = value;
    this.columns = columns;
  }

  /** The long form of a table, if it has that form. */
  static Optional<LongForm> find(TableShape shape, List<LogColumn> columns, Set<Integer> times) {
    List<LogColumn> others =
        columns.stream()
            .filter(column -> !times.contains(column.index()))
            .filter(column -> column.looks() != LogColumn.Looks.EMPTY)
            .toList();
    Optional<LogColumn> label =
        others.stream().filter(column -> isLabel(shape, column, others.size())).findFirst();
    List<LogColumn> values =
        others.stream()
            .filter(column -> column.looks() == LogColumn.Looks.NUMBERS)
            .filter(column -> label.isPresent() && !column.equals(label.get()))
            .toList();
    return values.size() == 1
        ? Optional.of(new LongForm(label.get(), values.get(0), labels(shape, label, values.get(0))))
        : Optional.empty();
  }

  // Called so, or nothing but text beside the value in a table without a header.
  private static boolean isLabel(TableShape shape, LogColumn column, int others) {
    boolean called = column.header().words().stream().anyMatch(LABELS::contains);
    boolean text = column.looks() == LogColumn.Looks.TEXT;
    if (!called && !(text && others == 2 && shape.header().isEmpty())) {
      return false;
    }
    Map<String, Integer> counts = new HashMap<>();
    shape.rows().forEach(row -> counts.merge(plain(row.cell(column.index())), 1, Integer::sum));
    boolean repeat = counts.values().stream().filter(count -> count > 1).count() > 1;
    return repeat && counts.size() <= MOST_LABELS;
  }

  private static String plain(String label) {
    return label.endsWith(":") ? label.substring(0, label.length() - 1).strip() : label;
  }

  private static List<LogColumn> labels(
      TableShape shape, Optional<LogColumn> label, LogColumn value) {
    Set<String> names = new LinkedHashSet<>();
    shape.rows().forEach(row -> names.add(plain(row.cell(label.orElseThrow().index()))));
    int[] place = {FIRST_PLACE};
    return names.stream()
        .filter(name -> !name.isEmpty())
        .sorted()
        .map(
            name ->
                new LogColumn(
                    place[0]++,
                    name,
                    header(name, value),
                    LogColumn.Looks.NUMBERS,
                    value.mark(),
                    value.glued()))
        .toList();
  }

  private static HeaderName header(String name, LogColumn value) {
    HeaderName own = HeaderName.of(name, "");
    return own.unit().isPresent()
        ? own
        : new HeaderName(
            name, name, own.words(), value.header().unit(), Optional.empty(), own.other());
  }

  /** A column for each label. */
  List<LogColumn> columns() {
    return columns;
  }

  /** Puts the lines of one time together. */
  Joiner joiner(List<ChannelReader> channels) {
    return new Joiner(channels);
  }

  /** Puts the lines of one time together into readings. For one thread and one log. */
  final class Joiner {

    private final Map<String, ChannelReader> byLabel = new TreeMap<>();
    private final Set<String> seen = new HashSet<>();
    private OptionalDouble time = OptionalDouble.empty();

    private Joiner(List<ChannelReader> channels) {
      channels.forEach(channel -> byLabel.put(channel.plan().column().name(), channel));
    }

    /** Whether a line starts another reading: at another time, or with a label seen at this one. */
    boolean startsReading(LineCells cells, double seconds) {
      String name = plain(cells.string(label.index()));
      return time.isEmpty() || time.getAsDouble() != seconds || seen.contains(name);
    }

    /** Ends the reading before, if there is one: what was not seen is empty. */
    void end() {
      if (time.isPresent()) {
        byLabel.forEach(
            (name, channel) -> {
              if (!seen.contains(name)) {
                channel.skip();
              }
            });
      }
      seen.clear();
      time = OptionalDouble.empty();
    }

    /** Takes the value of a line. */
    void take(LineCells cells, double seconds, int line) {
      String name = plain(cells.string(label.index()));
      ChannelReader channel = byLabel.get(name);
      if (channel != null) {
        channel.read(cells, value.index(), line);
      }
      seen.add(name);
      time = OptionalDouble.of(seconds);
    }
  }
}
