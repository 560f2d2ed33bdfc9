package fairboil.analysis.protocol;

import fairboil.ingest.finding.Place;
import fairboil.ingest.sheet.Key;
import java.util.List;

/**
 * Whether a run kept to what the group agreed.
 *
 * @param run the run
 * @param departures where it did not; unmodifiable, empty if it kept to everything
 */
public record RunProtocol(Key run, List<Departure> departures) {

  /** Copies the list. */
  public RunProtocol {
    departures = List.copyOf(departures);
  }

  /** Whether the run kept to everything that was agreed. */
  public boolean isWithin() {
    return departures.isEmpty();
  }

  /**
   * One thing in which a run departed from what was agreed.
   *
   * @param column the column of {@code runs.csv}
   * @param written what stands there; empty text for an empty cell
   * @param how in which way it departs
   * @param agreed what was agreed, as written
   * @param place the cell of the run
   */
  public record Departure(String column, String written, How how, String agreed, Place place) {}

  /** In which way a run departs from what was agreed. */
  public enum How {
    /** The cell is empty. */
    NOT_TOLD,
    /** Below the least that was agreed. */
    BELOW,
    /** Above the most that was agreed. */
    ABOVE,
    /** None of the texts that were agreed. */
    NOT_ALLOWED,
    /** Not a number of the kind that was agreed, so it cannot be compared. */
    NOT_COMPARABLE
  }
}
