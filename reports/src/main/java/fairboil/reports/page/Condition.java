package fairboil.reports.page;

import fairboil.analysis.run.RunResult;
import fairboil.reports.words.Names;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A condition under which runs were made, and how it spreads over some of them. */
sealed interface Condition permits MeasuredCondition, ToldCondition, DayCondition {

  /** What people call it. */
  String label();

  /** Whether it is known of a run. */
  boolean isRecorded(RunResult run);

  /** How it spreads over some runs of which it may be known, in words; empty if of none. */
  String over(List<RunResult> runs);

  /** Whether two lots of runs, of which it is known, have some of it in common. */
  boolean overlap(List<RunResult> some, List<RunResult> others);

  /** That the groups have nothing of it in common, in a sentence, if that is so. */
  default Optional<String> apart(Groups groups) {
    List<List<RunResult>> known =
        groups.runs().values().stream()
            .map(runs -> runs.stream().filter(this::isRecorded).toList())
            .toList();
    for (int i = 0; i < known.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (known.get(i).isEmpty()
            || known.get(j).isEmpty()
            || overlap(known.get(i), known.get(j))) {
          return Optional.empty();
        }
      }
    }
    return Optional.of(sentence(groups));
  }

  private String sentence(Groups groups) {
    List<String> parts = new ArrayList<>();
    for (Map.Entry<String, List<RunResult>> group : groups.runs().entrySet()) {
      parts.add(Names.inSentence(group.getKey()) + ": " + Names.inSentence(over(group.getValue())));
    }
    return "No "
        + label()
        + " is common to the "
        + groups.kind()
        + "s ("
        + String.join("; ", parts)
        + "), so that what it changes cannot be told apart from what the "
        + groups.kind()
        + " changes.";
  }

  /** How many runs do not tell, as a remark. */
  static String notTold(List<RunResult> runs, long told) {
    return told == runs.size() ? "" : " (" + (runs.size() - told) + " not told)";
  }
}
