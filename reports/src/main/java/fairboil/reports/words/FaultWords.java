package fairboil.reports.words;

import fairboil.analysis.fault.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is said where the program failed at a part. */
public final class FaultWords {

  private static final int BY_NAME = 3;

  private FaultWords() {}

  /** What is missing from an answer, and what to doubt for that; empty if nothing is. */
  public static Optional<String> doubt(List<Fault> faults) {
    return faults.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Beware: this program failed at "
                + parts(faults)
                + ". The rest was worked out without it; where something is said here to be missing"
                + " or not known, that may be why.");
  }

  /** The parts, the first of them by name. */
  public static String parts(List<Fault> faults) {
    List<String> parts =
        new ArrayList<>(faults.stream().limit(BY_NAME).map(FaultWords::part).toList());
    int more = faults.size() - parts.size();
    if (more > 0) {
      parts.add(Plural.of(more, "more part", "more parts"));
    }
    return Plural.list(parts);
  }

  /** A part has names in it, but no numbers that would need units. */
  private static String part(Fault fault) {
    return fault.part().toString();
  }

  /** The file that holds what helps to mend the program: the parts and their traces. */
  public static String file(String version, List<Fault> faults) {
    StringBuilder text = new StringBuilder();
    text.append("fairboil ").append(version).append(" failed at the parts below.\n");
    text.append("It is a fault of the program. Those who look after it need this file.\n");
    faults.forEach(
        fault -> text.append("\n").append(part(fault)).append('\n').append(fault.trace()));
    return text.toString();
  }
}
