package fairboil.ingest.log;

/**
 * Reads a moment as loggers write it: a date, a time, or both, with AM or PM, with an offset from
 * UTC, with decimals of the second after a point, a comma or a colon. What the three parts of a
 * date mean is for {@link DateOrder} to say. For one thread.
 */
final class StampScanner {

  private static final String[] MONTHS = {
    "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"
  };

  /** Which half of the day a time of day is said to be in. */
  enum Half {
    UNSAID,
    AM,
    PM
  }

  private char[] text = {};
  private int position;
  private int end;

  private boolean date;
  private final int[] dateParts = new int[3];
  private final int[] dateDigits = new int[3];
  private char dateMark;
  private boolean monthNamed;

  private int timeParts;
  private int first;
  private int second;
  private double third;
  private int decimals;
  private boolean colonDecimals;
  private boolean millis;
  private Half half = Half.UNSAID;

  private boolean offset;
  private int offsetSeconds;

  /** Whether the whole span is a moment. */
  boolean scan(char[] characters, int from, int to) {
    clear(characters, from, to);
    if (end - position < 3 || end - position > 64) {
      return false;
    }
    date = takeDate();
    if (date) {
      takeJoint();
    }
    boolean time = position < end && takeTime();
    return (date || time) && takeTail() && position == end;
  }

  private void clear(char[] characters, int from, int to) {
    text = characters;
    position = from;
    end = to;
    timeParts = 0;
    first = 0;
    second = 0;
    third = 0;
    decimals = 0;
    colonDecimals = false;
    millis = false;
    half = Half.UNSAID;
    offset = false;
    offsetSeconds = 0;
    monthNamed = false;
  }

  private boolean takeDate() {
    int before = position;
    for (int i = 0; i < 3; i++) {
      int from = position;
      if (!takeDatePart(i) || (i < 2 && !takeDateMark(i))) {
        position = before;
        return false;
      }
      dateDigits[i] = Math.min(dateDigits[i], position - from);
    }
    return true;
  }

  private boolean takeDatePart(int part) {
    int from = position;
    dateParts[part] = takeInteger();
    dateDigits[part] = position - from;
    if (position == from && !monthNamed) {
      dateParts[part] = takeMonth();
      dateDigits[part] = 2;
      monthNamed = dateParts[part] > 0;
      return monthNamed;
    }
    return position > from && dateDigits[part] <= 4;
  }

  private int takeMonth() {
    if (end - position < 4) {
      return 0;
    }
    for (int i = 0; i < MONTHS.length; i++) {
      if (matches(MONTHS[i])) {
        position += 3;
        return i + 1;
      }
    }
    return 0;
  }

  private boolean matches(String lowerCase) {
    if (end - position < lowerCase.length()) {
      return false;
    }
    for (int i = 0; i < lowerCase.length(); i++) {
      if ((text[position + i] | 0x20) != lowerCase.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  private boolean takeDateMark(int part) {
    if (position >= end) {
      return false;
    }
    char c = text[position];
    boolean blank =
        c == ' ' && (monthNamed || (position + 1 < end && isLetter(text[position + 1])));
    boolean mark = c == '-' || c == '/' || c == '.' || blank;
    if (!mark || (part > 0 && c != dateMark)) {
      return false;
    }
    dateMark = c;
    position++;
    return true;
  }

  private static boolean isLetter(char c) {
    return (c | 0x20) >= 'a' && (c | 0x20) <= 'z';
  }

  // Between date and time: a blank, T, comma, underscore or hyphen.
  private void takeJoint() {
    if (position < end && ",;_-Tt".indexOf(text[position]) >= 0) {
      position++;
    }
    skipBlanks();
  }

  private void skipBlanks() {
    while (position < end && LineCells.isBlank(text[position])) {
      position++;
    }
  }

  private boolean takeTime() {
    int from = position;
    first = takeInteger();
    if (position == from || position - from > 6 || !takeColon()) {
      return false;
    }
    from = position;
    second = takeInteger();
    if (position == from || position - from > 2) {
      return false;
    }
    timeParts = 2;
    third = 0;
    if (position < end && text[position] == ':') {
      position++;
      from = position;
      third = takeInteger();
      timeParts = 3;
      millis = position - from == 3;
      if (position == from || position - from > 3) {
        return false;
      }
    }
    takeFraction();
    return true;
  }

  private boolean takeColon() {
    if (position < end && text[position] == ':') {
      position++;
      return true;
    }
    return false;
  }

  // After two parts, m:ss, decimals belong to the second part.
  private void takeFraction() {
    if (position + 1 >= end || !isDigit(text[position + 1])) {
      return;
    }
    char c = text[position];
    boolean colon = c == ':' && timeParts == 3;
    if (c != '.' && c != ',' && !colon) {
      return;
    }
    position++;
    int from = position;
    double scale = 1;
    double fraction = 0;
    while (position < end && isDigit(text[position])) {
      if (position - from < 9) {
        fraction = fraction * 10 + (text[position] - '0');
        scale *= 10;
      }
      position++;
    }
    decimals = Math.min(9, position - from);
    colonDecimals = colon;
    third += fraction / scale;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private int takeInteger() {
    int value = 0;
    while (position < end && isDigit(text[position])) {
      value = Math.min(value, 99_999_999) * 10 + text[position++] - '0';
    }
    return value;
  }

  // AM, PM and an offset from UTC, in this order, with or without blanks.
  private boolean takeTail() {
    if (position == end) {
      return true;
    }
    skipBlanks();
    takeHalf();
    skipBlanks();
    return takeOffset();
  }

  private void takeHalf() {
    if (timeParts == 0 || position >= end) {
      return;
    }
    int letter = text[position] | 0x20;
    int length = matches("a.m.") || matches("p.m.") ? 4 : matches("am") || matches("pm") ? 2 : 0;
    boolean alone = position + 1 == end && (letter == 'a' || letter == 'p');
    if (length > 0 || alone) {
      half = letter == 'a' ? Half.AM : Half.PM;
      position += Math.max(1, length);
    }
  }

  private boolean takeOffset() {
    if (position == end) {
      return true;
    }
    if (matches("utc") || matches("gmt")) {
      position += 3;
      offset = true;
    } else if ((text[position] | 0x20) == 'z') {
      position++;
      offset = true;
    }
    return position == end || takeSignedOffset();
  }

  private boolean takeSignedOffset() {
    char sign = text[position];
    if (sign != '+' && sign != '-' && sign != '\u2212') {
      return false;
    }
    position++;
    int from = position;
    int hours = takeInteger();
    int minutes = 0;
    if (position - from == 4) {
      minutes = hours % 100;
      hours /= 100;
    } else if (takeColon()) {
      minutes = takeInteger();
    }
    offset = true;
    offsetSeconds = (sign == '+' ? 1 : -1) * (hours * 3600 + minutes * 60);
    return position > from && hours <= 18 && minutes < 60;
  }

  boolean hasDate() {
    return date;
  }

  boolean hasTime() {
    return timeParts > 0;
  }

  /** A part of the date, from 0, in the order written. */
  int datePart(int part) {
    return dateParts[part];
  }

  /** How many digits that part has. */
  int dateDigits(int part) {
    return dateDigits[part];
  }

  /** What parts the date. */
  char dateMark() {
    return dateMark;
  }

  boolean isMonthNamed() {
    return monthNamed;
  }

  /** 3 for {@code h:mm:ss}; 2 for {@code h:mm} and {@code m:ss}. */
  int timeParts() {
    return timeParts;
  }

  /**
   * The first part of the time: hours, or minutes where there are two and they are {@code m:ss}.
   */
  int first() {
    return first;
  }

  /** Seconds since midnight or since the start, from two or three parts. */
  double seconds(ClockStyle style) {
    if (millis) {
      return first * 60.0 + second + third / 1000;
    }
    if (timeParts == 3) {
      return hour() * 3600.0 + second * 60.0 + third;
    }
    return style == ClockStyle.MINUTES_FIRST
        ? first * 60.0 + second + third
        : hour() * 3600.0 + second * 60.0;
  }

  private int hour() {
    return switch (half) {
      case UNSAID -> first;
      case AM -> first == 12 ? 0 : first;
      case PM -> first == 12 ? 12 : first + 12;
    };
  }

  /** Whether minutes and seconds are below 60 and, with AM or PM, hours from 1 to 12. */
  boolean isProper() {
    boolean hours = half == Half.UNSAID || (first >= 1 && first <= 12);
    return hours && second < 60 && (third < 61 || millis);
  }

  /** One step of the last digit written, in seconds. */
  double step(ClockStyle style) {
    if (millis) {
      return 0.001;
    }
    boolean seconds = timeParts == 3 || style == ClockStyle.MINUTES_FIRST;
    return seconds ? Math.pow(10, -decimals) : 60;
  }

  int decimals() {
    return decimals;
  }

  /** Whether the third part has three digits: {@code m:ss:mmm}. */
  boolean hasMilliseconds() {
    return millis;
  }

  /** The third part: seconds, or milliseconds of three digits. */
  double third() {
    return third;
  }

  boolean hasColonDecimals() {
    return colonDecimals;
  }

  Half half() {
    return half;
  }

  boolean hasOffset() {
    return offset;
  }

  int offsetSeconds() {
    return offsetSeconds;
  }
}
