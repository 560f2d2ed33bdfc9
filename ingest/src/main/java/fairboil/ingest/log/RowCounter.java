package fairboil.ingest.log;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Template;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The counter of rows that some loggers write beside the time: where it leaves numbers out, rows
 * were lost. For one thread and one log.
 */
final class RowCounter {

  private static final Template LOST =
      Template.of(
          "this column counts the rows and leaves out {count|number} before this line: these rows"
              + " are not in the file");
  private static final Template LOST_IN_PLACES =
      Template.of(
          "this column counts the rows and leaves out {count|number} in {count|place}, first before"
              + " this line: these rows are not in the file");
  private static final Template EXPORT_AGAIN =
      Template.of("export the log again if they should be");

  private static final Pattern NAME =
      Pattern.compile(
          "(?i)(?:#|n|no|nr|num(?:ber)?|index|idx|rows?|rec(?:ord)?|sample|scan|count(?:er)?|seq"
              + "|sequence|id|point|reading|line|obs)?[\\s_.]*(?:#|no|nr|num(?:ber)?|id)?\\.?");

  /** A longer step is a counter that was set anew rather than rows that were lost. */
  private static final double LONGEST_HOLE = 1_000_000;

  private static final int FEWEST_STEPS = 4;
  private static final int STEADY_PERCENT = 80;

  private final LogColumn column;
  private final NumberScanner numbers = new NumberScanner();
  private double before = Double.NaN;
  private int holes;
  private double lost;
  private int firstLine;

  private RowCounter(LogColumn column) {
    this.column = column;
  }

  /**
   * The column that counts rows, if there is one.
   *
   * @param taken the columns, from 0, whose use is known
   */
  static Optional<RowCounter> find(
      TableShape shape, List<LogColumn> columns, Collection<Integer> taken) {
    return columns.stream()
        .filter(column -> column.looks() == LogColumn.Looks.NUMBERS)
        .filter(column -> !taken.contains(column.index()))
        .filter(column -> shape.header().isPresent())
        .filter(column -> NAME.matcher(shape.name(column.index()).strip()).matches())
        .filter(column -> counts(shape, column.index()))
        .map(RowCounter::new)
        .findFirst();
  }

  /** Whether a column is called as counters of rows are. */
  static boolean isCalled(String header) {
    return !header.isBlank() && NAME.matcher(header.strip()).matches();
  }

  // One more from line to line; holes in a sample of rows do not hide it.
  private static boolean counts(TableShape shape, int column) {
    int steps = 0;
    int ones = 0;
    for (int i = 1; i < shape.rows().size(); i++) {
      Sample.Line row = shape.rows().get(i);
      Sample.Line above = shape.rows().get(i - 1);
      if (row.number() == above.number() + 1) {
        steps++;
        ones += whole(row, column) == whole(above, column) + 1 ? 1 : 0;
      }
    }
    return steps >= FEWEST_STEPS && ones * 100 >= steps * STEADY_PERCENT;
  }

  private static long whole(Sample.Line row, int column) {
    String cell = row.cell(column);
    return cell.matches("\\d{1,9}") ? Long.parseLong(cell) : Long.MIN_VALUE / 2;
  }

  /** Takes note of the number of a row. */
  void take(LineCells cells, int line) {
    int cell = column.index();
    if (cells.isEmpty(cell)
        || !numbers.scan(cells.text(), cells.start(cell), cells.end(cell), column.mark())) {
      return;
    }
    double step = numbers.value() - before;
    if (step > 1 && step <= LONGEST_HOLE) {
      holes++;
      lost += step - 1;
      firstLine = firstLine == 0 ? line : firstLine;
    }
    before = numbers.value();
  }

  /** Says how many rows were lost. */
  void tell(Remarks remarks) {
    if (holes > 0) {
      Argument rows = Argument.count(Math.round(lost));
      remarks.note(
          remarks.cell(firstLine, column.name()),
          holes == 1 ? LOST.with(rows) : LOST_IN_PLACES.with(rows, Argument.count(holes)),
          EXPORT_AGAIN.with());
    }
  }
}
