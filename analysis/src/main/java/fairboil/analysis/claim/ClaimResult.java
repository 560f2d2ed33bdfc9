package fairboil.analysis.claim;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.finding.Message;
import fairboil.ingest.sheet.Claim;
import java.util.Optional;

/**
 * What the data say of a claim: a verdict and numbers, no wording.
 *
 * @param claim the claim
 * @param measure the measure it is about, if it names one
 * @param verdict the verdict
 * @param reason why it could not be tested or settled, where that needs saying; a clause
 * @param estimate the estimate, if there is one
 * @param bounds the values for which the claim holds
 * @param confidence the confidence of each claim's own interval, so that all claims together have
 *     the study's
 * @param runs how many runs it stands on
 * @param builds how many builds it stands on
 */
public record ClaimResult(
    Claim claim,
    Optional<Measure> measure,
    Verdict verdict,
    Optional<Message> reason,
    Optional<Estimate> estimate,
    Optional<Interval> bounds,
    double confidence,
    int runs,
    int builds) {

  /**
   * An estimate with its interval.
   *
   * @param value the estimate
   * @param interval its interval
   */
  public record Estimate(double value, Interval interval) {}

  /** What can be said of a claim. */
  public enum Verdict {
    /** The interval lies wholly inside what is claimed. */
    SUPPORTED("supported"),
    /** The interval lies wholly outside what is claimed. */
    CONTRADICTED("contradicted"),
    /** Neither. */
    NOT_SETTLED("not settled"),
    /** Nothing here measures it. */
    NOT_TESTABLE("cannot be tested here");

    private final String label;

    Verdict(String label) {
      this.label = label;
    }

    /** The words that people see. */
    public String label() {
      return label;
    }
  }
}
