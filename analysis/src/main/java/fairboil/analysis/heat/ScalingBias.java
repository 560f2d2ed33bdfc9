package fairboil.analysis.heat;

import fairboil.analysis.heat.Restatement.Reference;
import fairboil.analysis.water.Atmosphere;
import fairboil.analysis.water.Saturation;
import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * By how much energy scaling misses what the heat balance would say, over a grid of tests: 0.3 to 2
 * kg of water from 15 °C, air of −20 to 35 °C, 0 to 3,000 m, fires that keep, die down or grow, of
 * 400 W and 700 W. Where a fire is below 1.5 times the loss at the boil, in test or reference, the
 * case is left out.
 *
 * @param lowest the lowest of the errors, as a share of the boil time
 * @param middleLow a quarter of the errors are below this
 * @param middleHigh a quarter of the errors are above this
 * @param highest the highest
 * @param cases how many cases
 */
public record ScalingBias(
    double lowest, double middleLow, double middleHigh, double highest, int cases) {

  /** The least water of the grid, kg. */
  public static final double LEAST_WATER = 0.3;

  /** The most water of the grid, kg. */
  public static final double MOST_WATER = 2;

  private static final double[] WATERS = {LEAST_WATER, 0.5, 0.8, 1.2, MOST_WATER};
  private static final double[] AMBIENTS = {-20, -5, 10, 20, 35};
  private static final double[] ALTITUDES = {0, 1500, 3000};
  private static final double[] POWERS = {400, 700};
  private static final double[] GROWTHS = {-0.2 / 600, 0, 0.3 / 600};
  private static final double START = 15;
  private static final double ENOUGH = 1.5;

  /**
   * Over the grid, for a reference.
   *
   * @param reference the reference; its pot must be given
   * @param loss how the pot loses heat
   */
  public static ScalingBias over(Reference reference, Loss loss) {
    double[] errors =
        Arrays.stream(POWERS)
            .boxed()
            .flatMap(power -> Arrays.stream(GROWTHS).mapToObj(growth -> new Fire(power, growth)))
            .flatMapToDouble(fire -> errors(reference, loss, fire))
            .sorted()
            .toArray();
    return errors.length == 0
        ? new ScalingBias(0, 0, 0, 0, 0)
        : new ScalingBias(
            errors[0],
            errors[errors.length / 4],
            errors[(3 * errors.length) / 4],
            errors[errors.length - 1],
            errors.length);
  }

  private static DoubleStream errors(Reference reference, Loss loss, Fire fire) {
    double pot = reference.pot().orElseThrow();
    Load wanted = new Load(reference.water(), pot, reference.start(), reference.boilingPoint());
    OptionalDouble truth = strong(wanted, reference.air(), loss, fire);
    if (truth.isEmpty()) {
      return DoubleStream.empty();
    }
    DoubleStream.Builder errors = DoubleStream.builder();
    for (double altitude : ALTITUDES) {
      double boilingPoint = Saturation.temperature(Atmosphere.pressure(altitude));
      for (double water : WATERS) {
        Load tested = new Load(water, pot, START, boilingPoint);
        for (double ambient : AMBIENTS) {
          strong(tested, Surroundings.at(ambient), loss, fire)
              .ifPresent(
                  seen -> errors.add(tested.timeFor(wanted, seen) / truth.getAsDouble() - 1));
        }
      }
    }
    return errors.build();
  }

  /** The time, where the fire is strong enough at the end of it. */
  private static OptionalDouble strong(Load load, Surroundings air, Loss loss, Fire fire) {
    OptionalDouble seconds = HeatBalance.of(load, air).seconds(fire, loss);
    return seconds.isPresent()
            && fire.at(seconds.getAsDouble()) >= ENOUGH * loss.watts(load.to(), air)
        ? seconds
        : OptionalDouble.empty();
  }
}
