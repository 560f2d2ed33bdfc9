package fairboil.ingest.log;

/**
 * Reads a number from a span of characters, without making a string of it where it has at most 15
 * significant digits: then both the digits and the power of ten are exact doubles, so that their
 * quotient or product is rounded once and equals what {@link Double#parseDouble} gives (W. D.
 * Clinger, "How to read floating point numbers accurately", PLDI 1990, doi:10.1145/93542.93557).
 * Longer numbers go to {@code parseDouble} itself. For one thread.
 */
final class NumberScanner {

  private static final double[] POWERS = {
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16,
    1e17, 1e18, 1e19, 1e20, 1e21, 1e22
  };

  private static final long MAX_MANTISSA = 999_999_999_999_999L;
  private static final int MAX_EXPONENT = 9999;
  private static final int MAX_LENGTH = 400;

  private double value;
  private int decimals;
  private int length;

  private char[] text = {};
  private int position;
  private int end;
  private long mantissa;
  private boolean isLong;

  /** The number read last. */
  double value() {
    return value;
  }

  /** The power of ten of its last digit, negated: 2 for {@code 19.25}, -1 for {@code 2E1}. */
  int decimals() {
    return decimals;
  }

  /** How many characters it took from the span. */
  int length() {
    return length;
  }

  /** Whether the whole span is one number. */
  boolean scan(char[] characters, int from, int to, char mark) {
    return scanPrefix(characters, from, to, mark) && position == to;
  }

  /** Whether the span starts with a number. */
  boolean scanPrefix(char[] characters, int from, int to, char mark) {
    text = characters;
    position = from;
    end = to;
    boolean negative = takeSign();
    int digitsFrom = position;
    mantissa = 0;
    isLong = to - from > MAX_LENGTH;
    int whole = takeDigits();
    int fraction = 0;
    if (position < end && text[position] == mark) {
      position++;
      fraction = takeDigits();
    }
    if (whole + fraction == 0) {
      return false;
    }
    int mantissaEnd = position;
    int exponent = takeExponent();
    decimals = fraction - exponent;
    length = position - from;
    value = toDouble(negative, digitsFrom, mantissaEnd, exponent, mark);
    return true;
  }

  private boolean takeSign() {
    if (position < end) {
      char c = text[position];
      if (c == '-' || c == '\u2212') {
        position++;
        return true;
      }
      if (c == '+') {
        position++;
      }
    }
    return false;
  }

  private int takeDigits() {
    int from = position;
    while (position < end) {
      int digit = text[position] - '0';
      if (digit < 0 || digit > 9) {
        break;
      }
      if (mantissa > MAX_MANTISSA / 10) {
        isLong = true;
      } else {
        mantissa = mantissa * 10 + digit;
      }
      position++;
    }
    return position - from;
  }

  // An E without digits behind it is not part of the number.
  private int takeExponent() {
    if (position >= end || (text[position] | 0x20) != 'e') {
      return 0;
    }
    int before = position++;
    boolean negative = takeSign();
    int from = position;
    int exponent = 0;
    while (position < end && text[position] >= '0' && text[position] <= '9') {
      exponent = Math.min(MAX_EXPONENT, exponent * 10 + text[position] - '0');
      position++;
    }
    if (position == from) {
      position = before;
      return 0;
    }
    return negative ? -exponent : exponent;
  }

  private double toDouble(boolean negative, int from, int to, int exponent, char mark) {
    double magnitude =
        isLong || Math.abs(decimals) >= POWERS.length
            ? slowly(from, to, exponent, mark)
            : decimals >= 0 ? mantissa / POWERS[decimals] : mantissa * POWERS[-decimals];
    return negative ? -magnitude : magnitude;
  }

  private double slowly(int from, int to, int exponent, char mark) {
    String digits = new String(text, from, to - from).replace(mark, '.');
    return Double.parseDouble(digits + "E" + exponent);
  }
}
