package fairboil.analysis.trace;

import java.util.OptionalDouble;

/**
 * Where and at what level to look for the boil in a water trace.
 *
 * @param from start of the search, s: when heating began
 * @param to end of the search, s: when the pot came off, or the end of the trace
 * @param level the boiling point, °C, if it is known
 * @param levelUncertainty standard uncertainty of plateau less boiling point, K: of sensor, boiling
 *     point and position together
 * @param lag time constant of the sensor, s; 0 where it is not known
 * @param resolution the smallest step of the readings, K; 0 where it is not known
 */
public record BoilSearch(
    double from,
    double to,
    OptionalDouble level,
    double levelUncertainty,
    double lag,
    double resolution) {

  /** Whether a plateau at this level may be the boil: within two standard uncertainties. */
  boolean agrees(double celsius) {
    return level.isEmpty() || Math.abs(celsius - level.getAsDouble()) <= 2 * levelUncertainty;
  }
}
