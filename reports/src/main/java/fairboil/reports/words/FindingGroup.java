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
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Findings that say the same of several places, told once. Those that differ only in the number
 * that they start with, such as {@code 13 lone spikes were set aside}, are alike too, and so are
 * those that the same sheet row would mend.
 *
 * @param severity how much they matter
 * @param problem what is wrong, a clause
 * @param remedy what to do about it, a clause; empty where nothing need be done
 * @param places where; at least one, unmodifiable
 * @param mend the sheet row that would mend them, where one would
 */
public record FindingGroup(
    Severity severity, String problem, String remedy, List<Place> places, Optional<SheetRow> mend) {

  private static final Pattern STARTS_WITH_COUNT =
      Pattern.compile("([0-9]{1,9})( .+)", Pattern.DOTALL);

  /** Copies the places. */
  public FindingGroup {
    places = List.copyOf(places);
  }

  /** What alike findings have in common. */
  private static List<Object> likeness(Finding finding) {
    String problem = finding.mend().isPresent() ? "" : withoutCount(finding.problem());
    return List.of(finding.severity(), problem, finding.remedy(), finding.mend());
  }

  private static String withoutCount(String problem) {
    Matcher matcher = STARTS_WITH_COUNT.matcher(problem);
    return matcher.matches() ? matcher.group(2) : problem;
  }

  /** The findings, alike ones together, in the order in which the first of each kind comes. */
  public static List<FindingGroup> of(List<Finding> findings) {
    Map<List<Object>, List<Finding>> groups = new LinkedHashMap<>();
    for (Finding finding : findings) {
      groups.computeIfAbsent(likeness(finding), unseen -> new ArrayList<>()).add(finding);
    }
    return groups.values().stream().map(FindingGroup::together).toList();
  }

  private static FindingGroup together(List<Finding> alike) {
    Finding first = alike.get(0);
    return new FindingGroup(
        first.severity(),
        problem(alike),
        first.remedy(),
        alike.stream().map(Finding::place).toList(),
        first.mend());
  }

  private static String problem(List<Finding> alike) {
    String first = alike.get(0).problem();
    if (alike.stream().allMatch(finding -> finding.problem().equals(first))) {
      return first;
    }
    if (alike.get(0).mend().isPresent()) {
      return first + " (said of the first of these)";
    }
    int[] counts = alike.stream().mapToInt(FindingGroup::count).sorted().toArray();
    return counts[0] + " to " + counts[counts.length - 1] + withoutCount(first);
  }

  private static int count(Finding finding) {
    Matcher matcher = STARTS_WITH_COUNT.matcher(finding.problem());
    return matcher.matches() ? Integer.parseInt(matcher.group(1)) : 0;
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
