package fairboil.analysis.heat;

import fairboil.analysis.water.Water;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A boil time restated by heat balance. The fire grows as the heating shows; its power is such that
 * the balance brings the water that was tested to the boil in the boil time that was seen; then the
 * same fire, from pot on, is put under the reference load in the reference air.
 *
 * @param reference what the reference asks for
 * @param heating the heating part, from which the growth of the fire is had anew for each loss;
 *     empty for a run without a log
 * @param usualGrowth the growth of a fire of which there is no log, 1/s
 */
public record Restatement(Reference reference, Optional<Heating> heating, double usualGrowth) {

  /**
   * Reference conditions.
   *
   * @param water mass of water, kg
   * @param pot heat capacity of the reference pot, J/K; empty for the run's own
   * @param start °C
   * @param boilingPoint °C
   * @param air the air
   */
  public record Reference(
      double water, OptionalDouble pot, double start, double boilingPoint, Surroundings air) {

    /** Whether water can be heated from the start to the boiling point. */
    public boolean isPossible() {
      return water > 0 && boilingPoint > start && boilingPoint <= Water.MAX_CELSIUS;
    }
  }

  /** What a restated boil time depends on. */
  public enum Input {
    /** Mass of the water tested, kg. */
    WATER(1e-3),
    /** Heat capacity of the pot, J/K. */
    POT(1),
    /** Temperature of the water at the start, °C. */
    START(0.05),
    /** Boiling point, °C. */
    BOILING_POINT(0.05),
    /** Air temperature, °C. */
    AMBIENT(0.2),
    /** Boil time seen, s. */
    BOIL_TIME(0.5),
    /** UA beside the fire, W/K. */
    PER_KELVIN(0.02),
    /** k, W/Pa. */
    PER_PASCAL(2e-5),
    /** UA in the fire, as a multiple of that beside it. */
    IN_FIRE(0.05),
    /** What is added to the growth of the fire, 1/s. */
    GROWTH(2e-5);

    private final double step;

    Input(double step) {
      this.step = step;
    }
  }

  /**
   * The restated boil time, s.
   *
   * @param in the inputs, by {@link Inputs}
   * @return empty where this fire could not boil the reference, or the test cannot have been as
   *     told
   */
  public OptionalDouble seconds(Inputs in) {
    OptionalDouble power = power(in);
    return power.isEmpty()
        ? power
        : HeatBalance.of(referenceLoad(in), reference.air())
            .seconds(new Fire(power.getAsDouble(), growth(in)), lossInFire(in));
  }

  /** The power of the fire when the pot went on, W; empty where the test cannot have been so. */
  public OptionalDouble power(Inputs in) {
    return isPossible(in)
        ? HeatBalance.of(load(in), air(in))
            .power(in.of(Input.BOIL_TIME), growth(in), lossInFire(in))
        : OptionalDouble.empty();
  }

  /** The growth of the fire, 1/s. */
  public double growth(Inputs in) {
    return heatingFit(in).map(fit -> fit.fire().growth()).orElse(usualGrowth) + in.of(Input.GROWTH);
  }

  /** The fit of the heating, if there is one. */
  public Optional<HeatingFit> heatingFit(Inputs in) {
    return heating.flatMap(part -> part.fit(contents(in), air(in), lossInFire(in)));
  }

  /**
   * By how much the restated boil time changes with an input, in seconds for each unit of it, by
   * central difference.
   *
   * @return empty where it has none on either side
   */
  public OptionalDouble sensitivity(Inputs in, Input input) {
    OptionalDouble above = seconds(in.plus(input, input.step));
    OptionalDouble below = seconds(in.plus(input, -input.step));
    return above.isEmpty() || below.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of((above.getAsDouble() - below.getAsDouble()) / (2 * input.step));
  }

  private static boolean isPossible(Inputs in) {
    return in.of(Input.WATER) > 0
        && in.of(Input.BOILING_POINT) > in.of(Input.START)
        && in.of(Input.BOIL_TIME) > 0;
  }

  private static Load load(Inputs in) {
    return new Load(
        in.of(Input.WATER),
        Math.max(0, in.of(Input.POT)),
        within(in.of(Input.START)),
        within(in.of(Input.BOILING_POINT)));
  }

  private Load referenceLoad(Inputs in) {
    return new Load(
        reference.water(),
        reference.pot().orElse(Math.max(0, in.of(Input.POT))),
        within(reference.start()),
        within(reference.boilingPoint()));
  }

  private static double within(double celsius) {
    return Math.max(Water.MIN_CELSIUS, Math.min(Water.MAX_CELSIUS, celsius));
  }

  private static Contents contents(Inputs in) {
    return new Contents(in.of(Input.WATER), Math.max(0, in.of(Input.POT)));
  }

  private static Surroundings air(Inputs in) {
    return Surroundings.at(in.of(Input.AMBIENT));
  }

  private static Loss lossInFire(Inputs in) {
    return new Loss(Math.max(0, in.of(Input.PER_KELVIN)), Math.max(0, in.of(Input.PER_PASCAL)))
        .times(Math.max(0, in.of(Input.IN_FIRE)));
  }
}
