package fairboil.ingest.finding;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;

/**
 * Something about the data that a reader should know: where it is, what is wrong and what to do.
 *
 * @param severity how much it matters
 * @param place where it is
 * @param problem what is wrong, a clause without a full stop and without the place
 * @param remedy what to do about it, a clause without a full stop; empty where nothing need be done
 * @param mend the sheet row that would mend it, where one would
 */
public record Finding(
    Severity severity, Place place, String problem, String remedy, Optional<SheetRow> mend)
    implements Comparable<Finding> {

  private static final Comparator<Finding> ORDER =
      Comparator.comparing(Finding::severity)
          .thenComparing(Finding::place)
          .thenComparing(Finding::problem);

  /** Checks that something is said. */
  public Finding {
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(remedy, "remedy");
    Objects.requireNonNull(mend, "mend");
    if (problem.isBlank()) {
      throw new IllegalArgumentException("a finding must say what is wrong");
    }
  }

  /** A finding that left something out of the results. */
  public static Finding error(Place place, String problem, String remedy) {
    return new Finding(Severity.ERROR, place, problem, remedy, Optional.empty());
  }

  /** A finding to look at before trusting the results. */
  public static Finding warning(Place place, String problem, String remedy) {
    return new Finding(Severity.WARNING, place, problem, remedy, Optional.empty());
  }

  /** A finding that tells what was done. */
  public static Finding note(Place place, String problem, String remedy) {
    return new Finding(Severity.NOTE, place, problem, remedy, Optional.empty());
  }

  /** Enough to tell findings apart; a record's own is put together at run time, part by part. */
  @Override
  public int hashCode() {
    return 31 * (31 * problem.hashCode() + place.line().hashCode()) + place.file().hashCode();
  }

  /** The same finding, with the sheet row that would mend it. */
  public Finding mendedBy(SheetRow row) {
    return new Finding(severity, place, problem, remedy, Optional.of(row));
  }

  /** The same finding, told from outside the folder that holds its file. */
  public Finding in(String folder) {
    return new Finding(
        severity, place.in(folder), problem, remedy, mend.map(row -> row.in(folder)));
  }

  /** Sorts the worst first, then by place, then by what is wrong. */
  @Override
  public int compareTo(Finding other) {
    return ORDER.compare(this, other);
  }

  /** {@code runs.csv, line 7, column water: error: what is wrong. What to do.} */
  @Override
  public String toString() {
    String text = place + ": " + severity.label() + ": " + problem + ".";
    String stop = remedy.endsWith("?") ? "" : ".";
    return remedy.isEmpty() ? text : text + " " + capitalised(remedy) + stop;
  }

  private static String capitalised(String clause) {
    int first = clause.codePointAt(0);
    return new StringBuilder()
        .appendCodePoint(Character.toUpperCase(first))
        .append(clause.substring(Character.charCount(first)))
        .toString();
  }
}
