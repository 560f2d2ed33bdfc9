package fairboil.ingest.log;

import fairboil.ingest.finding.CellFix;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Fix;
import fairboil.ingest.finding.Voice;
import java.util.Locale;
import java.util.StringJoiner;

/** What came of a log, as text to compare and to read. */
final class LogText {

  private static final int SHOWN = 12;

  private LogText() {}

  static String of(OpenedLog opened) {
    StringBuilder text = new StringBuilder();
    opened.log().ifPresentOrElse(log -> append(log, text), () -> text.append("no log\n"));
    for (Finding finding : opened.findings()) {
      text.append(finding).append('\n');
      finding.mend().ifPresent(fix -> append(fix, text));
    }
    return text.toString();
  }

  private static void append(Fix fix, StringBuilder text) {
    text.append(
        fix instanceof CellFix cells
            ? "  type into " + cells.row() + ": "
            : "  paste into " + fix.sheet() + ": ");
    text.append(fix.texts(Voice.RAW)).append('\n');
  }

  private static void append(Log log, StringBuilder text) {
    TimeAxis time = log.time();
    text.append("time: ").append(time.kind());
    text.append(", interval ").append(number(time.interval()));
    text.append(" s, resolution ").append(number(time.resolution())).append(" s");
    time.startSecondOfDay().ifPresent(s -> text.append(", from ").append(Spell.elapsed(s)));
    time.startDate().ifPresent(date -> text.append(" on ").append(date));
    text.append('\n');
    for (Channel channel : log.channels()) {
      text.append(channel.role().label()).append(": ").append(channel.name());
      text.append(" in ").append(channel.unit().symbol());
      text.append(", resolution ").append(number(channel.resolution()));
      text.append(", faults ").append(channel.faults());
      text.append(", empty ").append(channel.empty()).append('\n');
    }
    text.append("rows: ").append(log.rows().read()).append(" read, ");
    text.append(log.rows().used()).append(" used");
    log.rows()
        .setAside()
        .forEach((fate, n) -> text.append(", ").append(fate).append(' ').append(n));
    text.append('\n');
    appendTable(log, text);
  }

  private static void appendTable(Log log, StringBuilder text) {
    int size = log.time().size();
    for (int i = 0; i < size; i++) {
      if (size <= 2 * SHOWN || i < SHOWN || i >= size - SHOWN / 2) {
        StringJoiner row = new StringJoiner(" ");
        row.add(number(log.time().seconds().getDouble(i)));
        for (Channel channel : log.channels()) {
          row.add(number(channel.values().getDouble(i)));
        }
        text.append(row).append('\n');
      } else if (i == SHOWN) {
        text.append("...\n");
      }
    }
  }

  private static String number(double value) {
    return Double.isNaN(value)
        ? "-"
        : String.format(Locale.ROOT, "%.6f", value).replaceAll("\\.?0+$", "");
  }
}
