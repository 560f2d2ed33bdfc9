package fairboil.analysis.measure;

import fairboil.analysis.run.RunResult;
import fairboil.ingest.choice.WeighedAt;
import fairboil.ingest.sheet.RunsSheet;

/**
 * What a run whose water did not boil has of a measure. Where it has none for that reason, a mean
 * over the others is one of survivors, which flatters the stove.
 */
public enum WithoutBoil {
  /** A value like any other run. */
  HAS_A_VALUE,
  /** None: it is a time to the boil, and this run would have taken longer than any that boiled. */
  WOULD_TAKE_LONGER,
  /** None, and nothing can be said of what it would have been. */
  HAS_NONE,
  /** None if its fuel was to be weighed at the boil. */
  HAS_NONE_IF_WEIGHED_AT_THE_BOIL;

  /** Whether a run lacks the measure because its water did not boil. */
  public boolean hides(RunResult run) {
    return run.didNotBoil()
        && switch (this) {
          case HAS_A_VALUE -> false;
          case WOULD_TAKE_LONGER, HAS_NONE -> true;
          case HAS_NONE_IF_WEIGHED_AT_THE_BOIL ->
              run.run()
                  .row()
                  .value(RunsSheet.WEIGHED_AT)
                  .filter(WeighedAt.BOIL::equals)
                  .isPresent();
        };
  }
}
