package fairboil.ingest.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** What a sample of moments tells of how a log writes them. */
final class StampFacts {

  private final StampScanner scanner = new StampScanner();
  private final Map<DateOrder, List<LocalDate>> dates = new EnumMap<>(DateOrder.class);
  private int moments;
  private int dated;
  private int timed;
  private int halves;
  private int offsets;
  private int utc;
  private int colons;
  private int milliseconds;
  private double largestMilliseconds;
  private int threeParts;
  private int mostFirst;
  private boolean finerThanSeconds;
  private double firstSeconds = Double.NaN;
  private String firstText = "";

  private StampFacts() {}

  /** The facts of a column, or of one of dates and one of times. */
  static StampFacts of(TableShape shape, List<LogColumn> columns) {
    StampFacts facts = new StampFacts();
    for (Sample.Line row : shape.rows()) {
      StringBuilder text = new StringBuilder();
      for (LogColumn column : columns) {
        text.append(text.length() == 0 ? "" : " ");
        text.append(row.cell(column.index()));
      }
      facts.add(text.toString());
    }
    return facts;
  }

  private void add(String text) {
    if (!scanner.scan(text.toCharArray(), 0, text.length())) {
      return;
    }
    moments++;
    dated += scanner.hasDate() ? 1 : 0;
    timed += scanner.hasTime() ? 1 : 0;
    halves += scanner.half() == StampScanner.Half.UNSAID ? 0 : 1;
    offsets += scanner.hasOffset() ? 1 : 0;
    utc += scanner.hasOffset() && scanner.offsetSeconds() == 0 ? 1 : 0;
    if (scanner.hasMilliseconds()) {
      milliseconds++;
      largestMilliseconds = Math.max(largestMilliseconds, scanner.third());
    }
    colons += scanner.hasColonDecimals() ? 1 : 0;
    threeParts += scanner.timeParts() == 3 ? 1 : 0;
    mostFirst = Math.max(mostFirst, scanner.first());
    finerThanSeconds |= scanner.timeParts() == 2 && scanner.decimals() > 0;
    if (Double.isNaN(firstSeconds)) {
      firstSeconds = scanner.seconds(ClockStyle.MINUTES_FIRST);
      firstText = text;
    }
    if (scanner.hasDate()) {
      addDate();
    }
  }

  private void addDate() {
    for (DateOrder order : DateOrder.allowedBy(scanner)) {
      List<LocalDate> list = dates.computeIfAbsent(order, any -> new ArrayList<>());
      LocalDate date = order.date(scanner).orElseThrow();
      list.add(date);
    }
  }

  boolean hasDates() {
    return dated * 2 > moments;
  }

  boolean hasTimes() {
    return timed * 2 > moments;
  }

  boolean hasHalves() {
    return halves > 0;
  }

  boolean hasOffsets() {
    return offsets * 2 > moments;
  }

  /** Whether the offset is none at all: UTC, of which the local time is not known. */
  boolean isUtc() {
    return offsets > 0 && utc == offsets;
  }

  boolean hasColonDecimals() {
    return colons > 0;
  }

  /** Whether the third part of most times has three digits: {@code m:ss:mmm}. */
  boolean hasMilliseconds() {
    return milliseconds * 2 > moments;
  }

  /** Whether a third part is too large for seconds. */
  boolean provesMilliseconds() {
    return largestMilliseconds > 60;
  }

  /** Whether times have three parts rather than two. */
  boolean hasThreeParts() {
    return threeParts > 0;
  }

  boolean isFinerThanSeconds() {
    return finerThanSeconds;
  }

  int mostFirst() {
    return mostFirst;
  }

  /** The first moment in seconds, two parts taken as {@code m:ss}. */
  double firstSeconds() {
    return firstSeconds;
  }

  String firstText() {
    return firstText;
  }

  /** The orders in which most dates are dates; several where nothing tells. */
  List<DateOrder> orders() {
    int most = dates.values().stream().mapToInt(List::size).max().orElse(0);
    return dates.keySet().stream()
        .filter(order -> Objects.requireNonNull(dates.get(order)).size() == most)
        .toList();
  }

  /** The first date in that order. */
  Optional<LocalDate> firstDate(DateOrder order) {
    return dates.getOrDefault(order, List.of()).stream().findFirst();
  }

  /** The longest step from one date to the next in that order, in days; 0 if all are the same. */
  long longestStep(DateOrder order) {
    List<LocalDate> list = dates.getOrDefault(order, List.of());
    long longest = 0;
    for (int i = 1; i < list.size(); i++) {
      long step = list.get(i).toEpochDay() - list.get(i - 1).toEpochDay();
      longest = Math.max(longest, Math.abs(step));
    }
    return longest;
  }

  /** The only order of these in which no two dates are more than a day apart, if there is one. */
  Optional<DateOrder> onlyUnbroken(List<DateOrder> orders) {
    List<DateOrder> unbroken = orders.stream().filter(order -> longestStep(order) <= 1).toList();
    return unbroken.size() == 1 ? Optional.of(unbroken.get(0)) : Optional.empty();
  }
}
