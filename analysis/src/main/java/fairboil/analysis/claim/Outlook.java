package fairboil.analysis.claim;

import fairboil.analysis.claim.ClaimResult.Estimate;
import fairboil.analysis.figure.Interval;
import java.util.Optional;

/** About how many more units would settle a claim. */
interface Outlook {

  /** Nobody burns more than this. */
  int MOST = 1000;

  /**
   * What would be needed for the interval to leave the nearest bound, as a clause.
   *
   * @param estimate the estimate with its interval at the claim's confidence
   * @param bounds the values for which the claim holds
   * @param confidence of the interval
   */
  Optional<String> needed(Estimate estimate, Interval bounds, double confidence);

  /** The clause for a number of units, or for more than anyone burns. */
  static String clause(int needed, String unit, String what) {
    return needed > MOST
        ? "more than " + MOST + " such " + unit + " would be needed to settle it"
        : "about "
            + needed
            + " such "
            + unit
            + " would settle it, if the "
            + what
            + " stays where it is";
  }

  /** How far an estimate lies from the nearest bound. */
  static double distance(double value, Interval bounds) {
    return Math.min(Math.abs(value - bounds.low()), Math.abs(value - bounds.high()));
  }
}
