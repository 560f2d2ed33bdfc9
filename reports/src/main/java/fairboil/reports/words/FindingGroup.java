package fairboil.reports.words;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Fix;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.finding.Template;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Findings that say the same of several places, said once. Those that differ only in their counts,
 * such as {@code 13 lone spikes were set aside}, are alike too, and so are those that the same row
 * would settle.
 *
 * @param severity how much they matter
 * @param problem what is wrong, a clause
 * @param remedy what to do about it, a clause; {@link Message#NONE} where nothing need be done
 * @param places where; at least one, unmodifiable
 * @param mend what to type where, where that would settle them
 */
public record FindingGroup(
    Severity severity, Message problem, Message remedy, List<Place> places, Optional<Fix> mend) {

  private static final Argument ANY_COUNT = Argument.count(0);
  private static final Template OF_THE_FIRST = Template.of("{clause} (said of the first of these)");

  /** Copies the places. */
  public FindingGroup {
    places = List.copyOf(places);
  }

  /** The findings, alike ones together, in the order in which the first of each kind comes. */
  public static List<FindingGroup> of(List<Finding> findings) {
    Map<List<Object>, List<Finding>> groups = new LinkedHashMap<>();
    for (Finding finding : findings) {
      groups.computeIfAbsent(likeness(finding), unseen -> new ArrayList<>()).add(finding);
    }
    return groups.values().stream().map(FindingGroup::together).toList();
  }

  /** What alike findings have in common. */
  private static List<Object> likeness(Finding finding) {
    Message said =
        finding.mend().isPresent() ? Message.NONE : finding.problem().map(FindingGroup::anyCount);
    return List.of(finding.severity(), said, finding.remedy(), finding.mend());
  }

  private static Argument anyCount(Argument argument) {
    return argument instanceof Argument.Count ? ANY_COUNT : argument;
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

  private static Message problem(List<Finding> alike) {
    Message first = alike.get(0).problem();
    if (alike.stream().allMatch(finding -> finding.problem().equals(first))) {
      return first;
    }
    return alike.get(0).mend().isPresent()
        ? OF_THE_FIRST.with(Argument.clause(first))
        : withRanges(alike.stream().map(Finding::problem).toList());
  }

  /** The message of all, each of its counts from the fewest to the most. */
  private static Message withRanges(List<Message> alike) {
    Message first = alike.get(0);
    List<Argument> arguments = new ArrayList<>();
    for (int i = 0; i < first.arguments().size(); i++) {
      int at = i;
      arguments.add(range(alike.stream().map(each -> each.arguments().get(at)).toList()));
    }
    return new Message(first.template(), arguments);
  }

  private static Argument range(List<Argument> alike) {
    Argument first = alike.get(0);
    if (first instanceof Argument.Count) {
      List<Argument.Count> counts = alike.stream().map(Argument.Count.class::cast).toList();
      return new Argument.Count(
          counts.stream().mapToLong(Argument.Count::low).min().orElseThrow(),
          counts.stream().mapToLong(Argument.Count::high).max().orElseThrow());
    }
    if (first instanceof Argument.Clause) {
      return Argument.clause(
          withRanges(alike.stream().map(each -> ((Argument.Clause) each).message()).toList()));
    }
    return first;
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
