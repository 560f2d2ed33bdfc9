package fairboil.ingest.log;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** The numbers of one column in the sample of a log. */
final class NumberRange {

  private static final Template NOTHING = Template.of("nothing");
  private static final Template NUMBERS = Template.of("{number} to {number}");
  private static final Template A_STEP = Template.of("; a step of {number} would be {list}");
  private static final Template IF_IT_COUNTS = Template.of("{value} if it counts {word}");

  private static final double SHORTEST = 120;
  private static final double LONGEST = 86_400;
  private static final double SLOWEST = 600;
  private static final double SLOWEST_LIKELY = 120;
  private static final double FASTEST = 0.01;
  private static final double WANDERING = 5;
  private static final int SOON = 60;
  private static final double RARELY = 0.2;
  private static final double EPOCH_FROM = 1e9;
  private static final double EPOCH_TO = 4.2e9;

  private static final Map<String, Double> TIME_UNITS =
      Map.of("s", 1.0, "min", 60.0, "ms", 1e-3, "h", 3600.0);

  private final List<Double> values = new ArrayList<>();
  private int decimals;

  NumberRange(TableShape shape, LogColumn column) {
    NumberScanner numbers = new NumberScanner();
    for (Sample.Line row : shape.rows()) {
      String cell = row.cell(column.index());
      if (numbers.scan(cell.toCharArray(), 0, cell.length(), column.mark())) {
        values.add(numbers.value());
        decimals = Math.max(decimals, numbers.decimals());
      }
    }
  }

  boolean isEmpty() {
    return values.isEmpty();
  }

  double first() {
    return values.get(0);
  }

  double last() {
    return values.get(values.size() - 1);
  }

  /** {@code 0 to 1200}: from the first to the last. */
  Message fromTo() {
    return values.isEmpty() ? NOTHING.with() : NUMBERS.with(number(first()), number(last()));
  }

  private Argument number(double value) {
    return Arguments.number(value, decimals);
  }

  /** Whether every number is at least the one before, and the last is above the first. */
  boolean isRising() {
    for (int i = 1; i < values.size(); i++) {
      if (values.get(i) < values.get(i - 1)) {
        return false;
      }
    }
    return values.size() > 1 && last() > first();
  }

  /**
   * Whether the numbers count on with like steps, but for restarts near where they began, as of a
   * logger that counts from its switching on.
   */
  boolean isCountingWithRestarts() {
    double step = usualStep();
    if (values.size() < 3 || step <= 0) {
      return false;
    }
    int restarts = 0;
    int odd = 0;
    for (int i = 1; i < values.size(); i++) {
      double by = values.get(i) - values.get(i - 1);
      boolean restarted = by < 0 && Math.abs(values.get(i)) <= SOON * step;
      restarts += restarted ? 1 : 0;
      odd += !restarted && (by < 0 || by > WANDERING * step) ? 1 : 0;
    }
    return restarts > 0 && restarts <= RARELY * values.size() && odd <= 2;
  }

  /** Its lowest and highest number: {@code 1000 to 91000}. */
  Message span() {
    return values.isEmpty()
        ? NOTHING.with()
        : NUMBERS.with(number(Collections.min(values)), number(Collections.max(values)));
  }

  /**
   * What its usual step would mean in each unit of time in which a logger may count, such as {@code
   * ; a step of 500 would be 0.5 s if it counts ms, 8:20 min if it counts s}; empty where there is
   * no step.
   */
  Message meanings() {
    double step = usualStep();
    List<Argument> meanings = new ArrayList<>();
    for (TimeWord word : List.of(TimeWord.MILLISECONDS, TimeWord.SECONDS, TimeWord.MINUTES)) {
      Unit unit = word.unit().orElseThrow();
      double seconds = unit.toHeld(step, unit.dimension());
      if (seconds >= FASTEST && seconds <= SLOWEST) {
        meanings.add(
            Argument.clause(
                IF_IT_COUNTS.with(Arguments.seconds(seconds), Argument.word(unit.symbol()))));
      }
    }
    return meanings.isEmpty() ? Message.NONE : A_STEP.with(number(step), Argument.list(meanings));
  }

  /** Seconds of one unit, if all are epochs of our age: of 10 digits in s, 13 in ms, 16 in µs. */
  OptionalDouble epochUnit() {
    for (double unit : new double[] {1, 1e-3, 1e-6}) {
      double low = EPOCH_FROM / unit;
      double high = EPOCH_TO / unit;
      if (!values.isEmpty() && values.stream().allMatch(v -> v >= low && v < high)) {
        return decimals == 0 || unit == 1 ? OptionalDouble.of(unit) : OptionalDouble.empty();
      }
    }
    return OptionalDouble.empty();
  }

  /**
   * The unit of an epoch, or the only unit of time in which the log would last from two minutes to
   * a day, with a reading every two minutes or more often, if one is.
   */
  Optional<String> likelyTimeUnit() {
    OptionalDouble epoch = epochUnit();
    if (epoch.isPresent()) {
      return Optional.of(
          epoch.getAsDouble() == 1 ? "s" : epoch.getAsDouble() == 1e-3 ? "ms" : "µs");
    }
    List<String> likely =
        TIME_UNITS.entrySet().stream()
            .filter(entry -> !values.isEmpty() && isLikely(entry.getValue()))
            .map(Map.Entry::getKey)
            .sorted()
            .toList();
    return likely.size() == 1 ? Optional.of(likely.get(0)) : Optional.empty();
  }

  private boolean isLikely(double secondsOfUnit) {
    double seconds = counted() * secondsOfUnit;
    return seconds >= SHORTEST
        && seconds <= LONGEST
        && usualStep() * secondsOfUnit <= SLOWEST_LIKELY;
  }

  /** How far it counted in all, restarts left out. */
  private double counted() {
    return IntStream.range(1, values.size())
        .mapToDouble(i -> Math.max(0, values.get(i) - values.get(i - 1)))
        .sum();
  }

  private double usualStep() {
    double[] steps =
        IntStream.range(1, values.size())
            .mapToDouble(i -> Math.abs(values.get(i) - values.get(i - 1)))
            .sorted()
            .toArray();
    return steps.length == 0 ? 0 : steps[steps.length / 2];
  }
}
