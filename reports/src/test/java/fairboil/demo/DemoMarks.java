package fairboil.demo;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** Writes the stopwatch marks of the demonstration. */
final class DemoMarks {

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  private final SheetText sheet = new SheetText("run", "event", "time", "by");

  private DemoMarks() {}

  static SheetText of(List<DemoRun> runs) {
    DemoMarks marks = new DemoMarks();
    runs.forEach(marks::add);
    return marks.sheet;
  }

  private void add(DemoRun run) {
    Chance chance = Chance.of(run.order(), "marks " + run.name());
    Burn.Times times = run.burn().times();
    mark(run, "lit", 0);
    mark(run, "gas lit", times.gasLit() + Math.round(chance.gauss(1.5)));
    mark(run, "pot on", times.potOn());
    if (times.potOff() < times.flameOut()) {
      mark(run, "pot off", times.potOff());
      mark(run, "flame out", times.flameOut() + Math.round(chance.gauss(3)));
      return;
    }
    if (run.happened().boilTime() > 0) {
      mark(run, "boil", seen(run, run.happened().water().boilAt() + 4 + chance.gauss(3)));
    }
    mark(run, "flame out", times.flameOut() + Math.round(chance.gauss(3)));
    mark(run, "pot off", times.potOff());
  }

  /** Fern reads to the second, Bram to five. */
  private static long seen(DemoRun run, double second) {
    return by(run).equals("Fern") ? Math.round(second) : 5 * Math.round(second / 5);
  }

  private static String by(DemoRun run) {
    return run.order() % 2 == 0 ? "Fern" : "Bram";
  }

  private void mark(DemoRun run, String event, long second) {
    boolean clock = run.dialect().tellsTimeOfDay() && run.fate() != DemoRun.Fate.NO_LOG;
    String time = clock ? CLOCK.format(run.lit().plusSeconds(second)) : Decimal.minutes(second);
    sheet.row(run.name(), event, time, by(run));
  }
}
