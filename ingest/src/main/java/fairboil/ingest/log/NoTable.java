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
      remarks.error(remarks.file(), TableSays.EMPTY.with(), TableSays.COPY_AGAIN.with());
    } else if (isHeaderOnly(text)) {
      remarks.error(remarks.line(1), TableSays.HEADER_ONLY.with(), TableSays.COPY_AGAIN.with());
    } else if (isListOfPairs(text)) {
      remarks.error(remarks.line(1), TableSays.PAIRS.with(), TableSays.NAMES_ONCE.with());
    } else {
      remarks.error(remarks.line(1), TableSays.NO_TABLE.with(), TableSays.EXPORT_CSV.with());
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
