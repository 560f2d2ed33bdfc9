package fairboil.ingest.log;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the lines above and below a table state of it (how many readings, the highest, the lowest),
 * compared with what was read.
 */
final class StatedFigures {

  private static final Template COUNT_DIFFERS =
      Template.of("the log states {count|reading}, but {count|is|are} in the file");
  private static final Template EXPORT_WHOLE =
      Template.of("export the log again, whole, or look for lines that were taken out");
  private static final Template HIGHEST_DIFFERS =
      Template.of(
          "this line states {value} as the highest reading, but {value} is the highest in the file");
  private static final Template LOWEST_DIFFERS =
      Template.of(
          "this line states {value} as the lowest reading, but {value} is the lowest in the file");

  private static final String READINGS =
      "(?:samples?|readings?|records?|data[ _]?points?|points?|rows?|scans?|measurements?)";

  private static final Pattern COUNT =
      Pattern.compile(
          "(?i)[\\W_]*(?:(?:total|number of|no\\.? of|nr\\.? of|count of)\\s+"
              + READINGS
              + "|(?:samples|readings|records|data[ _]?points|points|rows|scans|measurements)"
              + "|"
              + READINGS
              + "[ _]?(?:count|total)|count)(?:\\s+(?:logged|taken|stored|recorded))?"
              + "[\"\\s:=,;\\t]+(\\d{1,7})[\\W_]*");

  private static final Pattern COUNT_FIRST =
      Pattern.compile(
          "(?i)\\W*(?:total\\W+)?(\\d{1,7})\\s+"
              + READINGS
              + "(?:\\s+(?:logged|taken|stored|recorded|in all))?\\W*");

  private static final Pattern HIGHEST = Pattern.compile("(?i)max(?:imum|\\.)?|highest");
  private static final Pattern LOWEST = Pattern.compile("(?i)min(?:imum|\\.)?|lowest");

  /** More lines than this after a table are not looked at. */
  private static final int MOST_LINES = 20;

  private record Footer(int line, String text, List<String> cells) {}

  private final TableShape shape;
  private final List<Footer> footers = new ArrayList<>();

  StatedFigures(TableShape shape) {
    this.shape = shape;
  }

  /** Takes note of a line that may stand below the table. */
  void take(int line, String text, LineCells cells) {
    if (footers.size() < MOST_LINES) {
      footers.add(new Footer(line, text, cells.strings()));
    }
  }

  /** The lines taken note of were not below the table. */
  void forget() {
    footers.clear();
  }

  /**
   * Says where what is stated is not what was read.
   *
   * @param used how many readings were read
   * @param all how many rows of the table there are, those set aside among them
   */
  void tell(long used, long all, List<ChannelReader> channels, Remarks remarks) {
    for (String line : shape.preamble()) {
      count(line).ifPresent(stated -> tellCount(stated, used, all, 0, remarks));
    }
    for (Footer footer : footers) {
      count(footer.text())
          .ifPresent(stated -> tellCount(stated, used, all, footer.line(), remarks));
      channels.stream()
          .filter(channel -> channel.plan().isKept() && channel.range().count() > 0)
          .forEach(channel -> compare(footer, channel, remarks));
    }
  }

  static OptionalLong count(String line) {
    Matcher after = COUNT.matcher(line);
    Matcher before = COUNT_FIRST.matcher(line);
    if (after.matches()) {
      return OptionalLong.of(Long.parseLong(after.group(1)));
    }
    return before.matches()
        ? OptionalLong.of(Long.parseLong(before.group(1)))
        : OptionalLong.empty();
  }

  private static void tellCount(long stated, long used, long all, int line, Remarks remarks) {
    if (stated != used && stated != all) {
      remarks.warning(
          remarks.line(line),
          COUNT_DIFFERS.with(Argument.count(stated), Argument.count(all)),
          EXPORT_WHOLE.with());
    }
  }

  private static void compare(Footer footer, ChannelReader channel, Remarks remarks) {
    String label = footer.cells().get(0);
    if (HIGHEST.matcher(label).matches()) {
      compare(footer, channel, HIGHEST_DIFFERS, channel.range().highest(), remarks);
    } else if (LOWEST.matcher(label).matches()) {
      compare(footer, channel, LOWEST_DIFFERS, channel.range().lowest(), remarks);
    }
  }

  private static void compare(
      Footer footer, ChannelReader channel, Template differs, double found, Remarks remarks) {
    LogColumn column = channel.plan().column();
    Unit unit = channel.plan().unit().orElseThrow();
    OptionalDouble stated = stated(footer, column, channel.plan().scale());
    double half = 0.5 * Math.pow(10, -channel.decimals()) * channel.plan().scale();
    if (stated.isPresent() && Math.abs(stated.getAsDouble() - found) > half) {
      remarks.note(
          remarks.cell(footer.line(), column.name()),
          differs.with(
              channel.range().value(stated.getAsDouble(), unit),
              channel.range().value(found, unit)));
    }
  }

  private static OptionalDouble stated(Footer footer, LogColumn column, double scale) {
    if (column.index() >= footer.cells().size()) {
      return OptionalDouble.empty();
    }
    char[] text = footer.cells().get(column.index()).toCharArray();
    NumberScanner numbers = new NumberScanner();
    return numbers.scan(text, 0, text.length, column.mark())
        ? OptionalDouble.of(numbers.value() * scale)
        : OptionalDouble.empty();
  }
}
