package fairboil.analysis.normalise;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.figure.Shape;
import fairboil.analysis.heat.Heating;
import fairboil.analysis.heat.HeatingFit;
import fairboil.analysis.heat.Inputs;
import fairboil.analysis.heat.LossEstimate;
import fairboil.analysis.heat.Restatement;
import fairboil.analysis.heat.Restatement.Input;
import fairboil.analysis.heat.Surroundings;
import fairboil.analysis.run.HeatRecord;
import fairboil.analysis.run.References;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Key;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Sets up the heat balance of each run: its estimates, and what makes them uncertain. */
final class RunBalances {

  private static final Template STARTED_BOILING =
      Template.of("the water started at its boiling point");
  private static final Template ODD_COOLING =
      Template.of("its cooling does not follow that of a pot of water");
  private static final Template NOR_ANOTHER =
      Template.of(
          "{clause}, and no other run with the same pot, lid and wind shows how the pot cools");
  private static final Template REFERENCE_TOO_WARM =
      Template.of("the reference start is at or above the reference boiling point");

  private final References references;
  private final Losses losses;
  private final Map<Key, Heating> heatings = new HashMap<>();
  private final Growths growths;

  RunBalances(References references, Losses losses, List<RunResult> runs) {
    this.references = references;
    this.losses = losses;
    for (RunResult run : runs) {
      run.heat()
          .heating()
          .flatMap(part -> Heating.of(part.blocks()))
          .ifPresent(heating -> heatings.put(run.run().key(), heating));
    }
    this.growths = Growths.of(growthsSeen(runs));
  }

  private List<Double> growthsSeen(List<RunResult> runs) {
    return runs.stream()
        .filter(run -> heatings.containsKey(run.run().key()))
        .map(run -> balance(run, new Growths(0, 0, 0)))
        .flatMap(Optional::stream)
        .map(Balance::heatingFit)
        .flatMap(Optional::stream)
        .map(fit -> fit.fire().growth())
        .toList();
  }

  /** How the fires of the study grow. */
  Growths growths() {
    return growths;
  }

  /** The balance of a run, where all that it needs is known. */
  Optional<Balance> of(RunResult run) {
    return balance(run, growths);
  }

  /** Why there is no balance of a run. */
  Message whyNot(RunResult run) {
    for (Figure needed : needed(run)) {
      if (needed instanceof Figure.Unknown unknown) {
        return unknown.reason();
      }
    }
    if (run.heat().pot().isEmpty()) {
      return STARTED_BOILING.with();
    }
    if (losses.of(run).isEmpty()) {
      return run.heat().noCooling().isEmpty()
          ? ODD_COOLING.with()
          : NOR_ANOTHER.with(Argument.clause(run.heat().noCooling()));
    }
    return REFERENCE_TOO_WARM.with();
  }

  private static List<Figure> needed(RunResult run) {
    return List.of(
        run.boil().boilTime(),
        run.conditions().water(),
        run.conditions().waterStart(),
        run.conditions().boilingPoint(),
        run.conditions().ambient());
  }

  private Optional<Balance> balance(RunResult run, Growths ofOthers) {
    Restatement.Reference reference = reference(run);
    boolean known = needed(run).stream().allMatch(Figure::isKnown);
    if (!known || run.heat().pot().isEmpty() || !reference.isPossible()) {
      return Optional.empty();
    }
    Optional<Heating> heating = Optional.ofNullable(heatings.get(run.run().key()));
    Restatement restatement = new Restatement(reference, heating, ofOthers.mean());
    return losses
        .of(run)
        .map(loss -> new Balance(restatement, inputs(run, loss), budgets(run, loss)))
        .map(balance -> withGrowth(balance, ofOthers));
  }

  private Restatement.Reference reference(RunResult run) {
    Optional<Double> pot = run.heat().pot().flatMap(HeatRecord.PotHeat::reference);
    return new Restatement.Reference(
        references.water(),
        pot.isPresent() ? OptionalDouble.of(pot.get()) : OptionalDouble.empty(),
        references.start(),
        references.boilingPoint(),
        Surroundings.at(references.ambient()));
  }

  private static Inputs inputs(RunResult run, LossEstimate loss) {
    return Inputs.start()
        .with(Input.WATER, run.conditions().water().orNaN())
        .with(Input.POT, run.heat().pot().orElseThrow().capacity())
        .with(Input.START, run.conditions().waterStart().orNaN())
        .with(Input.BOILING_POINT, run.conditions().boilingPoint().orNaN())
        .with(Input.AMBIENT, run.conditions().ambient().orNaN())
        .with(Input.BOIL_TIME, run.boil().boilTime().orNaN())
        .with(Input.PER_KELVIN, loss.loss().perKelvin())
        .with(Input.PER_PASCAL, loss.loss().perPascal());
  }

  private static Map<Input, Budget> budgets(RunResult run, LossEstimate loss) {
    Map<Input, Budget> budgets = new EnumMap<>(Balance.ofLoss(loss));
    budgets.put(Input.WATER, run.conditions().water().budget().named(Influence.WATER_MASS));
    budgets.put(
        Input.POT,
        Budget.of(
            BudgetLine.independent(Influence.POT, run.heat().pot().orElseThrow().uncertainty())));
    budgets.put(Input.START, run.conditions().waterStart().budget());
    budgets.put(
        Input.BOILING_POINT,
        run.conditions().boilingPoint().budget().named(Influence.BOILING_POINT));
    budgets.put(Input.AMBIENT, run.conditions().ambient().budget().named(Influence.AMBIENT));
    budgets.put(Input.BOIL_TIME, run.boil().boilTime().budget().named(Influence.BOIL_TIME));
    LossGroup group = LossGroup.of(run);
    budgets.put(Input.IN_FIRE, Balance.inFire(new Key(group.study(), "pot " + group.pot())));
    return budgets;
  }

  private static Balance withGrowth(Balance balance, Growths ofOthers) {
    Map<Input, Budget> budgets = new EnumMap<>(balance.budgets());
    budgets.put(
        Input.GROWTH,
        Budget.of(balance.heatingFit().map(RunBalances::line).orElseGet(() -> line(ofOthers))));
    return new Balance(balance.restatement(), balance.inputs(), budgets);
  }

  private static BudgetLine line(HeatingFit fit) {
    return new BudgetLine(
        Influence.FIRE_GROWTH, fit.growthUncertainty(), fit.degreesOfFreedom(), Optional.empty());
  }

  private static BudgetLine line(Growths ofOthers) {
    BudgetLine line =
        new BudgetLine(
            Influence.FIRE_GROWTH,
            ofOthers.uncertainty(),
            ofOthers.degreesOfFreedom(),
            Optional.empty());
    return ofOthers.runs() == 0 ? line.shaped(Shape.RECTANGULAR) : line;
  }
}
