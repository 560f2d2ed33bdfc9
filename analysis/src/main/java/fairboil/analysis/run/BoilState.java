package fairboil.analysis.run;

import fairboil.ingest.choice.Outcome;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import java.util.Optional;

/**
 * Whether the water of a run boiled. What nobody saw is neither a boil nor a failure: shares, means
 * and ranks count it as neither. Immutable.
 */
public sealed interface BoilState {

  /** What the sheet says of how the run ended, if it says. */
  Optional<Outcome> told();

  /**
   * It boiled.
   *
   * @param told what the sheet says of the end
   */
  record Boiled(Optional<Outcome> told) implements BoilState {}

  /**
   * It did not: by the word of whoever burnt it, or because the log shows it.
   *
   * @param told what the sheet says of the end
   * @param reason by what it is known, a clause for people
   */
  record DidNotBoil(Optional<Outcome> told, Message reason) implements BoilState {}

  /**
   * Nobody and nothing saw whether it did.
   *
   * @param told what the sheet says of the end
   * @param reason why not, a clause for people
   */
  record NotSeen(Optional<Outcome> told, Message reason) implements BoilState {}

  /**
   * By the sheet's word alone. Whoever stopped a run says how it ended, not that the stove failed.
   */
  static BoilState told(Outcome outcome) {
    Optional<Outcome> told = Optional.of(outcome);
    return switch (outcome) {
      case BOILED -> new Boiled(told);
      case DID_NOT_BOIL, WOULD_NOT_LIGHT, WENT_OUT ->
          new DidNotBoil(
              told, BoilSays.SHEET_SAYS.with(RunSays.RUNS, Argument.cell(outcome.label())));
      case STOPPED -> new NotSeen(told, BoilSays.STOPPED.with());
    };
  }

  /** How the run ended: as told, else as it was seen; empty if neither. */
  default Optional<Outcome> outcome() {
    if (this instanceof Boiled) {
      return Optional.of(Outcome.BOILED);
    }
    return this instanceof DidNotBoil ? told().or(() -> Optional.of(Outcome.DID_NOT_BOIL)) : told();
  }

  /** The word for it that people see. */
  default String label() {
    return outcome().map(Outcome::label).orElse("not seen");
  }
}
