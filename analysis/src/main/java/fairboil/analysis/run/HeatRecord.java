package fairboil.analysis.run;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.heat.BlockMeans;
import fairboil.ingest.finding.Message;
import java.util.Objects;
import java.util.Optional;

/**
 * What the heat balance of a study needs of a run once its log is dropped.
 *
 * @param pot the pot; empty where the water it held is not known
 * @param heating the water from pot on to the boil, counted from the start of the boil time
 * @param cooling the water after the pot came off, counted from then
 * @param noCooling why there is no cooling; empty if there is one
 * @param waterLeft mass of water when the pot came off, kg
 * @param probe standard uncertainty of the water probe, K
 */
public record HeatRecord(
    Optional<PotHeat> pot,
    Optional<Part> heating,
    Optional<Part> cooling,
    Message noCooling,
    Figure waterLeft,
    double probe) {

  /**
   * The heat capacity of the pot.
   *
   * @param capacity J/K, at least 0
   * @param uncertainty its standard uncertainty, J/K
   * @param reference that of the reference pot, J/K; empty for the run's own
   */
  public record PotHeat(double capacity, double uncertainty, Optional<Double> reference) {}

  /**
   * A part of the water's course.
   *
   * @param origin when its time is 0, s on the run's time line
   * @param blocks its readings, averaged
   */
  public record Part(double origin, BlockMeans blocks) {}

  /** Of a run without a log. */
  public static final HeatRecord NONE =
      new HeatRecord(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          RunSays.NO_LOG.with(),
          Figure.unknown(RunSays.NO_LOG.with()),
          0);

  /** Checks that all parts are there. */
  public HeatRecord {
    Objects.requireNonNull(pot, "pot");
    Objects.requireNonNull(heating, "heating");
    Objects.requireNonNull(cooling, "cooling");
    Objects.requireNonNull(noCooling, "noCooling");
    Objects.requireNonNull(waterLeft, "waterLeft");
  }
}
