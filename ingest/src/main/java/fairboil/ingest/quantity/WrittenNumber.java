package fairboil.ingest.quantity;

import fairboil.ingest.finding.Argument;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number at the start of a tidy text: {@code 24}, {@code 20,5}, {@code 5,280}, {@code .5}, {@code
 * 1.2e3}, {@code 3/16}, {@code 13 3/16}, {@code 1-3/8}.
 *
 * @param value its value
 * @param resolution one step of its last digit, or of its denominator
 * @param text the text that it took
 */
record WrittenNumber(double value, double resolution, String text) {

  private static final Pattern MIXED =
      Pattern.compile("([+-]?)(\\d{1,9})(?: ?- ?| )(\\d{1,9}) ?/ ?(\\d{1,9})(?![\\d.,/])");
  private static final Pattern FRACTION =
      Pattern.compile("([+-]? ?)(\\d{1,9}) ?/ ?(\\d{1,9})(?![\\d.,/])");
  private static final Pattern SPACED = Pattern.compile("[+-]?\\d{1,3}(?: \\d{3})+(?![\\d/])");
  private static final Pattern DECIMAL =
      Pattern.compile("[+-]?(?:\\d[\\d.,]*|[.,]\\d+)(?:[eE][+-]?\\d{1,3})?");

  /** A comma or point that could be a decimal mark or part thousands. */
  private static final Pattern EITHER = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");

  private static final Pattern SIGN_AND_EXPONENT = Pattern.compile("^[+-]|[eE].*$");

  private static final Pattern GROUPED =
      Pattern.compile("\\d{1,3}(?:,\\d{3}){2,}|\\d{1,3}(?:\\.\\d{3}){2,}");
  private static final Pattern GROUPED_DECIMAL =
      Pattern.compile("\\d{1,3}(?:,\\d{3})+\\.\\d+|\\d{1,3}(?:\\.\\d{3})+,\\d+");
  private static final Pattern PLAIN = Pattern.compile("\\d+[.,]?\\d*|[.,]\\d+");

  /** The number at the start of a text; missing if the text starts with none. */
  static Reading<WrittenNumber> at(String text, DecimalMark mark) {
    int end = endOfSimple(text, mark);
    if (end > 0) {
      String simple = text.substring(0, end);
      return number(simple, simple);
    }
    Matcher mixed = MIXED.matcher(text);
    if (mixed.lookingAt()) {
      return fraction(mixed, Double.parseDouble(mixed.group(2)), 3);
    }
    Matcher fraction = FRACTION.matcher(text);
    if (fraction.lookingAt()) {
      return fraction(fraction, 0, 2);
    }
    Matcher spaced = SPACED.matcher(text);
    if (spaced.lookingAt()) {
      String digits = spaced.group().replace(" ", "");
      return Reading.Read.of(new WrittenNumber(Double.parseDouble(digits), 1, spaced.group()));
    }
    Matcher decimal = DECIMAL.matcher(text);
    return decimal.lookingAt() ? decimal(decimal.group(), mark) : new Reading.Missing<>();
  }

  /** The length of a number of few digits with at most a point in it, if that is all there is. */
  static int endOfSimple(String text, DecimalMark mark) {
    int start = text.startsWith("-") ? 1 : 0;
    int whole = digits(text, start);
    int point = start + whole;
    boolean hasPoint = point < text.length() && text.charAt(point) == '.';
    int decimals = hasPoint ? digits(text, point + 1) : 0;
    int end = hasPoint ? point + 1 + decimals : point;
    boolean complete = whole > 0 && whole < 10 && decimals < 10 && (!hasPoint || decimals > 0);
    boolean either = decimals == 3 && mark == DecimalMark.COMMA;
    return complete && !either && end == text.length() ? end : 0;
  }

  private static int digits(String text, int from) {
    int end = from;
    while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
      end++;
    }
    return end - from;
  }

  private static Reading<WrittenNumber> fraction(Matcher matcher, double whole, int numerator) {
    double top = Double.parseDouble(matcher.group(numerator));
    double bottom = Double.parseDouble(matcher.group(numerator + 1));
    if (bottom == 0) {
      return new Reading.Refused<>(
          ReadingSays.BY_ZERO.with(Argument.cell(matcher.group())), ReadingSays.NUMBER_MEANT);
    }
    double value = whole + top / bottom;
    boolean negative = matcher.group(1).startsWith("-");
    return Reading.Read.of(
        new WrittenNumber(negative ? -value : value, 1 / bottom, matcher.group()));
  }

  private static Reading<WrittenNumber> decimal(String found, DecimalMark mark) {
    String text = withoutEndingMark(found);
    String unsigned = SIGN_AND_EXPONENT.matcher(text).replaceAll("");
    if (EITHER.matcher(unsigned).matches()) {
      return eitherMark(text, unsigned, mark);
    }
    if (GROUPED.matcher(unsigned).matches()) {
      return number(text, text.replaceAll("[.,]", ""));
    }
    if (GROUPED_DECIMAL.matcher(unsigned).matches()) {
      boolean comma = unsigned.lastIndexOf(',') > unsigned.lastIndexOf('.');
      return number(text, withPoint(text.replace(comma ? "." : ",", "")));
    }
    if (PLAIN.matcher(unsigned).matches()) {
      return number(text, withPoint(text));
    }
    return new Reading.Refused<>(
        ReadingSays.NO_NUMBER.with(Argument.cell(text)), ReadingSays.ONE_MARK);
  }

  // "24," or "24." at the end of words is a number and a mark of the sentence.
  private static String withoutEndingMark(String found) {
    char last = found.charAt(found.length() - 1);
    return last == '.' || last == ',' ? found.substring(0, found.length() - 1) : found;
  }

  private static Reading<WrittenNumber> eitherMark(String text, String unsigned, DecimalMark mark) {
    boolean comma = unsigned.indexOf(',') >= 0;
    if (comma && mark == DecimalMark.POINT) {
      return number(text, text.replace(",", ""));
    }
    if (comma ? mark == DecimalMark.COMMA : mark != DecimalMark.COMMA) {
      return number(text, withPoint(text));
    }
    String thousands = unsigned.replaceAll("[.,]", "");
    String decimals = unsigned.replace(',', '.').replaceFirst("0+$", "").replaceFirst("\\.$", ".0");
    return new Reading.Refused<>(
        ReadingSays.EITHER_NUMBER.with(
            Argument.cell(unsigned), Argument.name(thousands), Argument.name(decimals)),
        ReadingSays.TYPE_EITHER.with(
            Argument.name(thousands), Argument.name(decimals.replace('.', comma ? ',' : '.'))));
  }

  private static String withPoint(String text) {
    return text.replace(',', '.');
  }

  private static Reading<WrittenNumber> number(String text, String plain) {
    double value = Double.parseDouble(plain);
    if (!Double.isFinite(value)) {
      return new Reading.Refused<>(
          ReadingSays.TOO_LARGE.with(Argument.cell(text)), ReadingSays.CHECK_NUMBER);
    }
    return Reading.Read.of(new WrittenNumber(value, step(plain), text));
  }

  /** One step of the last digit of a plain decimal number. */
  static double step(String plain) {
    int end = Math.max(plain.indexOf('e'), plain.indexOf('E'));
    String digits = end < 0 ? plain : plain.substring(0, end);
    int exponent = end < 0 ? 0 : Integer.parseInt(plain.substring(end + 1));
    int point = digits.indexOf('.');
    int decimals = point < 0 ? 0 : digits.length() - point - 1;
    return Math.pow(10, exponent - (double) decimals);
  }
}
