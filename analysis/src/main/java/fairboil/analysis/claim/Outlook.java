package fairboil.analysis.claim;

import fairboil.analysis.claim.ClaimResult.Estimate;
import fairboil.analysis.figure.Interval;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;

/** About how many more units would settle a claim. */
interface Outlook {

  /** Nobody burns more than this. */
  int MOST = 1000;

  /** How often a study of the number that is named would settle the claim. */
  double POWER = 0.8;

  /**
   * What would be needed for the interval to leave the nearest bound, as a clause.
   *
   * @param estimate the estimate with its interval at the claim's confidence
   * @param bounds the values for which the claim holds
   * @param confidence of the interval
   */
  Optional<Message> needed(Estimate estimate, Interval bounds, double confidence);

  /**
   * The smallest number of units, from one on, whose power is {@link #POWER}; empty above {@link
   * #MOST}. Power is taken to rise with the number.
   */
  static OptionalInt fewest(int from, IntToDoubleFunction power) {
    int enough = from;
    int tooFew = from - 1;
    while (power.applyAsDouble(enough) < POWER) {
      if (enough >= MOST) {
        return OptionalInt.empty();
      }
      tooFew = enough;
      enough = Math.min(MOST, 2 * enough);
    }
    while (enough - tooFew > 1) {
      int middle = (tooFew + enough) / 2;
      if (power.applyAsDouble(middle) < POWER) {
        tooFew = middle;
      } else {
        enough = middle;
      }
    }
    return OptionalInt.of(enough);
  }

  /** The clause for a number of units, or for more than anyone burns. */
  static Message clause(OptionalInt needed, Message unit, Message what) {
    return needed.isEmpty()
        ? OutlookSays.MORE_THAN.with(Argument.count(MOST), Argument.clause(unit))
        : OutlookSays.ABOUT.with(
            Argument.count(needed.getAsInt()), Argument.clause(unit), Argument.clause(what));
  }

  /** How far an estimate lies from the nearest bound. */
  static double distance(double value, Interval bounds) {
    return Math.min(Math.abs(value - bounds.low()), Math.abs(value - bounds.high()));
  }
}
