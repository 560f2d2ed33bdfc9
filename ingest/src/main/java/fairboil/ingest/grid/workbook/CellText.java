package fairboil.ingest.grid.workbook;

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
 * @param problem what is wrong with the cell, a clause
 * @param remedy what to do about it, a clause; empty if nothing need be done
 */
record CellText(String text, String shown, Optional<String> problem, String remedy) {

  private static final Pattern ERROR =
      Pattern.compile("#(?:N/A|[A-Z0-9_/]+[!?])|#(?:SPILL|CALC|FIELD|BLOCKED|UNKNOWN)!?");

  /** Carriage returns, as workbooks write them. */
  private static final String RETURN = "_x000D_";

  /** Spreadsheets keep 15 digits; what stands behind them is noise of their arithmetic. */
  private static final MathContext DIGITS = new MathContext(15, RoundingMode.HALF_EVEN);

  /** A cell without a value. */
  private static final CellText NOTHING = read("");

  private static CellText read(String text) {
    return new CellText(text, text, Optional.empty(), "");
  }

  private static CellText unread(String problem, String remedy) {
    return new CellText("", "", Optional.of(problem), remedy);
  }

  /** The text of a cell of a workbook whose dates count from 1904 or not. */
  static CellText of(Cell cell, boolean from1904) {
    CellType type = cell.getType();
    Object value = cell.getValue();
    if (type == CellType.FORMULA && cell.getRawValue() == null) {
      return unread(
          "this cell holds a formula without its result, so it was taken as empty",
          "open the workbook in a spreadsheet program and save it again");
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
    String shown = text.length() > 40 ? text.substring(0, 37) + "..." : text;
    return new CellText(
        "",
        text,
        Optional.of("this cell shows \u201c" + shown + "\u201d, so it was taken as empty"),
        text.equals("#N/A") ? "" : "mend its formula, or empty the cell if there is no value");
  }

  private static CellText number(double value, Cell cell, boolean from1904) {
    FormatCode format = FormatCode.of(cell.getDataFormatString());
    if (!Double.isFinite(value)) {
      return unread("the number of this cell is too large, so it was taken as empty", "check it");
    }
    if (format.showsDate() || format.showsTime()) {
      return Serial.text(value, format, from1904)
          .map(CellText::read)
          .orElseGet(
              () ->
                  unread(
                      "this cell is shown as a date or time but holds "
                          + plain(value, 0)
                          + ", so it was taken as empty",
                      "give the cell a number format, or type the date again"));
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
