package fairboil.ingest.log;

import fairboil.ingest.finding.Place;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds the table in a log. The separator is the one that gives most rows the same number of cells,
 * with numbers and times in them; the header is the last line of text before them.
 */
final class ShapeFinder {

  private static final double MOSTLY = 0.8;
  private static final int LOOK_AHEAD = 4;

  private final Sample sample;
  private final int width;
  private final double score;
  private final boolean[] numeric;

  private ShapeFinder(Sample sample) {
    this.sample = sample;
    this.width = usualWidth(sample.rows());
    this.score = score(sample.rows(), width);
    this.numeric = numericColumns();
  }

  /** The table in the head of a log, or empty if there is none. */
  static Optional<TableShape> find(Place file, Head head) throws IOException {
    ShapeFinder best = null;
    for (Separator separator : Separator.values()) {
      if (head.contains(separator.mark()) || separator.collapses()) {
        ShapeFinder finder = new ShapeFinder(Sample.of(file, head, separator));
        best = finder.isBetterThan(best) ? finder : best;
      }
      if (best != null && best.isSure()) {
        break;
      }
    }
    return best == null ? Optional.empty() : best.shape();
  }

  private boolean isBetterThan(@Nullable ShapeFinder best) {
    return score > 0 && (best == null || score > best.score * 1.02);
  }

  // Nearly every line has as many cells as most, and nearly all hold data: nothing can beat it.
  private boolean isSure() {
    long lines = sample.rows().stream().filter(row -> row.type() == Sample.Type.CELLS).count();
    return score * 1.02 >= lines;
  }

  // Rows count by the share of their cells that look like data.
  private static int usualWidth(List<Sample.Line> rows) {
    Map<Integer, Double> weights = new HashMap<>();
    for (Sample.Line row : rows) {
      if (row.cells().size() > 1 && row.data() > 0) {
        weights.merge(row.cells().size(), share(row), Double::sum);
      }
    }
    return weights.entrySet().stream()
        .max(
            Map.Entry.<Integer, Double>comparingByValue()
                .thenComparing(Map.Entry.<Integer, Double>comparingByKey().reversed()))
        .map(Map.Entry::getKey)
        .orElse(0);
  }

  private static double share(Sample.Line row) {
    return (double) row.data() / row.filled();
  }

  private static double score(List<Sample.Line> rows, int width) {
    double score = 0;
    for (Sample.Line row : rows) {
      if (row.cells().size() == width && row.data() > 0) {
        score += share(row);
      }
    }
    return score;
  }

  private boolean[] numericColumns() {
    int[] data = new int[width];
    int[] text = new int[width];
    for (Sample.Line row : sample.rows()) {
      if (row.cells().size() == width && row.data() > 0) {
        for (int i = 0; i < width; i++) {
          data[i] += row.kind(i).isData() ? 1 : 0;
          text[i] += row.kind(i) == CellKind.TEXT ? 1 : 0;
        }
      }
    }
    boolean[] columns = new boolean[width];
    for (int i = 0; i < width; i++) {
      columns[i] = data[i] > MOSTLY * (data[i] + text[i]);
    }
    return columns;
  }

  private boolean isReading(Sample.Line row) {
    if (row.cells().size() != width) {
      return false;
    }
    boolean some = false;
    for (int i = 0; i < width; i++) {
      if (numeric[i] && row.kind(i) == CellKind.TEXT) {
        return false;
      }
      some |= numeric[i] && row.kind(i).isData();
    }
    return some;
  }

  private Optional<TableShape> shape() {
    int first = firstReading();
    if (first < 0) {
      return Optional.empty();
    }
    int headerRow = headerAbove(first);
    boolean units = headerRow >= 0 && row(headerRow).isUnits() && headerAbove(headerRow) >= 0;
    int named = units ? headerAbove(headerRow) : headerRow;
    Optional<Sample.Line> header = named < 0 ? Optional.empty() : Optional.of(fitted(row(named)));
    boolean inComment = header.isEmpty();
    if (inComment) {
      header = headerInComment(first);
    }
    inComment &= header.isPresent();
    List<String> groups = header.isPresent() ? groupsAbove(named, header.get()) : List.<String>of();
    return Optional.of(
        new TableShape(
            sample.separator(),
            width,
            header,
            inComment,
            groups,
            units ? Optional.of(row(headerRow)) : Optional.empty(),
            headerRow < 0 ? row(first).number() : row(headerRow + 1).number(),
            preamble(first),
            sample.rows().stream().filter(this::isReading).toList()));
  }

  private Sample.Line row(int index) {
    return sample.rows().get(index);
  }

  // A row of numbers in a preamble is not followed by its like.
  private int firstReading() {
    int fallback = -1;
    for (int i = 0; i < sample.rows().size(); i++) {
      if (isReading(row(i))) {
        fallback = fallback < 0 ? i : fallback;
        if (followers(i) >= 0.75) {
          return i;
        }
      }
    }
    return fallback;
  }

  private double followers(int from) {
    int seen = 0;
    int readings = 0;
    for (int i = from + 1; i < sample.rows().size() && seen < LOOK_AHEAD; i++) {
      if (row(i).type() == Sample.Type.CELLS) {
        seen++;
        readings += isReading(row(i)) ? 1 : 0;
      }
    }
    return seen == 0 ? 1 : (double) readings / seen;
  }

  // The nearest line of several cells above, or -1 if that is no line of names or units. Rows of
  // readings with too few cells may stand between.
  private int headerAbove(int below) {
    int i = below - 1;
    int odd = 0;
    while (i >= 0 && (row(i).type() != Sample.Type.CELLS || (isOddReading(row(i)) && odd < 3))) {
      odd += row(i).type() == Sample.Type.CELLS ? 1 : 0;
      i--;
    }
    return i >= 0 && row(i).filled() > 1 && row(i).data() * 2 <= row(i).filled() ? i : -1;
  }

  private static boolean isOddReading(Sample.Line row) {
    return row.data() * 2 > row.filled();
  }

  private Optional<Sample.Line> headerInComment(int first) {
    int i = first - 1;
    while (i >= 0 && row(i).type() == Sample.Type.BLANK) {
      i--;
    }
    if (i < 0 || row(i).type() != Sample.Type.COMMENT) {
      return Optional.empty();
    }
    String text = row(i).text().strip().replaceFirst("^[#%;/]+", "");
    Sample.Line line = resplit(row(i), text, sample.separator());
    return Optional.of(fitted(line))
        .filter(names -> names.cells().size() == width && names.data() * 2 <= width);
  }

  private static Sample.Line resplit(Sample.Line line, String text, Separator separator) {
    LineCells cells = new LineCells();
    CellKind.Judge judge = new CellKind.Judge();
    separator.split(text.toCharArray(), text.length(), cells);
    return line(line, cells.strings(), judge);
  }

  private static Sample.Line line(Sample.Line line, List<String> cells, CellKind.Judge judge) {
    List<CellKind> kinds = cells.stream().map(judge::of).toList();
    return new Sample.Line(
        line.number(), line.text(), Sample.Type.CELLS, cells, kinds, line.quoted());
  }

  // Where blanks part cells, names of several words are parted by two blanks, or hold a bracket.
  private Sample.Line fitted(Sample.Line header) {
    if (!sample.separator().collapses() || header.cells().size() == width) {
      return header;
    }
    String bare = header.text().strip().replaceFirst("^[#%;/]+\\s*", "");
    for (String pattern : List.of("\\s{2,}|\\t", "\\s+(?![(\\[])", "\\s*,\\s*")) {
      List<String> names = List.of(bare.split(pattern, -1));
      if (names.size() == width) {
        return line(header, names, new CellKind.Judge());
      }
    }
    return header;
  }

  // Names over names that repeat: those of the runs that stand side by side.
  private List<String> groupsAbove(int header, Sample.Line names) {
    int above = header <= 0 ? -1 : header - 1;
    if (above < 0 || !repeats(names.cells()) || row(above).cells().size() < 2) {
      return List.<String>of();
    }
    List<String> groups = new ArrayList<>();
    for (String name : row(above).cells()) {
      groups.add(name.isEmpty() && !groups.isEmpty() ? groups.get(groups.size() - 1) : name);
    }
    return groups;
  }

  private static boolean repeats(List<String> names) {
    Set<String> seen = new HashSet<>();
    return names.stream()
        .filter(name -> !name.isEmpty())
        .anyMatch(name -> !seen.add(name.toLowerCase(Locale.ROOT)));
  }

  private List<String> preamble(int first) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < first; i++) {
      lines.add(row(i).text());
    }
    return lines;
  }
}
