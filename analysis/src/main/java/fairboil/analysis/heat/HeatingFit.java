package fairboil.analysis.heat;

/**
 * The fire from the heating of the water, its loss held: {@code Q(t) − Q(0) + UA ∫(T − Ta) dt + k
 * ∫[ps(T) − e] dt = P0 t + P0 g t² / 2}, linear in {@code P0} and {@code P0 g}. The loss cannot be
 * had from the same readings: a fire that grows looks like a pot that loses less.
 *
 * @param fire the fire found
 * @param powerUncertainty standard uncertainty of its power when the pot went on, W
 * @param growthUncertainty standard uncertainty of its growth, 1/s
 * @param degreesOfFreedom of these uncertainties
 * @param residuals observed less fitted, K, one a block; not copied, not to be changed
 */
@SuppressWarnings("ArrayRecordComponent") // made here, and given out for drawing only
public record HeatingFit(
    Fire fire,
    double powerUncertainty,
    double growthUncertainty,
    double degreesOfFreedom,
    double[] residuals) {

  /** A heating must be as long as this, s, and rise by as much as {@link #LEAST_RISE}. */
  public static final double LEAST_SECONDS = 60;

  /** The least rise of a heating, K. */
  public static final double LEAST_RISE = 20;

  /** Whether a heating says enough. */
  public static boolean isEnough(BlockMeans heating) {
    return heating.span() >= LEAST_SECONDS && heating.rise() >= LEAST_RISE;
  }
}
