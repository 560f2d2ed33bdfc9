package fairboil.ingest.grid.workbook;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Cells that were merged.
 *
 * @param firstRow the first row, from 1
 * @param lastRow the last row
 * @param column the leftmost column, from 0: only it has a value
 * @param written the range as written, such as {@code A2:A6}
 */
record Merge(int firstRow, int lastRow, int column, String written) {

  private static final Pattern RANGE =
      Pattern.compile("([A-Z]{1,3})(\\d{1,7}):([A-Z]{1,3})(\\d{1,7})");

  private static final int ALPHABET = 26;

  static Optional<Merge> of(String range) {
    Matcher matcher = RANGE.matcher(range);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    int column =
        matcher.group(1).chars().reduce(0, (sum, letter) -> sum * ALPHABET + letter - 'A' + 1);
    int first = Integer.parseInt(matcher.group(2));
    int last = Integer.parseInt(matcher.group(4));
    return Optional.of(new Merge(first, last, column - 1, range));
  }
}
