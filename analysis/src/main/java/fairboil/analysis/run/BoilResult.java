package fairboil.analysis.run;

import fairboil.analysis.figure.Figure;
import java.util.Optional;

/**
 * What was seen of the boil. Times are durations in seconds.
 *
 * @param boilTime from the later of lit and pot on to the boil: the observation that counts
 * @param from what the boil time stands on; empty if it is not known
 * @param logBoilTime by the plateau of the water channel
 * @param stopwatchBoilTime by the stopwatch
 * @param hottestWater the highest held water temperature, °C: the result of a run that did not boil
 * @param plateau mean of the boiling plateau, °C
 * @param plateauOffset plateau less boiling point, K
 * @param litToBoil from lit to the boil
 * @param burnTime from lit to flame out
 */
public record BoilResult(
    Figure boilTime,
    Optional<BoilTimeFrom> from,
    Figure logBoilTime,
    Figure stopwatchBoilTime,
    Figure hottestWater,
    Figure plateau,
    Figure plateauOffset,
    Figure litToBoil,
    Figure burnTime) {

  /** What a boil time stands on. */
  public enum BoilTimeFrom {
    /** A plateau of at least 60 s in the water channel. */
    LOG("log"),
    /** A plateau of 15 to 60 s, with a larger uncertainty. */
    LOG_SHORT_PLATEAU("log, short plateau"),
    /** The mark of a person. */
    STOPWATCH("stopwatch");

    private final String label;

    BoilTimeFrom(String label) {
      this.label = label;
    }

    /** The words that tables hold. */
    public String label() {
      return label;
    }
  }
}
