package fairboil.ingest.grid.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Fills merged cells: what stands in one holds for each row that it reaches over, if something else
 * stands in that row. For the rows of one tab, in order.
 */
final class Merges {

  private static final int MOST = 1_000;

  private record Open(Merge merge, String text) {}

  private final Iterator<Merge> waiting;
  private final List<Open> open = new ArrayList<>();
  private final List<String> filled = new ArrayList<>();
  private @Nullable Merge next;

  Merges(List<Merge> merges) {
    waiting = merges.stream().limit(MOST).sorted(Comparator.comparing(Merge::firstRow)).iterator();
    next = waiting.hasNext() ? waiting.next() : null;
  }

  /** Fills the cells of a row. */
  void fill(int row, List<String> cells) {
    open.removeIf(merged -> merged.merge().lastRow() < row);
    if (cells.stream().allMatch(String::isEmpty)) {
      return;
    }
    open.forEach(merged -> fill(merged, cells));
    while (next != null && next.firstRow() <= row) {
      if (next.firstRow() == row && next.column() < cells.size()) {
        open.add(new Open(next, cells.get(next.column())));
      }
      next = waiting.hasNext() ? waiting.next() : null;
    }
  }

  private void fill(Open merged, List<String> cells) {
    int column = merged.merge().column();
    if (merged.text().isEmpty() || (column < cells.size() && !cells.get(column).isEmpty())) {
      return;
    }
    while (cells.size() <= column) {
      cells.add("");
    }
    cells.set(column, merged.text());
    if (!filled.contains(merged.merge().written())) {
      filled.add(merged.merge().written());
    }
  }

  /** The ranges that were filled, as written. */
  List<String> filled() {
    return filled;
  }
}
