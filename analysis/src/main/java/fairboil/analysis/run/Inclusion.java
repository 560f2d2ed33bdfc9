package fairboil.analysis.run;

import java.util.Optional;

/**
 * Whether a run counts, and if not why: faults of the test, told in the sheet, never found by rule;
 * or a fault of the program, which lost it.
 *
 * @param excluded why the whole run is left out, if it is
 * @param peakExcluded why its flame figures are left out, if they are
 * @param boilExcluded why its boil figures are left out, if they are
 */
public record Inclusion(
    Optional<String> excluded, Optional<String> peakExcluded, Optional<String> boilExcluded) {

  /** Of a run at which the program failed. */
  public static final Inclusion LOST =
      new Inclusion(
          Optional.of("this program failed at this run; it is no fault of the run or the stove"),
          Optional.empty(),
          Optional.empty());

  /** Whether the program failed at the run, so that there is nothing of it to count. */
  public boolean isLost() {
    return equals(LOST);
  }

  /** Whether nothing of the run is left out. */
  public boolean isWhole() {
    return excluded.isEmpty() && peakExcluded.isEmpty() && boilExcluded.isEmpty();
  }

  /** Whether the run counts at all. */
  public boolean included() {
    return excluded.isEmpty();
  }

  /** Whether its flame figures count. */
  public boolean includedForPeak() {
    return included() && peakExcluded.isEmpty();
  }

  /** Whether its boil figures count. */
  public boolean includedForBoil() {
    return included() && boilExcluded.isEmpty();
  }
}
