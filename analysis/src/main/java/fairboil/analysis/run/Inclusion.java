package fairboil.analysis.run;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
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
    Optional<Message> excluded, Optional<Message> peakExcluded, Optional<Message> boilExcluded) {

  private static final Template AS_WRITTEN = Template.of("{name}");

  /** Of a run at which the program failed. */
  public static final Inclusion LOST =
      new Inclusion(
          Optional.of(
              Template.of("this program failed at this run; it is no fault of the run or the stove")
                  .with()),
          Optional.empty(),
          Optional.empty());

  /** A reason as its sheet gives it. */
  public static Message asWritten(String reason) {
    return AS_WRITTEN.with(Argument.name(reason));
  }

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
