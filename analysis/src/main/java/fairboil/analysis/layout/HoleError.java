package fairboil.analysis.layout;

/**
 * Where one hole is against where it was meant to be, after best fit. Lengths in metres.
 *
 * <p>On a wall, "along" is the direction along the wrap and "height" the distance from the datum;
 * on a base they are the tangential and the radial direction.
 *
 * @param number the number of the hole as the sheet gives it
 * @param intendedAlong intended place: along the wrap from division 1, or x on the base
 * @param intendedHeight intended place: height from the datum, or y on the base
 * @param alongError measured less intended, along
 * @param heightError measured less intended, in height
 */
public record HoleError(
    int number,
    double intendedAlong,
    double intendedHeight,
    double alongError,
    double heightError) {

  /** The distance from the intended place. */
  public double deviation() {
    return Math.hypot(alongError, heightError);
  }

  /** Twice the deviation: the true position of ISO 1101 and ASME Y14.5 (diametral zone). */
  public double truePosition() {
    return 2 * deviation();
  }
}
