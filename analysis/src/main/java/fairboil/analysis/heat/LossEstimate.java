package fairboil.analysis.heat;

/**
 * How a pot loses heat, as well as that is known.
 *
 * @param loss the estimate, beside the fire
 * @param perKelvinUncertainty standard uncertainty of UA for the k at hand, W/K
 * @param perPascalUncertainty standard uncertainty of k, W/Pa
 * @param perKelvinByPerPascal by how much UA changes with each W/Pa of k, Pa/K: at most 0, as one
 *     makes up for the other
 * @param degreesOfFreedom of the uncertainty of UA, above 0
 * @param source what it stands on
 * @param coolings how many coolings it stands on; 0 where it was told
 */
public record LossEstimate(
    Loss loss,
    double perKelvinUncertainty,
    double perPascalUncertainty,
    double perKelvinByPerPascal,
    double degreesOfFreedom,
    Source source,
    int coolings) {

  /** What a loss stands on. */
  public enum Source {
    /** The cooling of the run itself. */
    OWN,
    /** Coolings of other runs with the same pot, lid and wind. */
    POOLED,
    /** A person told it. */
    TOLD
  }

  /** Relative standard uncertainty of a loss that was told: a judgement. */
  private static final double OF_WHAT_IS_TOLD = 0.1;

  /**
   * A loss that a person told, in which any steam is counted.
   *
   * @param perKelvin W/K, above 0
   * @param resolution the smallest step of the number as written, W/K
   */
  public static LossEstimate told(double perKelvin, double resolution) {
    return new LossEstimate(
        new Loss(perKelvin, 0),
        Math.hypot(OF_WHAT_IS_TOLD * perKelvin, resolution / Math.sqrt(12)),
        0,
        0,
        Double.POSITIVE_INFINITY,
        Source.TOLD,
        0);
  }

  /** Standard uncertainty of UA, that of k counted, W/K. */
  public double uncertainty() {
    return Math.hypot(perKelvinUncertainty, perKelvinByPerPascal * perPascalUncertainty);
  }
}
