package fairboil.ingest.grid.workbook;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;

/**
 * Writes the cells of a workbook as a person would have typed them into a CSV file.
 *
 * @param text the text; empty if the cell holds nothing that can be used
 * @param shown what the cell shows, were it an error
 * @param problem what is wrong with the cell
 * @param remedy what to do about it; empty if nothing need be done
 */
record CellText(String text, String shown, Optional<Message> problem, Message remedy) {

  private static final Template NO_RESULT =
      Template.of("this cell holds a formula without its result, so it was read as empty");
  private static final Template SAVE_AGAIN =
      Template.of("open the workbook in a spreadsheet program and save it again");
  private static final Template SHOWS_ERROR =
      Template.of("this cell shows {cell}, so it was read as empty");
  private static final Template CORRECT_FORMULA =
      Template.of("correct its formula, or empty the cell if there is no value");
  private static final Template TOO_LARGE =
      Template.of("the number of this cell is too large, so it was read as empty");
  private static final Template CHECK = Template.of("check it");
  private static final Template NO_DATE =
      Template.of("this cell is shown as a date or time but holds {name}, so it was read as empty");
  private static final Template FORMAT_AS_NUMBER =
      Template.of("give the cell a number format, or type the date again");

  private static final Pattern ERROR =
      Pattern.compile("#(?:N/A|[A-Z0-9_/]+[!?])|#(?:SPILL|CALC|FIELD|BLOCKED|UNKNOWN)!?");

  /** Carriage returns, as workbooks write them. */
  private static final String RETURN = "_x000D_";

  /** Spreadsheets keep 15 digits; what stands behind them is noise of their arithmetic. */
  private static final MathContext DIGITS = new MathContext(15, RoundingMode.HALF_EVEN);

  /** A cell without a value. */
  private static final CellText NOTHING = read("");

  private static CellText read(String text) {
    return new CellText(text, text, Optional.empty(), Message.NONE);
  }

  private static CellText unread(Message problem, Template remedy) {
    return new CellText("", "", Optional.of(problem), remedy.with());
  }

  /** The text of a cell of a workbook whose dates count from 1904 or not. */
  static CellText of(Cell cell, boolean from1904) {
    CellType type = cell.getType();
    Object value = cell.getValue();
    if (type == CellType.FORMULA && cell.getRawValue() == null) {
      return unread(NO_RESULT.with(), SAVE_AGAIN);
    }
    if (value instanceof BigDecimal) {
      return number(Double.parseDouble(cell.getRawValue()), cell, from1904);
    }
    if (value instanceof Boolean truth) {
      return read(truth ? "TRUE" : "FALSE");
    }
    String text = value == null ? "" : value.toString().replace(RETURN, "").strip();
    boolean mayBeError = type == CellType.ERROR || type == CellType.FORMULA;
    if (type == CellType.ERROR && text.isEmpty()) {
      text = cell.getRawValue() == null ? "" : cell.getRawValue().strip();
    }
    if (text.isEmpty()) {
      return NOTHING;
    }
    return mayBeError && (type == CellType.ERROR || ERROR.matcher(text).matches())
        ? error(text)
        : read(text);
  }

  // #N/A is how people say in a spreadsheet that there is no value.
  private static CellText error(String text) {
    return new CellText(
        "",
        text,
        Optional.of(SHOWS_ERROR.with(Argument.cell(text))),
        text.equals("#N/A") ? Message.NONE : CORRECT_FORMULA.with());
  }

  private static CellText number(double value, Cell cell, boolean from1904) {
    FormatCode format = FormatCode.of(cell.getDataFormatString());
    if (!Double.isFinite(value)) {
      return unread(TOO_LARGE.with(), CHECK);
    }
    if (format.showsDate() || format.showsTime()) {
      return Serial.text(value, format, from1904)
          .map(CellText::read)
          .orElseGet(() -> unread(NO_DATE.with(Argument.name(plain(value, 0))), FORMAT_AS_NUMBER));
    }
    String number =
        format.isPercent()
            ? plain(value * 100, format.decimals())
            : plain(value, format.decimals());
    return read(format.around(number));
  }

  private static String plain(double value, int decimals) {
    BigDecimal number = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
    int scale = Math.max(number.scale(), Math.min(decimals, DIGITS.getPrecision()));
    return number.setScale(Math.max(0, scale), RoundingMode.UNNECESSARY).toPlainString();
  }
}
