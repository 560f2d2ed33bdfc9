package fairboil.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A sheet being written: comma, quotes where they are needed, one line a row. */
final class SheetText {

  private final StringBuilder text = new StringBuilder();
  private final int width;

  SheetText(String... header) {
    width = header.length;
    row((Object[]) header);
  }

  /** The same sheet under a comment line. */
  SheetText under(String comment) {
    text.insert(0, "# " + comment + "\n");
    return this;
  }

  /** Adds a row. */
  SheetText row(Object... cells) {
    if (cells.length != width) {
      throw new IllegalArgumentException(
          "a row of " + cells.length + " cells in a sheet of " + width + ": " + List.of(cells));
    }
    List<String> quoted = new ArrayList<>();
    for (Object cell : cells) {
      quoted.add(quoted(cell.toString()));
    }
    text.append(quoted.stream().collect(Collectors.joining(",", "", "\n")));
    return this;
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
