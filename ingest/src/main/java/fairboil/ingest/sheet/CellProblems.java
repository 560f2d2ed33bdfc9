package fairboil.ingest.sheet;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Collects what is said of cells. The same thing said of many cells of a column is said of the
 * first few, and then once of all the others with their lines.
 */
final class CellProblems {

  private static final int SHOWN_ERRORS = 5;
  private static final int SHOWN_NOTES = 1;
  private static final int SHOWN_LINES = 10;

  private record Kind(Severity severity, String column, String said) {}

  private final Map<Kind, List<Finding>> byKind = new LinkedHashMap<>();

  /** The cell was refused. */
  void refused(Place cell, String problem, String remedy) {
    add(Finding.error(cell, problem, remedy));
  }

  /** The cell was read, with a remark. */
  void remark(Place cell, String remark) {
    add(Finding.note(cell, remark, ""));
  }

  private void add(Finding finding) {
    String said = finding.problem().replaceAll("\u201c[^\u201d]*\u201d", "").replaceAll("\\d+", "");
    String column = finding.place().column().orElse("");
    byKind
        .computeIfAbsent(new Kind(finding.severity(), column, said), kind -> new ArrayList<>())
        .add(finding);
  }

  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    byKind.values().forEach(all -> addTo(findings, all));
    return findings;
  }

  private static void addTo(List<Finding> findings, List<Finding> all) {
    int most = all.get(0).severity() == Severity.ERROR ? SHOWN_ERRORS : SHOWN_NOTES;
    int shown = all.size() <= most + 1 ? all.size() : most;
    findings.addAll(all.subList(0, shown));
    if (shown < all.size()) {
      findings.add(others(all.subList(shown, all.size())));
    }
  }

  private static Finding others(List<Finding> others) {
    Finding first = others.get(0);
    String lines =
        others.stream()
            .limit(SHOWN_LINES)
            .map(finding -> String.valueOf(finding.place().line().orElse(0)))
            .reduce((a, b) -> a + ", " + b)
            .orElse("");
    String problem =
        String.format(
            java.util.Locale.ROOT,
            "likewise in %s (%s %s%s): %s",
            Words.count(others.size(), "more cell"),
            others.size() == 1 ? "line" : "lines",
            lines,
            others.size() > SHOWN_LINES ? " and so on" : "",
            first.problem());
    return new Finding(first.severity(), first.place(), problem, first.remedy(), Optional.empty());
  }
}
