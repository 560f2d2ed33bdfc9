package fairboil.analysis.fault;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Does the work of parts, and keeps what went wrong that nobody foresaw: it costs that part, and no
 * other. Only here is such a thing caught.
 *
 * <p>What the program foresees (a file that cannot be read or written, memory that runs out) passes
 * through. Faults are kept in the order in which they are added; parts that are worked on by
 * several threads are {@linkplain #attempt tried} there and {@linkplain #take taken} in their
 * order. Not safe for use by several threads.
 */
public final class Faults {

  /** A part that its own words name. */
  private static final Template NAMED = Template.of("{word}");

  private final List<Fault> faults = new ArrayList<>();

  /**
   * The work of a part.
   *
   * @param <R> what it gives
   * @param <X> what it is known to throw
   */
  @FunctionalInterface
  public interface Work<R, X extends Exception> {

    /** Does it. */
    R get() throws X;
  }

  /**
   * Does the work of a part.
   *
   * @param part what is lost if it fails, a clause that ends "the program failed at …"
   * @param place where its reader would look for it
   * @return what it gave, or its fault
   * @throws X if the work does
   */
  public static <R, X extends Exception> Tried<R> attempt(
      Message part, Place place, Work<? extends R, X> work) throws X {
    try {
      return new Tried<>(Optional.of(work.get()), Optional.empty());
    } catch (RuntimeException | StackOverflowError thrown) {
      return new Tried<>(Optional.empty(), Optional.of(of(part, place, thrown)));
    }
  }

  /** Does the work of a part that these words name. */
  public static <R, X extends Exception> Tried<R> attempt(
      String part, Place place, Work<? extends R, X> work) throws X {
    return attempt(named(part), place, work);
  }

  private static Message named(String part) {
    return NAMED.with(Argument.word(part));
  }

  /**
   * Something that ended the program itself.
   *
   * @param part what is lost
   * @param place where its reader would look for it
   */
  public static Fault of(String part, Place place, Throwable thrown) {
    return of(named(part), place, thrown);
  }

  private static Fault of(Message part, Place place, Throwable thrown) {
    return new Fault(part, place, Trace.of(thrown));
  }

  /** Does the work of a part; empty if it failed. Otherwise as {@link #attempt}. */
  public <R, X extends Exception> Optional<R> contain(
      Message part, Place place, Work<? extends R, X> work) throws X {
    return take(attempt(part, place, work));
  }

  /** Does the work of a part that these words name; empty if it failed. */
  public <R, X extends Exception> Optional<R> contain(
      String part, Place place, Work<? extends R, X> work) throws X {
    return contain(named(part), place, work);
  }

  /** Does the work of a part, which these words name, that gives nothing; whether it was done. */
  public boolean isDone(String part, Place place, Runnable work) {
    return isDone(named(part), place, work);
  }

  /** Does the work of a part that gives nothing; whether it was done. */
  public boolean isDone(Message part, Place place, Runnable work) {
    return contain(
            part,
            place,
            () -> {
              work.run();
              return true;
            })
        .isPresent();
  }

  /** What a part gave; empty if it failed. */
  public <R> Optional<R> take(Tried<R> tried) {
    tried.fault().ifPresent(faults::add);
    return tried.value();
  }

  /**
   * Adds those of parts within a part.
   *
   * @param which the clause, with words that tell it from others of its kind
   */
  public void addAll(Collection<Fault> others, Template which) {
    others.forEach(
        it ->
            faults.add(new Fault(which.with(Argument.clause(it.part())), it.place(), it.trace())));
  }

  /** Adds those of parts within a part. */
  public void addAll(Collection<Fault> others) {
    faults.addAll(others);
  }

  /** The faults so far, none twice, in their order; unmodifiable. */
  public List<Fault> all() {
    return faults.stream().distinct().toList();
  }
}
