package fairboil.reports.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** By which columns the rows of tables are told apart, and which point into other tables. */
final class Keys {

  private static final Map<String, List<String>> PRIMARY =
      Map.of(
          "runs.csv", List.of("run"),
          "builds.csv", List.of("build"),
          "holes.csv", List.of("build", "ring", "hole"),
          "hole_error.csv", List.of("build", "ring"),
          "hole_effect.csv", List.of("response", "ring", "model", "term"),
          "comparisons.csv", List.of("measure", "level", "a", "b", "method"),
          "repeatability.csv", List.of("measure", "level"),
          "claims.csv", List.of("claim"));

  private static final List<Link> LINKS =
      List.of(
          new Link("runs.csv", "builds.csv", List.of("build")),
          new Link("holes.csv", "hole_error.csv", List.of("build", "ring")),
          new Link("hole_error.csv", "builds.csv", List.of("build")));

  private Keys() {}

  /** Columns of one table whose values stand in the columns of the same names of another. */
  record Link(String from, String to, List<String> columns) {}

  /** The columns that tell the rows of a table apart, if they do so in the rows it has. */
  static Optional<List<String>> primary(ResultTable table) {
    return Optional.ofNullable(PRIMARY.get(table.schema().file()))
        .filter(columns -> areKeys(values(table, columns)));
  }

  /** Different from row to row, and nowhere empty. */
  private static boolean areKeys(List<List<String>> values) {
    return new HashSet<>(values).size() == values.size()
        && values.stream().noneMatch(cells -> cells.contains(""));
  }

  /** The links from a table that hold for every row it has. */
  static List<Link> from(ResultTable table, List<ResultTable> others) {
    List<Link> links = new ArrayList<>();
    for (Link link : LINKS) {
      if (link.from().equals(table.schema().file())) {
        others.stream()
            .filter(other -> other.schema().file().equals(link.to()))
            .filter(other -> holds(table, other, link.columns()))
            .forEach(other -> links.add(link));
      }
    }
    return links;
  }

  private static boolean holds(ResultTable table, ResultTable other, List<String> columns) {
    Set<List<String>> there = new HashSet<>(values(other, columns));
    return there.containsAll(values(table, columns));
  }

  private static List<List<String>> values(ResultTable table, List<String> columns) {
    List<List<String>> values = new ArrayList<>();
    for (int row = 0; row < table.rows(); row++) {
      List<String> cells = new ArrayList<>();
      for (String column : columns) {
        cells.add(table.cell(column, row));
      }
      values.add(cells);
    }
    return values;
  }
}
