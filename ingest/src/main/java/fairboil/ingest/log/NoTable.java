package fairboil.ingest.log;

import java.util.List;
import java.util.regex.Pattern;

/** Says why there is no table in a log. */
final class NoTable {

  private static final Pattern PAIRS =
      Pattern.compile("\\p{L}\\w*\\s*[=:]\\s*[-+]?\\d[\\d.,]*\\D+\\p{L}\\w*\\s*[=:]\\s*[-+]?\\d");

  private NoTable() {}

  static void tell(Replay replay, Remarks remarks) {
    String text = new String(replay.ahead(), 0, Math.min(replay.length(), 100_000));
    long lines = text.lines().filter(line -> !line.isBlank()).count();
    if (lines == 0) {
      remarks.error(remarks.file(), "the file is empty", "copy the log again from the logger");
    } else if (isHeaderOnly(text)) {
      remarks.error(
          remarks.line(1),
          "the file has a header but no data rows",
          "copy the log again from the logger");
    } else if (isListOfPairs(text)) {
      remarks.error(
          remarks.line(1),
          "each line is a list of names and values, such as T1=23.5, not the row of a table",
          "have the logger write the names once, in a first line, and only the values below it,"
              + " with commas between them");
    } else {
      remarks.error(
          remarks.line(1),
          "no table of times and temperatures was found: no separator gives several lines the same"
              + " number of cells with numbers in them",
          "export the log as CSV, one row for each reading, with a time column");
    }
  }

  // t=1000 T1=23.5 T2=99.1 on most lines.
  private static boolean isListOfPairs(String text) {
    List<String> lines = text.lines().filter(line -> !line.isBlank()).limit(200).toList();
    long lists = lines.stream().filter(line -> PAIRS.matcher(line).find()).count();
    return lists * 2 > lines.size();
  }

  // A few lines with separators, and nothing after the last of them.
  private static boolean isHeaderOnly(String text) {
    String[] lines = text.lines().filter(line -> !line.isBlank()).toArray(String[]::new);
    String last = lines[lines.length - 1];
    return lines.length <= 40 && last.matches("(?s).*[\\p{L}].*[,;\\t|].*");
  }
}
