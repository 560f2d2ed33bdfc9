package fairboil.analysis.figure;

import fairboil.ingest.finding.Message;
import java.util.Objects;
import java.util.Optional;

/** A result of the analysis: known with its uncertainty, or not known and why. */
public sealed interface Figure {

  /**
   * A figure that is known.
   *
   * @param measured its value and uncertainty
   * @param budget where the uncertainty comes from; {@link Budget#NONE} where none was drawn up
   * @param coverage its interval where ± a multiple of the uncertainty would not do
   */
  record Known(Measured measured, Budget budget, Optional<Coverage> coverage) implements Figure {

    /** Checks that all are there. */
    public Known {
      Objects.requireNonNull(measured, "measured");
      Objects.requireNonNull(budget, "budget");
      Objects.requireNonNull(coverage, "coverage");
    }

    /** A figure whose interval is that of Student's t. */
    public Known(Measured measured, Budget budget) {
      this(measured, budget, Optional.empty());
    }

    /** The same figure with an interval of its own. */
    public Known covering(Coverage own) {
      return new Known(measured, budget, Optional.of(own));
    }

    /**
     * The interval at a confidence: its own where it was worked out for that, else that of
     * Student's t.
     */
    public Interval interval(double confidence) {
      return coverage
          .filter(own -> own.confidence() == confidence)
          .map(Coverage::interval)
          .orElseGet(() -> measured.interval(confidence));
    }
  }

  /**
   * A figure that is not known.
   *
   * @param reason why, a clause for people, such as "the run has no log"
   */
  record Unknown(Message reason) implements Figure {

    /** Checks that a reason is given. */
    public Unknown {
      if (reason.isEmpty()) {
        throw new IllegalArgumentException("say why the figure is not known");
      }
    }
  }

  /** A known figure without a budget. */
  static Figure known(Measured measured) {
    return new Known(measured, Budget.NONE);
  }

  /** A figure that is not known, for the given reason. */
  static Figure unknown(Message reason) {
    return new Unknown(reason);
  }

  // TODO: goes once all reasons are templates.

  /** A figure that is not known, for the given reason. */
  static Figure unknown(String reason) {
    return new Unknown(Message.plain(reason));
  }

  /** The value with its uncertainty, if the figure is known. */
  default Optional<Measured> ifKnown() {
    return this instanceof Known known ? Optional.of(known.measured()) : Optional.empty();
  }

  /** The budget, empty if the figure is not known. */
  default Budget budget() {
    return this instanceof Known known ? known.budget() : Budget.NONE;
  }

  /** The value, or NaN if the figure is not known: for arithmetic only, never for people. */
  default double orNaN() {
    return this instanceof Known known ? known.measured().value() : Double.NaN;
  }

  /** Whether the figure is known. */
  default boolean isKnown() {
    return this instanceof Known;
  }
}
