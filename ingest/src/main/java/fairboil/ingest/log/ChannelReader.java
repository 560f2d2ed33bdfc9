package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.quantity.Unit;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads the cells of one column of readings, row by row. A reading that is missing is NaN, one that
 * is a fault is infinite, until the column is finished. For one thread and one log.
 */
final class ChannelReader {

  /** Stands for a fault. */
  static final double FAULT = Double.POSITIVE_INFINITY;

  /** Stands for an empty cell. */
  static final double EMPTY = Double.NaN;

  private static final Pattern THOUSANDS =
      Pattern.compile("[-+]?\\d{1,3}(?:([.,' \u00a0\u2009\u202f\u2019])\\d{3})+(?:[.,]\\d+)?");

  /** More zeros than a probe in ice or frost would give by chance. */
  private static final int MANY_ZEROS = 10;

  private static final double JUMP = 20;

  private final ChannelPlan plan;
  private final boolean kept;
  private final char mark;
  private final double least;
  private final double most;
  private final Series values = new Series();
  private final ValueRange range;
  private final NumberScanner numbers = new NumberScanner();
  private int mostDecimals;
  private int fewestDecimals = Integer.MAX_VALUE;
  private boolean oddDecimals;

  private long outside;
  private double firstOutside;
  private int firstOutsideLine;

  private long zeros;
  private boolean inZeros;
  private double before;
  private long texts;
  private int firstTextLine;
  private String firstText = "";
  private boolean thousands;

  private int unitChangeLine;
  private String unitChange = "";

  ChannelReader(ChannelPlan plan) {
    this.plan = plan;
    this.range = new ValueRange(plan.role());
    this.kept = plan.isKept();
    this.mark = plan.column().mark();
    double cold = kept ? plan.written(FaultCodes.least(plan.dimension())) : 0;
    double hot = kept ? plan.written(FaultCodes.most(plan.dimension())) : 0;
    this.least = Math.min(cold, hot);
    this.most = Math.max(cold, hot);
  }

  ChannelPlan plan() {
    return plan;
  }

  /** The range of its numbers, codes left out. */
  ValueRange range() {
    return range;
  }

  /** What its numbers look like: with the scale that seems to be lacking, if one does. */
  ValueRange likeness() {
    return Scales.mayBeLacking(plan, range) ? Scales.of(plan, range).scaled() : range;
  }

  /** Its readings as written, for one use, {@link #FAULT} and {@link #EMPTY} among them. */
  Series values() {
    return values;
  }

  /** The range in words with its unit, or with the unit that it looks like. */
  String words() {
    if (plan.unit().isPresent()) {
      return range.words() + " " + plan.unit().get().symbol();
    }
    return Scales.mayBeLacking(plan, range)
        ? range.words() + ": " + Scales.of(plan, range).words()
        : range.guess();
  }

  /** Reads the cell of a row. */
  void read(LineCells cells, int line) {
    read(cells, plan.column().index(), line);
  }

  /** Takes note that a row has no cell. */
  void skip() {
    if (kept) {
      values.add(EMPTY);
    }
  }

  /** Reads a cell. */
  void read(LineCells cells, int cell, int line) {
    double value = cells.isEmpty(cell) ? EMPTY : readFilled(cells, cell, line);
    if (kept) {
      values.add(value);
    }
  }

  private double readFilled(LineCells cells, int cell, int line) {
    char[] text = cells.text();
    int from = cells.start(cell);
    int to = cells.end(cell);
    if (numbers.scan(text, from, to, mark) || hasUnitBehind(text, from, to, line)) {
      plan.unitColumn().ifPresent(column -> checkUnit(cells.string(column), line));
      return take(line);
    }
    return readWords(cells.string(cell), line);
  }

  private double take(int line) {
    double written = numbers.value();
    if (FaultCodes.contains(written)) {
      return FAULT;
    }
    range.add(written * plan.scale());
    countZero(written);
    if (kept && !(written >= least && written <= most)) {
      if (outside++ == 0) {
        firstOutside = written;
        firstOutsideLine = line;
      }
      return FAULT;
    }
    int decimals = numbers.decimals();
    oddDecimals |= decimals != 0 && decimals != 3;
    mostDecimals = Math.max(mostDecimals, decimals);
    fewestDecimals = Math.min(fewestDecimals, decimals);
    return written;
  }

  // Zeros to which the column jumps: in frost it passes through 0 step by step.
  private void countZero(double written) {
    inZeros = written == 0 && (inZeros || Math.abs(before) > JUMP);
    zeros += inZeros ? 1 : 0;
    before = written;
  }

  private boolean hasUnitBehind(char[] text, int from, int to, int line) {
    if (!numbers.scanPrefix(text, from, to, mark)) {
      return false;
    }
    int end = from + numbers.length();
    Optional<Unit> unit = UnitWords.ofTemperature(new String(text, end, to - end));
    unit.ifPresent(known -> checkUnit(known, line));
    return unit.isPresent();
  }

  private void checkUnit(String cell, int line) {
    UnitWords.ofTemperature(cell).ifPresent(unit -> checkUnit(unit, line));
  }

  private void checkUnit(Unit unit, int line) {
    if (plan.unit().isPresent() && plan.unit().get() != unit && unitChangeLine == 0) {
      unitChangeLine = line;
      unitChange = plan.unit().get().symbol() + " to " + unit.symbol();
    }
  }

  private double readWords(String text, int line) {
    if (!FaultWords.contains(text)) {
      thousands |= THOUSANDS.matcher(text).matches();
      if (texts++ == 0) {
        firstTextLine = line;
        firstText = text;
      }
    }
    return FAULT;
  }

  /**
   * Whether a number at the very end of a file has lost digits: fewer decimals than every number of
   * its column before it, all of which have the same, or so little left that the reading jumps.
   */
  boolean isCut(LineCells cells) {
    int cell = plan.column().index();
    return cell == cells.count() - 1
        && range.count() > 5
        && numbers.scan(cells.text(), cells.start(cell), cells.end(cell), mark)
        && (hasLostDecimals() || hasLostDigits());
  }

  private boolean hasLostDecimals() {
    return mostDecimals > 0
        && fewestDecimals == mostDecimals
        && numbers.decimals() < fewestDecimals;
  }

  private boolean hasLostDigits() {
    return kept
        && numbers.decimals() <= 0
        && Math.abs(numbers.value()) * 5 <= Math.abs(before)
        && Math.abs(plan.held(numbers.value()) - plan.held(before)) > JUMP;
  }

  /** The most decimals with which a reading was written. */
  int decimals() {
    return mostDecimals;
  }

  /** Says what was odd in the column; false if it cannot be used because of it. */
  boolean judge(Remarks remarks) {
    String name = plan.column().name();
    if (unitChangeLine > 0) {
      remarks.error(
          remarks.cell(unitChangeLine, name),
          "the unit changes from " + unitChange + " on this line, so the column was not used",
          "split the log there, or convert one part");
      return false;
    }
    if (thousands) {
      remarks.error(
          remarks.cell(firstTextLine, name),
          "numbers such as "
              + Spell.quoted(firstText)
              + " have a thousands mark: the column was not"
              + " used",
          "export the log again without thousands marks");
      return false;
    }
    if (kept && maybeThousands()) {
      remarks.error(
          remarks.file().column(name),
          "the numbers of this column have three decimals or none: whether the mark before the"
              + " three parts thousands or decimals cannot be told, so the column was not used",
          "export the log again with the same number of decimals in every row");
      return false;
    }
    if (kept && outside * 2 > range.count()) {
      tellUnbelievable(remarks);
      return false;
    }
    if (kept && range.count() == 0 && texts > 0) {
      remarks.error(
          remarks.cell(firstTextLine, name),
          "this column has no number in it, only text such as " + Spell.quoted(firstText),
          "check that the log was exported whole, or name the right column in sensors.csv");
      return false;
    }
    tellFaults(remarks);
    return true;
  }

  // 998 and 1,012: a decimal comma would have given 998,000.
  private boolean maybeThousands() {
    boolean both = mostDecimals == 3 && fewestDecimals == 0 && !oddDecimals;
    return both && range.highest() >= 100 && plan.scale() == 1;
  }

  private void tellUnbelievable(Remarks remarks) {
    String name = plan.column().name();
    String problem =
        "most numbers of this column ("
            + range.words()
            + ") are outside "
            + FaultCodes.possible(plan.unit().orElseThrow())
            + ", so it was not used";
    if (Scales.mayBeLacking(plan, range)) {
      Scales scales = Scales.of(plan, range);
      String role = plan.role().map(Role::label).orElse("");
      remarks.error(
          remarks.file().column(name),
          problem + "; " + scales.words(),
          "say its scale in sensors.csv",
          scales.row(Asking.row(plan.column(), role, plan.unit())));
    } else {
      remarks.error(
          remarks.file().column(name), problem, "check its unit, or say its scale in sensors.csv");
    }
  }

  private void tellFaults(Remarks remarks) {
    String name = plan.column().name();
    if (kept && outside > 0) {
      remarks.note(
          remarks.cell(firstOutsideLine, name),
          Spell.count(outside, "reading")
              + " outside "
              + FaultCodes.possible(plan.unit().orElseThrow())
              + " taken as missing, the first of them "
              + Spell.number(firstOutside),
          "");
    }
    if (kept && zeros >= MANY_ZEROS) {
      remarks.note(
          remarks.file().column(name),
          Spell.count(zeros, "reading")
              + " are exactly 0 in a column that goes up to "
              + Spell.number(range.highest())
              + ": some loggers write 0 for a probe that fails",
          "look at the chart; give a correct log, or exclude the run");
    }
    if (kept && firstText.indexOf('\0') >= 0) {
      remarks.warning(
          remarks.cell(firstTextLine, name),
          Spell.count(texts, "cell")
              + " with damaged bytes taken as missing: a loss of power leaves such",
          "");
    } else if (kept && texts > 0) {
      remarks.warning(
          remarks.cell(firstTextLine, name),
          Spell.count(texts, "cell")
              + " with text in place of a number taken as missing, the first"
              + " of them "
              + Spell.quoted(firstText),
          "");
    }
  }
}
