package fairboil.ingest.quantity;

import fairboil.ingest.finding.Argument;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads dates: ISO 8601 ({@code 2026-03-14}), day or month first where only one of them can be
 * meant, and months in words. {@code 03/04/2026} is refused with what to type.
 */
public final class DateText {

  private static final Map<String, Integer> MONTHS =
      Map.ofEntries(
          Map.entry("jan", 1),
          Map.entry("feb", 2),
          Map.entry("mar", 3),
          Map.entry("apr", 4),
          Map.entry("may", 5),
          Map.entry("jun", 6),
          Map.entry("jul", 7),
          Map.entry("aug", 8),
          Map.entry("sep", 9),
          Map.entry("oct", 10),
          Map.entry("nov", 11),
          Map.entry("dec", 12));

  private static final String MONTH = "(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*";

  private static final Pattern YEAR_FIRST =
      Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
  private static final Pattern YEAR_LAST =
      Pattern.compile("(\\d{1,2})([-/.])(\\d{1,2})\\2(\\d{4}|\\d{2})");
  private static final Pattern DAY_AND_WORD =
      Pattern.compile("(\\d{1,2})(?:st|nd|rd|th)?[-. /]*" + MONTH + "[-., /]*(\\d{4})");
  private static final Pattern WORD_AND_DAY =
      Pattern.compile(MONTH + "[-. /]*(\\d{1,2})(?:st|nd|rd|th)?[-., /]+(\\d{4})");
  private static final Pattern MIDNIGHT = Pattern.compile("[T ]0?0:00(?::00)?(?:\\.0+)?$");

  /** What spreadsheets turn entries such as {@code 5-6}, {@code 6/5} or {@code 1/2} into. */
  private static final Pattern SHORT_DATE =
      Pattern.compile(
          "\\d{1,2}[-./ ]+" + MONTH + "(?:[-./ ]+\\d{2,4})?|" + MONTH + "[-./ ]+\\d{1,4}");

  private static final Pattern DATE_AND_TIME =
      Pattern.compile("(\\d{1,4}[-/.]\\d{1,2}[-/.]\\d{1,4})(?:T|[ -]+|, ?)(\\d{1,2}[:h].*)");

  private DateText() {}

  /** Reads a date. */
  public static Reading<LocalDate> read(String text) {
    String tidy = Tidy.text(text);
    return Tidy.<LocalDate>tooLong(tidy)
        .orElseGet(() -> date(MIDNIGHT.matcher(tidy).replaceFirst("")));
  }

  private static Reading<LocalDate> date(String tidy) {
    if (Tidy.isNothing(tidy)) {
      return new Reading.Missing<>();
    }
    List<LocalDate> dates = meanings(tidy.toLowerCase(Locale.ROOT));
    return switch (dates.size()) {
      case 1 -> Reading.Read.of(dates.get(0));
      case 0 ->
          new Reading.Refused<>(ReadingSays.NO_DATE.with(Argument.cell(tidy)), ReadingSays.AS_DATE);
      default ->
          new Reading.Refused<>(
              ReadingSays.EITHER_DATE.with(
                  Argument.cell(tidy), Argument.date(dates.get(0)), Argument.date(dates.get(1))),
              ReadingSays.TYPE_EITHER_DATE.with(
                  Argument.date(dates.get(0)), Argument.date(dates.get(1))));
    };
  }

  /** The dates that a tidy lower-case text may mean, earliest first. */
  static List<LocalDate> meanings(String tidy) {
    Set<LocalDate> dates = new TreeSet<>();
    Matcher yearFirst = YEAR_FIRST.matcher(tidy);
    Matcher yearLast = YEAR_LAST.matcher(tidy);
    Matcher dayAndWord = DAY_AND_WORD.matcher(tidy);
    Matcher wordAndDay = WORD_AND_DAY.matcher(tidy);
    if (yearFirst.matches()) {
      add(dates, yearFirst.group(1), yearFirst.group(2), yearFirst.group(3));
    } else if (yearLast.matches()) {
      addNumbers(dates, yearLast);
    } else if (dayAndWord.matches()) {
      add(dates, dayAndWord.group(3), month(dayAndWord.group(2)), dayAndWord.group(1));
    } else if (wordAndDay.matches()) {
      add(dates, wordAndDay.group(3), month(wordAndDay.group(1)), wordAndDay.group(2));
    }
    return new ArrayList<>(dates);
  }

  // With points the day comes first wherever dates are written so; a year of two digits may stand
  // at either end.
  private static void addNumbers(Set<LocalDate> dates, Matcher matcher) {
    String first = matcher.group(1);
    String second = matcher.group(3);
    String last = matcher.group(4);
    boolean shortYear = last.length() == 2;
    String year = shortYear ? "20" + last : last;
    add(dates, year, second, first);
    if (!matcher.group(2).equals(".")) {
      add(dates, year, first, second);
      if (shortYear && first.length() == 2) {
        add(dates, "20" + first, second, last);
      }
    }
  }

  private static String month(String word) {
    return String.valueOf(MONTHS.get(word.substring(0, 3)));
  }

  private static void add(Set<LocalDate> dates, String year, String month, String day) {
    try {
      dates.add(
          LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)));
    } catch (DateTimeException e) {
      // no such day: not what is meant
    }
  }

  /** Whether a tidy text looks like an entry that a spreadsheet turned into a date. */
  static boolean looksMadeBySpreadsheet(String tidy) {
    if (!mayBeDate(tidy)) {
      return false;
    }
    String lower = MIDNIGHT.matcher(tidy).replaceFirst("").toLowerCase(Locale.ROOT);
    return SHORT_DATE.matcher(lower).matches()
        || YEAR_FIRST.matcher(lower).matches()
        || YEAR_LAST.matcher(lower).matches();
  }

  // A date has two marks between digits, or a month of at least three letters.
  private static boolean mayBeDate(String tidy) {
    int marks = 0;
    int letters = 0;
    for (int i = 0; i < tidy.length(); i++) {
      char c = tidy.charAt(i);
      marks += c == '-' || c == '/' || c == '.' ? 1 : 0;
      letters += Character.isLetter(c) ? 1 : 0;
    }
    return marks > 1 || letters > 2;
  }

  /** The date at the start of a date and time, and what follows it. */
  static Optional<String[]> split(String tidy) {
    Matcher matcher = DATE_AND_TIME.matcher(tidy);
    return matcher.matches()
        ? Optional.of(new String[] {matcher.group(1), matcher.group(2)})
        : Optional.empty();
  }
}
