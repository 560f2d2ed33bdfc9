package fairboil.ingest.grid.workbook;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What a number format shows of a number, as far as it tells what was meant: a date, a time, a
 * share, decimals, words around the number such as {@code 0.0" g"}. After ECMA-376 part 1, 18.8.31.
 */
final class FormatCode {

  private static final Pattern ELAPSED = Pattern.compile("h+|m+|s+", Pattern.CASE_INSENSITIVE);
  private static final Pattern HALVES = Pattern.compile("(?i)am/pm|a/p");
  private static final Pattern GENERAL = Pattern.compile("(?i)general");

  private final String code;
  private int at;
  private boolean ended;

  private boolean day;
  private boolean hour;
  private boolean minuteOrMonth;
  private boolean second;
  private boolean halves;
  private boolean elapsed;
  private boolean percent;
  private boolean digits;
  private boolean point;
  private boolean complex;
  private int decimals;
  private final StringBuilder before = new StringBuilder();
  private final StringBuilder after = new StringBuilder();

  private FormatCode(String code) {
    this.code = code;
  }

  /** What a format shows; nothing in particular if there is none. */
  static FormatCode of(String code) {
    FormatCode format = new FormatCode(code == null ? "" : code);
    while (!format.ended && format.at < format.code.length()) {
      format.next();
    }
    return format;
  }

  // One element of the first section: the others are for negative numbers, zero and text.
  private void next() {
    char c = code.charAt(at);
    switch (c) {
      case ';' -> ended = true;
      case '"' -> quoted();
      case '\\' -> escaped();
      case '_', '*' -> at += 2;
      case '[' -> bracket();
      case '0', '#', '?' -> digit(c);
      case '.' -> {
        point = true;
        at++;
      }
      case ',' -> at++;
      case '%' -> {
        percent = true;
        literal("%");
        at++;
      }
      case '@' -> at++;
      default -> letterOrLiteral(c);
    }
  }

  private void quoted() {
    int end = code.indexOf('"', at + 1);
    int close = end < 0 ? code.length() : end;
    literal(code.substring(at + 1, close));
    at = close + 1;
  }

  private void escaped() {
    literal(at + 1 < code.length() ? code.substring(at + 1, at + 2) : "");
    at += 2;
  }

  // [h] is a duration; [$€-407] a currency; [<10] a condition; [Red] a colour.
  private void bracket() {
    int end = code.indexOf(']', at);
    int close = end < 0 ? code.length() : end;
    String inside = code.substring(at + 1, close);
    if (ELAPSED.matcher(inside).matches()) {
      elapsed = true;
      second |= inside.toLowerCase(Locale.ROOT).startsWith("s");
    } else if (inside.startsWith("$")) {
      literal(inside.substring(1).replaceFirst("-[0-9A-Fa-f,]*$", ""));
    } else if (!inside.isEmpty() && "<>=".indexOf(inside.charAt(0)) >= 0) {
      complex = true;
    }
    at = close + 1;
  }

  private void digit(char c) {
    complex |= after.length() > 0; // words between digits
    digits = true;
    decimals += point && c == '0' ? 1 : 0;
    at++;
  }

  private void letterOrLiteral(char c) {
    var marks = HALVES.matcher(code).region(at, code.length());
    var general = GENERAL.matcher(code).region(at, code.length());
    if (marks.lookingAt()) {
      halves = true;
      at = marks.end();
    } else if (general.lookingAt()) {
      digits = true;
      at = general.end();
    } else {
      letter(Character.toLowerCase(c));
      at++;
    }
  }

  private void letter(char c) {
    switch (c) {
      case 'y', 'd' -> day = true;
      case 'm' -> minuteOrMonth = true;
      case 'h' -> hour = true;
      case 's' -> second = true;
      case 'e' -> {
        complex = true;
        point = false;
        decimals = 0;
        at++; // and its sign
      }
      case '/' -> complex = true; // fractions; between days and months it does not matter
      default -> literal(String.valueOf(c));
    }
  }

  private void literal(String text) {
    (digits ? after : before).append(text);
  }

  /** Whether it shows the day of a date. */
  boolean showsDate() {
    return day || (minuteOrMonth && !hour && !second && !elapsed);
  }

  /** Whether it shows a time of day or a duration. */
  boolean showsTime() {
    return hour || second || halves || elapsed;
  }

  /** Whether it shows how long something took: {@code [h]:mm:ss}. */
  boolean isElapsed() {
    return elapsed;
  }

  /** Whether it shows am or pm. */
  boolean hasHalves() {
    return halves;
  }

  /** Whether it shows the hours of a time. */
  boolean showsHours() {
    return hour || halves;
  }

  /** Whether it shows seconds. */
  boolean showsSeconds() {
    return second;
  }

  /** Whether it shows a number as a percentage. */
  boolean isPercent() {
    return percent;
  }

  /** How many decimals it shows at least. */
  int decimals() {
    return decimals;
  }

  /** The number with the words around it. */
  String around(String number) {
    if (complex || !digits) {
      return percent ? number + "%" : number;
    }
    return before + number + after;
  }
}
