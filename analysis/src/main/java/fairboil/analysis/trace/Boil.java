package fairboil.analysis.trace;

import fairboil.ingest.finding.Message;

/** The boil as a water trace shows it, or why it shows none. */
public sealed interface Boil {

  /**
   * A line through the last kelvins before the plateau meets the mean of the plateau.
   *
   * @param at where they meet, less the lag of the sensor, s
   * @param lineFrom start of the line, s
   * @param lineFromCelsius the line there, °C
   * @param plateauTo end of the plateau, s
   * @param plateau mean of the plateau, °C
   * @param length whether the plateau lasted
   * @param heatingRate slope of the line, K/s
   * @param fit standard uncertainty of the meeting point from the scatter of the readings, s
   * @param level standard uncertainty of the meeting point from that of the plateau's mean, s
   */
  record Seen(
      double at,
      double lineFrom,
      double lineFromCelsius,
      double plateauTo,
      double plateau,
      Length length,
      double heatingRate,
      double fit,
      double level)
      implements Boil {}

  /** Whether a plateau lasted. */
  enum Length {
    /** At least 60 s. */
    LONG,
    /** From 15 s to 60 s. */
    SHORT
  }

  /**
   * No boil.
   *
   * @param reason why, a clause for people
   */
  record NotSeen(Message reason) implements Boil {}
}
