package fairboil.ingest.finding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Shortens findings that say the same of many cells of a column: the first few stand as they are,
 * the others become one finding with their number and lines.
 */
public final class RepeatedFindings {

  private static final int SHOWN_NOTES = 1;
  private static final int SHOWN_OTHERS = 5;
  private static final int SHOWN_LINES = 10;

  private static final Template LIKEWISE =
      Template.of("likewise on {count|more line} ({list}): {clause}");
  private static final Template LIKEWISE_ON_MANY =
      Template.of("likewise on {count|more line} ({list} and so on): {clause}");

  // What is told apart; what differs from cell to cell is not.
  private record Kind(Severity severity, String file, Optional<String> column, Object said) {}

  private RepeatedFindings() {}

  /** The findings, shortened; those with a row that would mend them are kept as they are. */
  public static List<Finding> shortened(List<Finding> findings) {
    List<Finding> shortened = new ArrayList<>();
    Map<Kind, List<Finding>> byKind = new LinkedHashMap<>();
    for (Finding finding : findings) {
      if (finding.mend().isPresent() || finding.place().line().isEmpty()) {
        shortened.add(finding);
      } else {
        byKind.computeIfAbsent(kind(finding), kind -> new ArrayList<>()).add(finding);
      }
    }
    byKind.values().forEach(alike -> addTo(shortened, alike));
    return shortened;
  }

  private static Kind kind(Finding finding) {
    Place place = finding.place();
    return new Kind(finding.severity(), place.file(), place.column(), finding.problem().kind());
  }

  private static void addTo(List<Finding> shortened, List<Finding> alike) {
    int most = alike.get(0).severity() == Severity.NOTE ? SHOWN_NOTES : SHOWN_OTHERS;
    int shown = alike.size() <= most + 1 ? alike.size() : most;
    shortened.addAll(alike.subList(0, shown));
    if (shown < alike.size()) {
      shortened.add(others(alike.subList(shown, alike.size())));
    }
  }

  private static Finding others(List<Finding> others) {
    Finding first = others.get(0);
    List<Argument> lines =
        others.stream()
            .limit(SHOWN_LINES)
            .map(finding -> Argument.number(finding.place().line().orElse(0), 0))
            .toList();
    Template likewise = others.size() > SHOWN_LINES ? LIKEWISE_ON_MANY : LIKEWISE;
    Message problem =
        likewise.with(
            Argument.count(others.size()), Argument.list(lines), Argument.clause(first.problem()));
    return new Finding(first.severity(), first.place(), problem, first.remedy(), first.mend());
  }
}
