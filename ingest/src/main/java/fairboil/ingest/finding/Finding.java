package fairboil.ingest.finding;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Something about the data that a reader should know: where it is, what is wrong and what to do.
 *
 * @param severity how much it matters
 * @param place where it is
 * @param problem what is wrong, a clause without a full stop and without the place
 * @param remedy what to do about it, a clause without a full stop; {@link Message#NONE} where
 *     nothing need be done
 * @param mend what to type where, where that would settle it
 */
public record Finding(
    Severity severity, Place place, Message problem, Message remedy, Optional<Fix> mend)
    implements Comparable<Finding> {

  private static final Comparator<Finding> ORDER =
      Comparator.comparing(Finding::severity)
          .thenComparing(Finding::place)
          .thenComparing(finding -> finding.problem().toString());

  /** Checks that something is said. */
  public Finding {
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(remedy, "remedy");
    Objects.requireNonNull(mend, "mend");
    if (problem.isEmpty()) {
      throw new IllegalArgumentException("a finding must say what is wrong");
    }
  }

  /** A finding that left something out of the results. */
  public static Finding error(Place place, Message problem, Message remedy) {
    return new Finding(Severity.ERROR, place, problem, remedy, Optional.empty());
  }

  /** A finding to look at before trusting the results. */
  public static Finding warning(Place place, Message problem, Message remedy) {
    return new Finding(Severity.WARNING, place, problem, remedy, Optional.empty());
  }

  /** A finding that tells what was done. */
  public static Finding note(Place place, Message problem, Message remedy) {
    return new Finding(Severity.NOTE, place, problem, remedy, Optional.empty());
  }

  // TODO: the three below go once all sentences of their callers are templates.

  /** A finding that left something out of the results. */
  public static Finding error(Place place, String problem, String remedy) {
    return error(place, Message.plain(problem), Message.plain(remedy));
  }

  /** A finding to look at before trusting the results. */
  public static Finding warning(Place place, String problem, String remedy) {
    return warning(place, Message.plain(problem), Message.plain(remedy));
  }

  /** A finding that tells what was done. */
  public static Finding note(Place place, String problem, String remedy) {
    return note(place, Message.plain(problem), Message.plain(remedy));
  }

  /** Enough to tell findings apart; a record's own is put together at run time, part by part. */
  @Override
  public int hashCode() {
    int said = problem.template().hashCode();
    return 31 * (31 * said + place.line().hashCode()) + place.file().hashCode();
  }

  /** The same finding, with what to type where so that it goes. */
  public Finding mendedBy(Fix fix) {
    return new Finding(severity, place, problem, remedy, Optional.of(fix));
  }

  /** The same finding with its message, advice and fix changed by that. */
  public Finding map(UnaryOperator<Message> change, UnaryOperator<Fix> fixes) {
    return new Finding(
        severity, place, change.apply(problem), change.apply(remedy), mend.map(fixes));
  }

  /** The same finding, told from outside the folder that holds its file. */
  public Finding in(String folder) {
    return new Finding(
        severity, place.in(folder), problem, remedy, mend.map(fix -> fix.in(folder)));
  }

  /** Sorts the worst first, then by place, then by what is wrong. */
  @Override
  public int compareTo(Finding other) {
    return ORDER.compare(this, other);
  }

  /** {@code error: what is wrong. What to do.} */
  public String sentences(Voice voice) {
    String text = severity.label() + ": " + problem.text(voice) + ".";
    if (remedy.isEmpty()) {
      return text;
    }
    String advice = remedy.text(voice);
    return text + " " + capitalised(advice) + (advice.endsWith("?") ? "" : ".");
  }

  private static String capitalised(String clause) {
    int first = clause.codePointAt(0);
    return new StringBuilder()
        .appendCodePoint(Character.toUpperCase(first))
        .append(clause.substring(Character.charCount(first)))
        .toString();
  }

  /** {@code runs.csv, line 7, column water: error: what is wrong. What to do.} */
  @Override
  public String toString() {
    return place + ": " + sentences(Voice.RAW);
  }
}
