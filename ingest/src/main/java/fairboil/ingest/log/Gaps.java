package fairboil.ingest.log;

/**
 * What parts the cells of a line where blanks do: a letter for each gap. A comma in the header
 * where the rows have a blank shows that the two are not parted alike, even if they happen to have
 * as many cells: {@code time,water,flame,note} over {@code 2017-01-17 16:52:04,20.0,300}.
 */
final class Gaps {

  private static final char COMMA = ',';
  private static final char TAB = 't';
  private static final char BLANK = 'b';

  private Gaps() {}

  /**
   * Whether a header is parted like its rows, or both each in one way from end to end. A date or
   * time may be parted from what follows by a blank where the header has a comma, as in {@code
   * Date, Time, T1} over {@code 1/25/2024 10:00:01 23.8C}, if all such columns are called times.
   */
  static boolean agree(TableShape shape) {
    if (!shape.separator().collapses() || shape.header().isEmpty()) {
      return true;
    }
    String header = of(shape, shape.header().get());
    boolean even = isEven(header);
    for (Sample.Line row : shape.rows()) {
      String gaps = of(shape, row);
      boolean commas = gaps.indexOf(COMMA) >= 0 && header.indexOf(COMMA) < 0;
      boolean alike = gaps.equals(header) || (even && isEven(gaps) && !commas);
      if (endsWithComma(row) || (!alike && !onlyBehindTimes(shape, row, header, gaps))) {
        return false;
      }
    }
    return true;
  }

  private static boolean endsWithComma(Sample.Line row) {
    return row.cells().stream().anyMatch(cell -> cell.endsWith(","));
  }

  private static boolean onlyBehindTimes(
      TableShape shape, Sample.Line row, String header, String gaps) {
    if (gaps.length() != header.length()) {
      return false;
    }
    for (int i = 0; i < row.kinds().size(); i++) {
      boolean stamp = row.kind(i) == CellKind.STAMP;
      boolean differ = i < gaps.length() && gaps.charAt(i) != header.charAt(i);
      if ((stamp || differ) && !(stamp && isTime(shape.name(i)))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isTime(String name) {
    return TimeWords.someOf(HeaderName.words(name));
  }

  private static boolean isEven(String gaps) {
    return gaps.chars().distinct().count() <= 1;
  }

  // Names that were put together of several words, and quoted lines, are parted in one way.
  private static String of(TableShape shape, Sample.Line line) {
    String gaps = line.quoted() ? "" : gaps(bare(line), shape.separator());
    boolean whole = gaps.length() == line.cells().size() - 1;
    return whole ? gaps : String.valueOf(BLANK).repeat(Math.max(0, line.cells().size() - 1));
  }

  private static String bare(Sample.Line line) {
    return line.text().strip().replaceFirst("^[#%;/]+\\s*", "");
  }

  private static String gaps(String text, Separator separator) {
    StringBuilder gaps = new StringBuilder();
    int i = 0;
    while (i < text.length()) {
      int end = i;
      while (end < text.length() && separator.parts(text.charAt(end))) {
        end++;
      }
      if (end > i) {
        boolean inside = i > 0 && end < text.length();
        append(text.substring(i, end), separator, inside, gaps);
      }
      i = end + 1;
    }
    return gaps.toString();
  }

  // Of several commas in a row each but one holds an empty cell.
  private static void append(String run, Separator separator, boolean inside, StringBuilder gaps) {
    int commas = separator.takesComma() ? (int) run.chars().filter(c -> c == COMMA).count() : 0;
    if (commas > 0) {
      gaps.append(String.valueOf(COMMA).repeat(inside ? commas : commas - 1));
    } else if (inside) {
      gaps.append(run.indexOf('\t') >= 0 ? TAB : BLANK);
    }
  }
}
