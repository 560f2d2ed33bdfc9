package fairboil.ingest.grid.workbook;

import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.UnreadableException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;

/** Writes the rows of a tab as CSV, each on the line of its number. */
final class CsvText implements RowSink {

  private static final int MAX_ROW = 1 << 20;

  private static final Pattern BREAKS = Pattern.compile("[\\r\\n]+");

  private final Place place;
  private final StringBuilder text = new StringBuilder();
  private int lines;

  CsvText(Place place) {
    this.place = place;
  }

  @Override
  public void row(int line, List<String> cells) throws UnreadableException {
    if (line <= lines || line > MAX_ROW) {
      throw Damaged.tab(place);
    }
    text.append("\n".repeat(line - lines - 1));
    for (int i = 0; i < cells.size(); i++) {
      text.append(i == 0 ? "" : ",").append(quoted(cells.get(i)));
    }
    text.append('\n');
    lines = line;
  }

  // A line break in a cell would move all lines under it.
  private static String quoted(String cell) {
    String flat = BREAKS.matcher(cell).replaceAll(" ");
    return flat.indexOf(',') < 0 && flat.indexOf('"') < 0
        ? flat
        : '"' + flat.replace("\"", "\"\"") + '"';
  }

  byte[] bytes() {
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
