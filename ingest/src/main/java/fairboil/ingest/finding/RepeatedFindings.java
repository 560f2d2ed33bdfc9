package fairboil.ingest.finding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Shortens findings that say the same of many cells of a column: the first few stand as they are,
 * the others become one finding with their number and lines.
 */
public final class RepeatedFindings {

  private static final int SHOWN_NOTES = 1;
  private static final int SHOWN_OTHERS = 5;
  private static final int SHOWN_LINES = 10;

  /** What differs from cell to cell: quoted text and numbers. */
  private static final Pattern PARTICULARS = Pattern.compile("\u201c[^\u201d]*\u201d|\\d+");

  private record Kind(Severity severity, String file, Optional<String> column, String said) {}

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
    String said = PARTICULARS.matcher(finding.problem()).replaceAll("");
    return new Kind(finding.severity(), place.file(), place.column(), said);
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
    String lines =
        others.stream()
            .limit(SHOWN_LINES)
            .map(finding -> String.valueOf(finding.place().line().orElse(0)))
            .collect(Collectors.joining(", "));
    String problem =
        String.format(
            Locale.ROOT,
            "likewise on %d more lines (%s%s): %s",
            others.size(),
            lines,
            others.size() > SHOWN_LINES ? " and so on" : "",
            first.problem());
    return new Finding(first.severity(), first.place(), problem, first.remedy(), first.mend());
  }
}
