package fairboil.ingest.log;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.grid.TextLines;
import fairboil.ingest.grid.UnreadableException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a log from its first line to its last, once its shape is known, and keeps account of every
 * line. For one thread and one log.
 */
final class TableReader {

  /** The most readings of one log. */
  static final int MAX_READINGS = 5_000_000;

  private final RowLines rows;
  private final TableShape shape;
  private final TimePlan plan;
  private final List<ChannelReader> channels;
  private final Optional<LongForm.Joiner> joiner;
  private final Remarks remarks;
  private final Optional<RowCounter> counter;
  private final StatedFigures stated;
  private final Tally tally = new Tally();
  private final Series times = new Series();
  private final LineNumbers lines = new LineNumbers();
  private final List<Integer> headersAgain = new ArrayList<>();

  private final List<Integer> waiting = new ArrayList<>();
  private String firstWaiting = "";
  private int shortLine;
  private int shortCells;
  private int longLine;
  private int longCells;
  private final int room;
  private int unclosedLine;

  TableReader(
      TextLines lines,
      TableShape shape,
      TimePlan plan,
      List<ChannelReader> channels,
      Optional<LongForm.Joiner> joiner,
      Optional<RowCounter> counter,
      Remarks remarks) {
    this.counter = counter;
    this.stated = new StatedFigures(shape);
    this.rows = new RowLines(lines, shape.separator());
    this.shape = shape;
    this.plan = plan;
    this.channels = List.copyOf(channels);
    this.joiner = joiner;
    this.remarks = remarks;
    this.room = shape.room();
  }

  Tally tally() {
    return tally;
  }

  /** Seconds of each reading since the first, as the log's clock goes. */
  Series times() {
    return times;
  }

  /** The line of each reading. */
  LineNumbers lines() {
    return lines;
  }

  /** The readings before which the header was written again. */
  List<Integer> headersAgain() {
    return headersAgain;
  }

  /** Reads all lines. */
  void readAll() throws IOException {
    while (rows.advance()) {
      tally.read();
      if (rows.number() < shape.firstLine()) {
        readAbove();
      } else {
        readRow();
      }
    }
    endWaiting(RowFate.FOOTER);
    joiner.ifPresent(LongForm.Joiner::end);
  }

  private void readAbove() throws IOException {
    int line = rows.number();
    if (rows.isBlank()) {
      tally.setAside(RowFate.BLANK, line);
    } else if (rows.isComment()) {
      tally.setAside(RowFate.COMMENT, line);
    } else {
      rows.split();
      boolean header = line >= shape.header().map(Sample.Line::number).orElse(Integer.MAX_VALUE);
      tally.setAside(header ? RowFate.HEADER : RowFate.PREAMBLE, line);
    }
  }

  private void readRow() throws IOException {
    LineCells cells = rows.split();
    if (cells.count() == shape.width() && cells.width() <= room && plan.reader().read(cells)) {
      take(cells);
    } else if (rows.isBlank()) {
      tally.setAside(RowFate.BLANK, rows.number());
    } else if (rows.isComment()) {
      tally.setAside(RowFate.COMMENT, rows.number());
    } else {
      readOdd(cells);
    }
  }

  private void take(LineCells cells) throws IOException {
    int line = rows.number();
    if (rows.isUnended() && channels.stream().anyMatch(channel -> channel.isCut(cells))) {
      cutOff();
      return;
    }
    if (!waiting.isEmpty()) {
      endWaiting(RowFate.NO_TIME);
    }
    if (times.size() == MAX_READINGS) {
      throw new UnreadableException(
          Finding.error(remarks.line(line), RowsSay.TOO_LONG.with(), RowsSay.SPLIT.with()));
    }
    double seconds = plan.reader().seconds();
    if (joiner.isPresent()) {
      join(joiner.get(), cells, seconds);
      return;
    }
    times.add(seconds);
    lines.add(line);
    if (counter.isPresent()) {
      counter.get().take(cells, line);
    }
    for (ChannelReader channel : channels) {
      channel.read(cells, line);
    }
  }

  private void join(LongForm.Joiner joined, LineCells cells, double seconds) {
    if (joined.startsReading(cells, seconds)) {
      joined.end();
      times.add(seconds);
      lines.add(rows.number());
    } else {
      tally.setAside(RowFate.JOINED, rows.number());
    }
    joined.take(cells, seconds, rows.number());
  }

  private void cutOff() {
    tally.setAside(RowFate.CUT_OFF, rows.number());
    remarks.note(remarks.line(rows.number()), RowsSay.CUT_OFF.with());
  }

  private void readOdd(LineCells cells) throws IOException {
    if (isDamaged(rows.text())) {
      tally.setAside(RowFate.DAMAGED, rows.number());
    } else if (rows.isUnclosed()) {
      unclosed();
    } else if (isHeaderAgain(cells)) {
      tally.setAside(RowFate.HEADER, rows.number());
      headersAgain.add(times.size());
    } else if (isTimeEmpty(cells)) {
      withoutTime(cells);
    } else if (!plan.reader().read(cells)) {
      unreadableTime(cells);
    } else {
      otherWidth(cells);
    }
  }

  // Blocks of 00 or FF are what a loss of power leaves on a memory card.
  private static boolean isDamaged(String text) {
    return text.indexOf('\0') >= 0
        || text.indexOf('\ufffd') >= 0
        || text.contains("\u00ff\u00ff\u00ff");
  }

  private void unclosed() {
    tally.setAside(RowFate.RAGGED, rows.number());
    if (unclosedLine == 0) {
      unclosedLine = rows.number();
      remarks.error(remarks.line(unclosedLine), RowsSay.UNCLOSED.with(), RowsSay.CLOSE.with());
    }
  }

  private boolean isHeaderAgain(LineCells cells) {
    if (shape.header().isEmpty()) {
      return false;
    }
    boolean names = true;
    boolean units = shape.units().isPresent();
    for (int i = 0; i < Math.max(shape.names(), cells.width()); i++) {
      String cell = cells.string(i);
      names &= cell.equals(shape.name(i));
      units &= cell.equals(shape.unit(i));
    }
    return names || units;
  }

  private boolean isTimeEmpty(LineCells cells) {
    return plan.columns().stream().allMatch(cells::isEmpty);
  }

  private void withoutTime(LineCells cells) {
    if (plan.emptyTimes() == RowFate.OUTSIDE_RUN) {
      tally.setAside(RowFate.OUTSIDE_RUN, rows.number());
    } else {
      waitForMore(cells);
    }
  }

  private void unreadableTime(LineCells cells) {
    if (plan.emptyTimes() == RowFate.OUTSIDE_RUN && cells.count() == shape.width()) {
      tally.setAside(RowFate.OUTSIDE_RUN, rows.number());
    } else if (rows.isUnended() && times.size() > 0 && startsLikeReading(rows.text())) {
      cutOff();
    } else {
      waitForMore(cells);
    }
  }

  private static boolean startsLikeReading(String text) {
    String bare = text.strip();
    return !bare.isEmpty() && "0123456789-+.".indexOf(bare.charAt(0)) >= 0;
  }

  // Text is the end of the table if nothing follows it, and a fault if readings do.
  private void waitForMore(LineCells cells) {
    stated.take(rows.number(), rows.text(), cells);
    if (waiting.isEmpty()) {
      firstWaiting = rows.text().strip();
    }
    waiting.add(rows.number());
  }

  private void endWaiting(RowFate fate) {
    if (waiting.isEmpty()) {
      return;
    }
    int first = waiting.get(0);
    boolean footer = fate == RowFate.FOOTER;
    if (footer) {
      remarks.note(
          remarks.line(first),
          RowsSay.FOOTER.with(Argument.count(waiting.size()), Arguments.cell(firstWaiting)));
    } else {
      stated.forget();
    }
    if (!footer && tally.count(RowFate.NO_TIME) == 0) {
      remarks.warning(
          remarks.line(first),
          RowsSay.NO_TIME.with(Arguments.cell(firstWaiting)),
          RowsSay.CORRECT_TIME.with());
    }
    tally.setAside(fate, first, waiting.size());
    waiting.clear();
  }

  private void otherWidth(LineCells cells) throws IOException {
    int count = cells.count();
    counter.ifPresent(counted -> counted.take(cells, rows.number()));
    if (count < Math.min(room, shape.width())) {
      if (rows.isUnended() && times.size() > 0) {
        cutOff();
        return;
      }
      shortLine = shortLine == 0 ? rows.number() : shortLine;
      shortCells = shortLine == rows.number() ? count : shortCells;
      tally.setAside(RowFate.RAGGED, rows.number());
    } else if (cells.width() <= room) {
      take(cells);
    } else {
      longLine = longLine == 0 ? rows.number() : longLine;
      longCells = longLine == rows.number() ? cells.width() : longCells;
      tally.setAside(RowFate.RAGGED, rows.number());
    }
  }

  /** Says which lines were set aside for their width or damage; false if they are too many. */
  boolean judge() {
    long ragged = tally.count(RowFate.RAGGED);
    long damaged = tally.count(RowFate.DAMAGED);
    if (damaged > 0) {
      remarks.note(
          remarks.line(tally.firstLine(RowFate.DAMAGED)),
          RowsSay.DAMAGED.with(Argument.count(damaged)));
    }
    if (ragged > 2 && ragged * 20 > ragged + times.size()) {
      tellTooMany(ragged);
      return false;
    }
    if (joiner.isEmpty() && headersAgain.isEmpty()) {
      long aside = ragged + damaged + tally.count(RowFate.NO_TIME) + tally.count(RowFate.CUT_OFF);
      stated.tell(times.size(), times.size() + aside, channels, remarks);
      counter.ifPresent(counted -> counted.tell(remarks));
    }
    tellRagged(shortLine, shortCells, ragged);
    tellRagged(longLine, longCells, ragged);
    return tellNoTime();
  }

  private void tellTooMany(long ragged) {
    int line = tally.firstLine(RowFate.RAGGED);
    remarks.error(
        remarks.line(line),
        RowsSay.TOO_MANY.with(
            Argument.count(ragged),
            Argument.count(ragged + times.size()),
            Argument.count(line == shortLine ? shortCells : longCells),
            Argument.count(room)),
        RowsSay.LOOK_FOR_PROBE.with());
  }

  private void tellRagged(int line, int cells, long ragged) {
    if (line > 0) {
      Message more = ragged > 1 ? RowsSay.IN_ALL.with(Argument.count(ragged)) : Message.NONE;
      boolean few = cells < room;
      remarks.warning(
          remarks.line(line),
          RowsSay.RAGGED.with(Argument.count(cells), Argument.count(room), Argument.clause(more)),
          few ? RowsSay.LEAVE_SHORT.with() : RowsSay.LOOK_FOR_COMMA.with());
    }
  }

  private boolean tellNoTime() {
    long lost = tally.count(RowFate.NO_TIME);
    boolean trusted = lost <= 2 || lost * 20 <= lost + times.size();
    if (!trusted) {
      remarks.error(
          remarks.line(tally.firstLine(RowFate.NO_TIME)),
          RowsSay.TIMES_LOST.with(Argument.count(lost), Argument.count(lost + times.size())),
          RowsSay.LOOK_AT_FIRST.with());
    }
    return trusted;
  }
}
