package fairboil.analysis.heat;

import java.util.Arrays;
import java.util.Optional;

/**
 * The heating part of a run, made ready to be fitted for one loss after another: what does not
 * depend on the loss is worked out once.
 */
public final class Heating {

  private final BlockMeans part;
  private final double[] enthalpies;
  private final double[] time;
  private final double[] halfSquare;
  private final double[] celsiusSeconds;

  private Heating(BlockMeans part) {
    this.part = part;
    this.enthalpies = Contents.enthalpies(part);
    this.time = part.seconds();
    this.halfSquare = Arrays.stream(time).map(t -> t * t / 2).toArray();
    this.celsiusSeconds = part.integral(celsius -> celsius);
  }

  /**
   * A heating part.
   *
   * @param part its blocks, times since pot on
   * @return empty where it is too short or too small to say anything of the fire
   */
  public static Optional<Heating> of(BlockMeans part) {
    return HeatingFit.isEnough(part) ? Optional.of(new Heating(part)) : Optional.empty();
  }

  /** The blocks. */
  public BlockMeans part() {
    return part;
  }

  /**
   * The fire that heated it.
   *
   * @param contents water put on, and the pot
   * @param air the air about it
   * @param loss how the pot loses heat on the fire
   * @return empty where there are too few blocks, or the fire comes out as none
   */
  public Optional<HeatingFit> fit(Contents contents, Surroundings air, Loss loss) {
    return TimeFit.of(heatGiven(contents, air, loss), time, halfSquare)
        .filter(fit -> fit.slope(0) > 0)
        .map(fit -> fit(fit, contents));
  }

  /** The heat that the fire must have given since the first block, J. */
  private double[] heatGiven(Contents contents, Surroundings air, Loss loss) {
    double[] steam = new double[part.size()];
    if (loss.perPascal() > 0) {
      steam = part.integral(celsius -> loss.perPascal() * air.steamAbove(celsius));
    }
    double[] heat = contents.heat(part, enthalpies, steam);
    for (int i = 0; i < heat.length; i++) {
      double kelvinSeconds = celsiusSeconds[i] - air.ambient() * (time[i] - time[0]);
      heat[i] += loss.perKelvin() * kelvinSeconds + steam[i];
    }
    return heat;
  }

  private static HeatingFit fit(TimeFit fit, Contents contents) {
    double power = fit.slope(0);
    double growth = fit.slope(1) / power;
    double variance =
        fit.covariance(1, 1)
            - 2 * growth * fit.covariance(0, 1)
            + growth * growth * fit.covariance(0, 0);
    double capacity = contents.capacity();
    return new HeatingFit(
        new Fire(power, growth),
        Math.sqrt(fit.covariance(0, 0)),
        Math.sqrt(Math.max(0, variance)) / power,
        fit.degreesOfFreedom(),
        Arrays.stream(fit.residuals()).map(joules -> joules / capacity).toArray());
  }
}
