package fairboil.ingest.quantity;

import fairboil.ingest.finding.Message;
import java.util.Optional;
import java.util.function.Function;

/**
 * What became of a text that a person wrote: a value, nothing, or a refusal in words.
 *
 * @param <T> what the text was to be read as
 */
public sealed interface Reading<T> {

  /**
   * The text was understood.
   *
   * @param <T> what the text was read as
   * @param value the value
   * @param unit the unit it was written in, for quantities
   * @param remark what a reader should know of the reading, such as that brackets were left out
   */
  record Read<T>(T value, Optional<Unit> unit, Optional<Message> remark) implements Reading<T> {

    /** A value of which there is nothing to remark. */
    public static <T> Read<T> of(T value) {
      return new Read<>(value, Optional.empty(), Optional.empty());
    }
  }

  /**
   * The text says that there is no value, such as {@code n/a} or a dash.
   *
   * @param <T> what the text was to be read as
   */
  record Missing<T>() implements Reading<T> {}

  /**
   * The text was not understood, or could mean two things.
   *
   * @param <T> what the text was to be read as
   * @param problem what is wrong
   * @param remedy what to type instead
   */
  record Refused<T>(Message problem, Message remedy) implements Reading<T> {

    /** The same refusal of another kind of value. */
    public <U> Reading<U> of() {
      return new Refused<>(problem, remedy);
    }
  }

  /** Whether a text says that there is no value: a dash, {@code n/a}, {@code none} and the like. */
  static boolean isNothing(String text) {
    return Tidy.isNothing(Tidy.text(text));
  }

  /** This reading, with a value read on: what reads it may refuse. */
  default <U> Reading<U> then(Function<Read<T>, Reading<U>> next) {
    if (this instanceof Read<T> read) {
      return next.apply(read);
    }
    return this instanceof Refused<T> refused ? refused.of() : new Missing<>();
  }
}
