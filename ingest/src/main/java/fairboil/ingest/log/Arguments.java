package fairboil.ingest.log;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.List;

/** What the messages about logs are about. */
final class Arguments {

  /** The sheet that answers what a log leaves unsaid. */
  static final Argument SENSORS = Argument.sheet(SensorsSheet.SCHEMA.file());

  /** The sheet of the runs. */
  static final Argument RUNS = Argument.sheet(RunsSheet.SCHEMA.file());

  /** Nothing finer is shown or typed. */
  private static final int MOST_DECIMALS = 6;

  private Arguments() {}

  /** Text of a log as written, what cannot be shown replaced. */
  static Argument cell(String text) {
    return Argument.cell(text.replaceAll("\\p{Cntrl}", "?"));
  }

  /** A number of a log, with so many decimals where that is sensible. */
  static Argument number(double value, int decimals) {
    return Argument.number(value, clamped(decimals));
  }

  /** The names of columns, joined as in {@code a, b, c}. */
  static Argument names(List<LogColumn> columns) {
    return Argument.list(columns.stream().map(column -> Argument.name(column.name())).toList());
  }

  /** A length of time, as finely as it is a decimal number of seconds. */
  static Argument seconds(double seconds) {
    return Argument.value(seconds, 2 * step(seconds), Dimension.DURATION);
  }

  /** A time since the start, as finely as it is a decimal number of seconds, as one types it. */
  static Argument typedSeconds(double seconds) {
    return Argument.typed(seconds, step(seconds), Dimension.DURATION);
  }

  /** The last decimal of a number of seconds, down to a thousandth. */
  private static double step(double seconds) {
    double step = 1;
    while (step > 0.0015 && Math.abs(seconds / step - Math.rint(seconds / step)) > 1e-6) {
      step /= 10;
    }
    return step;
  }

  /** The decimals that are shown of a number that was written with so many. */
  static int clamped(int decimals) {
    return Math.max(0, Math.min(MOST_DECIMALS, decimals));
  }
}
