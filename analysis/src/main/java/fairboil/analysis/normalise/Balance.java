package fairboil.analysis.normalise;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Coverage;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.figure.MonteCarlo;
import fairboil.analysis.figure.Shape;
import fairboil.analysis.heat.Fire;
import fairboil.analysis.heat.HeatingFit;
import fairboil.analysis.heat.Inputs;
import fairboil.analysis.heat.LossEstimate;
import fairboil.analysis.heat.Restatement;
import fairboil.analysis.heat.Restatement.Input;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;

/**
 * The boil time of one run restated by heat balance, with the budget of its uncertainty. Pure.
 *
 * @param restatement how it is restated
 * @param inputs the estimates that it is restated from
 * @param budgets what makes each input uncertain, in the input's unit
 */
record Balance(Restatement restatement, Inputs inputs, Map<Input, Budget> budgets) {

  private static final Template COULD_NOT =
      Template.of("this fire could not boil the reference water");
  private static final Template COULD_HARDLY =
      Template.of("this fire could hardly boil the reference water");

  /** UA in the fire is that beside it, times 1 give or take this: rectangular, a judgement. */
  static final double IN_FIRE_HALF_WIDTH = 0.25;

  private static final int DRAWS = 4000;

  /** Where bending shifts the ends of the interval by more than this share of u, it is drawn. */
  private static final double BENT = 0.2;

  Balance {
    budgets = Map.copyOf(budgets);
  }

  /** The budget of UA in the fire: one pot on such a stove errs alike from run to run. */
  static Budget inFire(Key pot) {
    double u = IN_FIRE_HALF_WIDTH / Math.sqrt(3);
    return Budget.of(BudgetLine.shared(Influence.LOSS_IN_FIRE, u, pot).shaped(Shape.RECTANGULAR));
  }

  /** The budget of what cooling leaves unknown of the loss; k is counted where UA is not. */
  static Map<Input, Budget> ofLoss(LossEstimate loss) {
    Map<Input, Budget> budgets = new EnumMap<>(Input.class);
    budgets.put(
        Input.PER_KELVIN,
        Budget.of(
            new BudgetLine(
                Influence.HEAT_LOSS,
                loss.perKelvinUncertainty(),
                loss.degreesOfFreedom(),
                Optional.empty())));
    budgets.put(
        Input.PER_PASCAL,
        Budget.of(BudgetLine.independent(Influence.HEAT_LOSS, loss.perPascalUncertainty())));
    return budgets;
  }

  /** The growth of the fire, 1/s. */
  Figure growth() {
    return budgets
        .getOrDefault(Input.GROWTH, Budget.NONE)
        .around(restatement.growth(inputs), Dimension.RATE);
  }

  /** The fire; empty where the test cannot have been as told. */
  Optional<Fire> fire() {
    OptionalDouble power = restatement.power(inputs);
    return power.isEmpty()
        ? Optional.empty()
        : Optional.of(new Fire(power.getAsDouble(), restatement.growth(inputs)));
  }

  Optional<HeatingFit> heatingFit() {
    return restatement.heatingFit(inputs);
  }

  /**
   * The restated boil time.
   *
   * @param perKelvinByPerPascal by how much UA changes with k, Pa/K
   * @param confidence of the interval, where it is drawn
   * @param random where it is drawn from
   */
  Figure boilTime(double perKelvinByPerPascal, double confidence, RandomGenerator random) {
    OptionalDouble seconds = restatement.seconds(inputs);
    if (seconds.isEmpty()) {
      return Figure.unknown(COULD_NOT.with());
    }
    Map<Input, Double> slopes = new EnumMap<>(Input.class);
    for (Input input : Input.values()) {
      if (budgets.getOrDefault(input, Budget.NONE).combined() > 0) {
        OptionalDouble slope = restatement.sensitivity(inputs, input);
        if (slope.isEmpty()) {
          return Figure.unknown(COULD_HARDLY.with());
        }
        slopes.put(input, slope.getAsDouble());
      }
    }
    slopes.computeIfPresent(
        Input.PER_PASCAL,
        (input, slope) ->
            slope + perKelvinByPerPascal * slopes.getOrDefault(Input.PER_KELVIN, 0.0));
    Budget budget = budget(slopes);
    Figure.Known known = (Figure.Known) budget.around(seconds.getAsDouble(), Dimension.DURATION);
    return covered(known, slopes, confidence, random);
  }

  private Budget budget(Map<Input, Double> slopes) {
    List<BudgetLine> lines = new ArrayList<>();
    slopes.forEach(
        (input, slope) ->
            lines.addAll(Objects.requireNonNull(budgets.get(input)).scaledBy(slope).lines()));
    return merged(lines);
  }

  /** UA and k are told as one: the loss. */
  private static Budget merged(List<BudgetLine> lines) {
    List<BudgetLine> merged = new ArrayList<>();
    Budget loss =
        new Budget(lines.stream().filter(line -> line.influence() == Influence.HEAT_LOSS).toList());
    boolean told = false;
    for (BudgetLine line : lines) {
      if (line.influence() != Influence.HEAT_LOSS) {
        merged.add(line);
      } else if (!told) {
        told = true;
        merged.add(
            new BudgetLine(
                Influence.HEAT_LOSS,
                loss.combined(),
                loss.effectiveDegreesOfFreedom(),
                Optional.empty()));
      }
    }
    return new Budget(merged);
  }

  /** By Monte Carlo where UA in the fire dominates or bends the answer. */
  private Figure covered(
      Figure.Known known, Map<Input, Double> slopes, double confidence, RandomGenerator random) {
    double inFire = slopes.getOrDefault(Input.IN_FIRE, 0.0);
    Optional<Bend> bend = bend(known.measured().value());
    if (bend.isEmpty()) {
      return known;
    }
    double u = known.measured().standardUncertainty();
    boolean bends = Math.abs(bend.get().curve()) * square(IN_FIRE_HALF_WIDTH) > BENT * u;
    if (inFire == 0 || !(bends || known.budget().isMainlyRectangular())) {
      return known;
    }
    Budget rest =
        new Budget(
            known.budget().lines().stream()
                .filter(line -> line.influence() != Influence.LOSS_IN_FIRE)
                .toList());
    MonteCarlo drawn =
        MonteCarlo.of(
            DRAWS,
            random,
            chance -> {
              double off = IN_FIRE_HALF_WIDTH * (2 * chance.nextDouble() - 1);
              return known.measured().value() + bend.get().at(off) + rest.draw(chance);
            });
    return known.covering(new Coverage(confidence, drawn.interval(confidence)));
  }

  private static double square(double value) {
    return value * value;
  }

  /** How the answer follows UA in the fire: straight and bent, through both ends of its range. */
  private record Bend(double slope, double curve) {

    double at(double off) {
      return (slope + curve * off) * off;
    }
  }

  private Optional<Bend> bend(double seconds) {
    OptionalDouble high = restatement.seconds(inputs.plus(Input.IN_FIRE, IN_FIRE_HALF_WIDTH));
    OptionalDouble low = restatement.seconds(inputs.plus(Input.IN_FIRE, -IN_FIRE_HALF_WIDTH));
    if (high.isEmpty() || low.isEmpty()) {
      return Optional.empty();
    }
    double above = high.getAsDouble() - seconds;
    double below = low.getAsDouble() - seconds;
    return Optional.of(
        new Bend(
            (above - below) / (2 * IN_FIRE_HALF_WIDTH),
            (above + below) / (2 * square(IN_FIRE_HALF_WIDTH))));
  }

  /**
   * The restated boil time with every input drawn and the whole balance worked out anew each time:
   * what the first-order uncertainty is checked by.
   *
   * @return empty where some of the fires could not boil the reference
   */
  Optional<MonteCarlo> drawn(int draws, double perKelvinByPerPascal, RandomGenerator random) {
    MonteCarlo drawn =
        MonteCarlo.of(draws, random, chance -> outcome(perKelvinByPerPascal, chance));
    return Double.isNaN(drawn.mean()) ? Optional.empty() : Optional.of(drawn);
  }

  private double outcome(double perKelvinByPerPascal, RandomGenerator chance) {
    Inputs drawn = inputs;
    for (Input input : Input.values()) {
      double off = budgets.getOrDefault(input, Budget.NONE).draw(chance);
      drawn = drawn.plus(input, off);
      if (input == Input.PER_PASCAL) {
        drawn = drawn.plus(Input.PER_KELVIN, perKelvinByPerPascal * off);
      }
    }
    return restatement.seconds(drawn).orElse(Double.NaN);
  }
}
