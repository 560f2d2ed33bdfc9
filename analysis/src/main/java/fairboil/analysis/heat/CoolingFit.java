package fairboil.analysis.heat;

import java.util.Arrays;
import java.util.Optional;

/**
 * The loss of a pot from its cooling on a cold stand. The balance without a fire is integrated over
 * time, {@code Q(t) − Q(0) = −UA ∫(T − Ta) dt − k ∫[ps(T) − e] dt}, which is linear in UA and k, so
 * that neither a start value nor a search is needed; noise hardly enters the integrals.
 *
 * @param loss the loss found
 * @param perKelvinUncertainty standard uncertainty of UA for the {@code k} at hand, W/K
 * @param perPascalUncertainty standard uncertainty of k, W/Pa; 0 where it was held
 * @param perKelvinByPerPascal by how much UA changes with k held otherwise, Pa/K
 * @param degreesOfFreedom of these uncertainties
 * @param residuals observed less fitted, K, one a block; not copied, not to be changed
 */
@SuppressWarnings("ArrayRecordComponent") // made here, and given out for drawing only
public record CoolingFit(
    Loss loss,
    double perKelvinUncertainty,
    double perPascalUncertainty,
    double perKelvinByPerPascal,
    double degreesOfFreedom,
    double[] residuals) {

  /** A cooling must be as long as this, s, and fall by as much as {@link #LEAST_FALL}. */
  public static final double LEAST_SECONDS = 300;

  /** The least fall of a cooling, K. */
  public static final double LEAST_FALL = 8;

  /**
   * Fits UA and k; a k below 0 is held at 0.
   *
   * @param cooling the blocks of the cooling
   * @param contents water left, and the pot
   * @param air the air about it
   * @return empty where the cooling is too short or too small
   */
  public static Optional<CoolingFit> withSteam(
      BlockMeans cooling, Contents contents, Surroundings air) {
    Data data = new Data(cooling, contents, air);
    return data.free(0)
        .flatMap(first -> data.free(Math.max(0, -first.slope(1))))
        .flatMap(
            fit -> -fit.slope(1) > 0 ? data.found(fit) : withPerPascal(cooling, contents, air, 0));
  }

  /**
   * Fits UA with k held.
   *
   * @param perPascal k, W/Pa, at least 0; 0 under a lid
   * @return empty where the cooling is too short or too small
   */
  public static Optional<CoolingFit> withPerPascal(
      BlockMeans cooling, Contents contents, Surroundings air, double perPascal) {
    return new Data(cooling, contents, air).held(perPascal);
  }

  /** Whether a cooling says enough. */
  public static boolean isEnough(BlockMeans cooling) {
    return cooling.span() >= LEAST_SECONDS && -cooling.rise() >= LEAST_FALL;
  }

  /** The integrals of one cooling. */
  private static final class Data {

    private final BlockMeans cooling;
    private final Contents contents;
    private final double[] enthalpies;
    private final double[] kelvinSeconds;
    private final double[] pascalSeconds;

    Data(BlockMeans cooling, Contents contents, Surroundings air) {
      this.cooling = cooling;
      this.contents = contents;
      this.enthalpies = Contents.enthalpies(cooling);
      this.kelvinSeconds = cooling.integral(celsius -> celsius - air.ambient());
      this.pascalSeconds = cooling.integral(air::steamAbove);
    }

    private double[] heat(double perPascal) {
      double[] steam = pascalSeconds.clone();
      for (int i = 0; i < steam.length; i++) {
        steam[i] *= perPascal;
      }
      return contents.heat(cooling, enthalpies, steam);
    }

    /** Both free; k beforehand only says how much water has left. */
    Optional<TimeFit> free(double perPascal) {
      return isEnough(cooling)
          ? TimeFit.of(heat(perPascal), kelvinSeconds, pascalSeconds)
          : Optional.empty();
    }

    Optional<CoolingFit> found(TimeFit fit) {
      double u = Math.sqrt(fit.covariance(1, 1));
      double change = u == 0 ? 0 : fit.covariance(0, 1) / fit.covariance(1, 1);
      double rest = fit.covariance(0, 0) - change * fit.covariance(0, 1);
      if (!(-fit.slope(0) > 0)) {
        return Optional.empty();
      }
      return Optional.of(
          new CoolingFit(
              new Loss(-fit.slope(0), -fit.slope(1)),
              Math.sqrt(Math.max(0, rest)),
              u,
              change,
              fit.degreesOfFreedom(),
              kelvins(fit)));
    }

    Optional<CoolingFit> held(double perPascal) {
      if (!isEnough(cooling)) {
        return Optional.empty();
      }
      double[] rest = heat(perPascal);
      for (int i = 0; i < rest.length; i++) {
        rest[i] += perPascal * pascalSeconds[i];
      }
      return TimeFit.of(rest, kelvinSeconds)
          .filter(fit -> -fit.slope(0) > 0)
          .map(
              fit ->
                  new CoolingFit(
                      new Loss(-fit.slope(0), perPascal),
                      Math.sqrt(fit.covariance(0, 0)),
                      0,
                      change(),
                      fit.degreesOfFreedom(),
                      kelvins(fit)));
    }

    /** By how much UA must fall for each W/Pa of k: as the integrals go together. */
    private double change() {
      return TimeFit.of(pascalSeconds, kelvinSeconds).map(fit -> -fit.slope(0)).orElse(0.0);
    }

    private double[] kelvins(TimeFit fit) {
      return Arrays.stream(fit.residuals()).map(joules -> joules / contents.capacity()).toArray();
    }
  }
}
