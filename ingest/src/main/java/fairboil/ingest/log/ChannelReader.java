package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.SensorsSheet;
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

  private static final Template SCALED = Template.of("{clause}; {clause}");

  private final ChannelPlan plan;
  private final boolean kept;
  private final char mark;
  private final double least;
  private final double most;
  private final int scaleDecimals;
  private final Series values = new Series();
  private final ValueRange range;
  private final NumberScanner numbers = new NumberScanner();
  private int mostDecimals;
  private int fewestDecimals = Integer.MAX_VALUE;
  private boolean oddDecimals;

  private long outside;
  private String firstOutside = "";
  private int firstOutsideLine;

  private long zeros;
  private boolean inZeros;
  private double before;
  private long texts;
  private int firstTextLine;
  private String firstText = "";
  private boolean thousands;

  private int unitChangeLine;
  private Optional<Unit> unitChange = Optional.empty();

  ChannelReader(ChannelPlan plan) {
    this.plan = plan;
    this.range = new ValueRange(plan.role());
    this.kept = plan.isKept();
    this.mark = plan.column().mark();
    this.scaleDecimals = ValueRange.decimalsOf(plan.scale());
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
  Message words() {
    if (plan.unit().isPresent()) {
      return range.values(plan.unit().get());
    }
    return Scales.mayBeLacking(plan, range)
        ? SCALED.with(
            Argument.clause(range.numbers()), Argument.clause(Scales.of(plan, range).words()))
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
      return take(cells, cell, line);
    }
    return readWords(cells.string(cell), line);
  }

  private double take(LineCells cells, int cell, int line) {
    double written = numbers.value();
    if (FaultCodes.contains(written)) {
      return FAULT;
    }
    range.add(written * plan.scale(), numbers.decimals() + scaleDecimals);
    countZero(written);
    if (kept && !(written >= least && written <= most)) {
      if (outside++ == 0) {
        firstOutside = cells.string(cell);
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
      unitChange = Optional.of(unit);
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
    Place column = remarks.file().column(plan.column().name());
    Place firstOdd = remarks.cell(firstTextLine, plan.column().name());
    if (unitChange.isPresent()) {
      tellUnitChange(unitChange.get(), remarks);
      return false;
    }
    if (thousands) {
      remarks.error(
          firstOdd,
          ChannelSays.THOUSANDS.with(Arguments.cell(firstText)),
          ChannelSays.NO_THOUSANDS.with());
      return false;
    }
    if (kept && maybeThousands()) {
      remarks.error(column, ChannelSays.MAYBE_THOUSANDS.with(), ChannelSays.SAME_DECIMALS.with());
      return false;
    }
    if (kept && outside * 2 > range.count()) {
      tellImpossible(column, remarks);
      return false;
    }
    if (kept && range.count() == 0 && texts > 0) {
      remarks.error(
          firstOdd,
          ChannelSays.ONLY_TEXT.with(Arguments.cell(firstText)),
          ChannelSays.CHECK_EXPORT.with(Arguments.SENSORS));
      return false;
    }
    if (kept) {
      tellFaults(column, remarks);
      tellTexts(firstOdd, remarks);
    }
    return true;
  }

  private void tellUnitChange(Unit other, Remarks remarks) {
    remarks.error(
        remarks.cell(unitChangeLine, plan.column().name()),
        ChannelSays.UNIT_CHANGES.with(
            Argument.word(plan.unit().orElseThrow().symbol()), Argument.word(other.symbol())),
        ChannelSays.SPLIT.with());
  }

  // 998 and 1,012: a decimal comma would have given 998,000.
  private boolean maybeThousands() {
    boolean both = mostDecimals == 3 && fewestDecimals == 0 && !oddDecimals;
    return both && range.highest() >= 100 && plan.scale() == 1;
  }

  // In the log's own unit, which may be what is wrong.
  private void tellImpossible(Place place, Remarks remarks) {
    Argument numbers = Argument.clause(range.numbers());
    Argument possible = Argument.clause(FaultCodes.possible(plan.unit().orElseThrow()));
    if (!Scales.mayBeLacking(plan, range)) {
      remarks.error(
          place,
          ChannelSays.IMPOSSIBLE.with(numbers, possible),
          ChannelSays.CHECK_UNIT.with(Arguments.SENSORS));
      return;
    }
    Scales scales = Scales.of(plan, range);
    remarks.error(
        place,
        ChannelSays.IMPOSSIBLE_UNSCALED.with(numbers, possible, Argument.clause(scales.words())),
        ChannelSays.SAY_SCALE.with(Arguments.SENSORS),
        Asking.fix(plan, plan.role().map(Role::label).orElse(""), plan.unit())
            .with(SensorsSheet.SCALE, scales.cell())
            .fix());
  }

  private void tellFaults(Place place, Remarks remarks) {
    Unit unit = plan.unit().orElseThrow();
    if (outside > 0) {
      Dimension dimension = plan.dimension();
      remarks.note(
          remarks.cell(firstOutsideLine, plan.column().name()),
          ChannelSays.OUTSIDE.with(
              Argument.count(outside),
              Argument.range(
                  FaultCodes.least(dimension),
                  FaultCodes.most(dimension),
                  FaultCodes.step(dimension),
                  dimension),
              Arguments.cell(firstOutside)));
    }
    if (zeros >= MANY_ZEROS) {
      remarks.note(
          place,
          ChannelSays.ZEROS.with(Argument.count(zeros), range.highest(unit)),
          ChannelSays.LOOK.with());
    }
  }

  private void tellTexts(Place first, Remarks remarks) {
    if (firstText.indexOf('\0') >= 0) {
      remarks.warning(first, ChannelSays.DAMAGED.with(Argument.count(texts)), Message.NONE);
    } else if (texts > 0) {
      remarks.warning(
          first,
          ChannelSays.TEXT.with(Argument.count(texts), Arguments.cell(firstText)),
          Message.NONE);
    }
  }
}
