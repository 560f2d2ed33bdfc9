package fairboil.reports.words;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.finding.SheetRow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Findings that say the same of several places, told once.
 *
 * @param severity how much they matter
 * @param problem what is wrong, a clause
 * @param remedy what to do about it, a clause; empty where nothing need be done
 * @param places where; at least one, unmodifiable
 * @param mend the sheet row that would mend them, where one would
 */
public record FindingGroup(
    Severity severity, String problem, String remedy, List<Place> places, Optional<SheetRow> mend) {

  /** Copies the places. */
  public FindingGroup {
    places = List.copyOf(places);
  }

  private record Likeness(
      Severity severity, String problem, String remedy, Optional<SheetRow> mend) {}

  /** The findings, alike ones together, in the order in which the first of each kind comes. */
  public static List<FindingGroup> of(List<Finding> findings) {
    Map<Likeness, List<Place>> groups = new LinkedHashMap<>();
    for (Finding finding : findings) {
      Likeness likeness =
          new Likeness(finding.severity(), finding.problem(), finding.remedy(), finding.mend());
      groups.computeIfAbsent(likeness, unseen -> new ArrayList<>()).add(finding.place());
    }
    return groups.entrySet().stream()
        .map(
            entry ->
                new FindingGroup(
                    entry.getKey().severity(),
                    entry.getKey().problem(),
                    entry.getKey().remedy(),
                    entry.getValue(),
                    entry.getKey().mend()))
        .toList();
  }

  /** How many findings of each severity there are, such as {@code 1 error and 3 notes}. */
  public static String counts(List<Finding> findings) {
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long count = findings.stream().filter(finding -> finding.severity() == severity).count();
      if (count > 0) {
        counts.add(Plural.of(count, severity.label()));
      }
    }
    return counts.isEmpty() ? "no findings" : Plural.list(counts);
  }
}
