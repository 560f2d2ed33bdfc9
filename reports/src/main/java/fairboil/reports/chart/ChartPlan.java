package fairboil.reports.chart;

import fairboil.reports.words.Caption;
import java.util.List;
import java.util.function.Function;

/**
 * A picture that can be drawn.
 *
 * @param key what it is of
 * @param name its name, not yet made safe for files
 * @param maker makes its sheet, laid out for a format
 */
record ChartPlan(ChartKey key, String name, Function<Format, Drawn> maker) {

  /** A sheet with its caption. */
  record Drawn(Sheet sheet, Caption caption) {}

  /** What is lost if the program fails at it. */
  String part() {
    return "the chart “" + name + "”";
  }

  /** Those for which it can be laid out, the widest first. */
  List<Format> printFormats() {
    return switch (key.kind()) {
      case RUN, TRACES, BALANCES -> List.of();
      default -> List.of(Format.PAGE, Format.COLUMN);
    };
  }
}
