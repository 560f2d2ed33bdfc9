package fairboil.analysis.normalise;

import fairboil.analysis.fault.Fault;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.heat.HeatingFit;
import fairboil.analysis.heat.LossEstimate;
import fairboil.analysis.heat.LossEstimate.Source;
import fairboil.analysis.model.Chance;
import fairboil.analysis.normalise.Normalisation.Check;
import fairboil.analysis.normalise.Normalisation.Lacking;
import fairboil.analysis.run.BalanceResult;
import fairboil.analysis.run.BalanceResult.Fitted;
import fairboil.analysis.run.BalanceResult.GrowthFrom;
import fairboil.analysis.run.Conditions;
import fairboil.analysis.run.EnergyResult;
import fairboil.analysis.run.HeatRecord.Part;
import fairboil.analysis.run.References;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.PotsSheet;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * Restates the boil times of a study for reference conditions, by one method for all runs: by heat
 * balance if for every run that counts and boiled the loss of its pot is known so well that its
 * share of the uncertainty is under 2 % of the result; else by energy scaling. Pure.
 */
public final class Normalising {

  /** Share of the result that the uncertainty of the loss may make up. */
  private static final double MOST_OF_LOSS = 0.02;

  private static final int CHECK_DRAWS = 2000;

  private static final Argument STUDY = Argument.sheet(Settings.SCHEMA.file());
  private static final Argument RUNS = Argument.sheet(RunsSheet.SCHEMA.file());
  private static final Argument POTS = Argument.sheet(PotsSheet.SCHEMA.file());

  private final Study study;
  private final References references;
  private final double confidence;
  private final List<RunResult> runs;
  private final Losses losses;
  private final RunBalances balances;
  private final Faults faults = new Faults();

  private Normalising(Study study, References references, List<RunResult> runs, double confidence) {
    this.study = study;
    this.references = references;
    this.runs = runs;
    this.confidence = confidence;
    this.losses = Losses.of(study, runs);
    this.balances = new RunBalances(references, losses, runs);
  }

  /**
   * What came of it.
   *
   * @param runs the runs with their boil times restated, in the same order; unmodifiable
   * @param normalisation what was decided, and why
   * @param findings what a reader should know; unmodifiable
   * @param faults runs at whose heat balance the program failed; unmodifiable
   */
  public record Outcome(
      List<RunResult> runs,
      Normalisation normalisation,
      List<Finding> findings,
      List<Fault> faults) {

    /** Copies the lists. */
    public Outcome {
      runs = List.copyOf(runs);
      findings = List.copyOf(findings);
      faults = List.copyOf(faults);
    }

    /** Runs that are left as they are by themselves, for a reason that a fault tells. */
    public static Outcome unchanged(List<RunResult> runs) {
      return new Outcome(runs, Normalisation.NONE, List.of(), List.of());
    }
  }

  /**
   * Restates the boil times of a study.
   *
   * @param runs all runs as worked out by themselves
   * @param confidence of the intervals, between 0 and 1
   */
  public static Outcome of(
      Study study, References references, List<RunResult> runs, double confidence) {
    return new Normalising(study, references, runs, confidence).outcome();
  }

  /**
   * A run with its balance, before the method is decided.
   *
   * @param whyNot why there is no balance; empty if there is one
   */
  private record Worked(
      RunResult run, Optional<Balance> balance, EnergyResult energy, Message whyNot) {}

  private Outcome outcome() {
    List<Worked> worked = runs.stream().map(this::contained).toList();
    List<Lacking> lacking = lacking(worked);
    NormaliseBy method = method(worked, lacking);
    List<RunResult> restated =
        worked.stream().map(each -> each.run().with(chosen(each.energy(), method))).toList();
    Normalisation normalisation =
        new Normalisation(
            method,
            losses.pools(),
            lacking,
            method == NormaliseBy.HEAT_BALANCE ? check(worked) : Optional.empty());
    return new Outcome(restated, normalisation, findings(worked, lacking), faults.all());
  }

  private Worked contained(RunResult run) {
    return faults
        .contain(
            "the heat balance of run " + run.run().key(), run.run().row().place(), () -> work(run))
        .orElseGet(() -> withoutBalance(run));
  }

  private static Worked withoutBalance(RunResult run) {
    Message whyNot = HeatSays.FAILED.with();
    Figure unknown = noBalance(whyNot);
    EnergyResult alone = run.energy();
    EnergyResult energy =
        new EnergyResult(
            alone.netPower(),
            unknown,
            unknown,
            alone.energyScaledBoilTime(),
            unknown,
            alone.normalisedBoilTime(),
            alone.normalisedBy());
    return new Worked(run, Optional.empty(), energy, whyNot);
  }

  private Worked work(RunResult run) {
    Optional<Balance> balance = balances.of(run);
    EnergyResult alone = run.energy();
    Message whyNot = balance.isPresent() ? Message.NONE : balances.whyNot(run);
    Figure unknown = noBalance(whyNot);
    Optional<LossEstimate> loss = losses.of(run);
    EnergyResult energy =
        new EnergyResult(
            alone.netPower(),
            balance.flatMap(it -> growth(run, it)).orElse(unknown),
            loss.map(Normalising::figure).orElse(unknown),
            alone.energyScaledBoilTime(),
            balance.map(it -> boilTime(run, it, loss.orElseThrow())).orElse(unknown),
            alone.normalisedBoilTime(),
            alone.normalisedBy(),
            balance.flatMap(it -> result(run, it, loss.orElseThrow())));
    return new Worked(run, balance, energy, whyNot);
  }

  private static Figure noBalance(Message whyNot) {
    return Figure.unknown(HeatSays.NO_BALANCE.with(Argument.clause(whyNot)));
  }

  private static Figure figure(LossEstimate loss) {
    return Budget.of(
            new BudgetLine(
                Influence.HEAT_LOSS, loss.uncertainty(), loss.degreesOfFreedom(), Optional.empty()))
        .around(loss.loss().perKelvin(), Dimension.CONDUCTANCE);
  }

  /** Only where a log shows it. */
  private static Optional<Figure> growth(RunResult run, Balance balance) {
    return balance.heatingFit().isPresent()
        ? Optional.of(balance.growth())
        : Optional.of(
            Figure.unknown(HeatSays.NO_HEATING.with(Argument.name(run.run().key().name()))));
  }

  private Figure boilTime(RunResult run, Balance balance, LossEstimate loss) {
    return balance.boilTime(
        loss.perKelvinByPerPascal(), confidence, stream(run, "normalised boil time"));
  }

  private RandomGenerator stream(RunResult run, String purpose) {
    Key key = run.run().key();
    return Chance.stream(
        study.settings().get(Settings.SEED), key.study() + "/" + key.name(), purpose);
  }

  private Optional<BalanceResult> result(RunResult run, Balance balance, LossEstimate loss) {
    Optional<HeatingFit> heating = balance.heatingFit();
    return balance
        .fire()
        .map(
            fire ->
                new BalanceResult(
                    loss,
                    fire,
                    growthFrom(heating),
                    heating.map(fit -> fitted(run.heat().heating(), fit.residuals())),
                    losses.fit(run).map(fit -> fitted(run.heat().cooling(), fit.residuals()))));
  }

  private GrowthFrom growthFrom(Optional<HeatingFit> heating) {
    if (heating.isPresent()) {
      return GrowthFrom.OWN_LOG;
    }
    return balances.growths().runs() > 0 ? GrowthFrom.OTHER_RUNS : GrowthFrom.NOT_KNOWN;
  }

  private static Fitted fitted(Optional<Part> part, double[] residuals) {
    return new Fitted(part.orElseThrow().origin(), part.orElseThrow().blocks(), residuals);
  }

  private static List<Lacking> lacking(List<Worked> worked) {
    List<Lacking> lacking = new ArrayList<>();
    for (Worked each : worked) {
      RunResult run = each.run();
      if (run.inclusion().includedForBoil() && run.boil().boilTime().isKnown()) {
        reason(each).ifPresent(why -> lacking.add(new Lacking(run.run().key(), why)));
      }
    }
    return lacking;
  }

  private static Optional<Message> reason(Worked worked) {
    Figure figure = worked.energy().heatBalanceBoilTime();
    if (worked.balance().isEmpty()) {
      return Optional.of(worked.whyNot());
    }
    double ofLoss =
        figure.budget().lines().stream()
            .filter(line -> line.influence() == Influence.HEAT_LOSS)
            .mapToDouble(BudgetLine::contribution)
            .sum();
    return figure.isKnown() && ofLoss > MOST_OF_LOSS * figure.orNaN()
        ? Optional.of(HeatSays.POOR_LOSS.with())
        : Optional.empty();
  }

  private NormaliseBy method(List<Worked> worked, List<Lacking> lacking) {
    if (references.normaliseBy() != NormaliseBy.AUTO) {
      return references.normaliseBy();
    }
    boolean any =
        worked.stream()
            .anyMatch(
                each ->
                    each.run().inclusion().includedForBoil()
                        && each.energy().heatBalanceBoilTime().isKnown());
    return any && lacking.isEmpty() ? NormaliseBy.HEAT_BALANCE : NormaliseBy.ENERGY_SCALING;
  }

  private static EnergyResult chosen(EnergyResult energy, NormaliseBy method) {
    Figure figure =
        method == NormaliseBy.HEAT_BALANCE
            ? energy.heatBalanceBoilTime()
            : energy.energyScaledBoilTime();
    return new EnergyResult(
        energy.netPower(),
        energy.powerGrowth(),
        energy.loss(),
        energy.energyScaledBoilTime(),
        energy.heatBalanceBoilTime(),
        figure,
        figure.isKnown() ? Optional.of(method) : Optional.empty(),
        energy.balance());
  }

  /** Of the first run that counts and stands wholly on its own log, else of the first. */
  private Optional<Check> check(List<Worked> worked) {
    List<Worked> counted =
        worked.stream()
            .filter(each -> each.run().inclusion().includedForBoil())
            .filter(each -> each.energy().heatBalanceBoilTime().isKnown())
            .toList();
    return counted.stream()
        .filter(Normalising::standsOnItsOwnLog)
        .findFirst()
        .or(() -> counted.stream().findFirst())
        .flatMap(this::check);
  }

  private static boolean standsOnItsOwnLog(Worked worked) {
    return worked
        .energy()
        .balance()
        .filter(it -> it.loss().source() == Source.OWN && it.heating().isPresent())
        .isPresent();
  }

  private Optional<Check> check(Worked worked) {
    Figure.Known known = (Figure.Known) worked.energy().heatBalanceBoilTime();
    LossEstimate loss = losses.of(worked.run()).orElseThrow();
    Interval firstOrder = known.measured().interval(confidence);
    return worked
        .balance()
        .orElseThrow()
        .drawn(CHECK_DRAWS, loss.perKelvinByPerPascal(), stream(worked.run(), "check"))
        .map(
            drawn ->
                new Check(
                    worked.run().run().key(), firstOrder, drawn.interval(confidence), CHECK_DRAWS));
  }

  private List<Finding> findings(List<Worked> worked, List<Lacking> lacking) {
    boolean boiled = worked.stream().anyMatch(each -> each.run().boil().boilTime().isKnown());
    if (!boiled || lacking.isEmpty() || references.normaliseBy() == NormaliseBy.ENERGY_SCALING) {
      return List.of();
    }
    Lacking first = lacking.get(0);
    Message which =
        HeatSays.OF_RUN.with(Argument.name(first.run().name()), Argument.clause(first.reason()));
    Message problem =
        lacking.size() == 1
            ? HeatSays.ONE_LACKS.with(Argument.clause(which), Argument.clause(consequence()))
            : HeatSays.SOME_LACK.with(
                Argument.count(lacking.size()),
                Argument.clause(which),
                Argument.clause(consequence()));
    return List.of(
        Finding.note(
            study.settings().place(Settings.NORMALISE_BY), problem, remedy(first, worked)));
  }

  /** What would give the first of them its balance. */
  private static Message remedy(Lacking lacking, List<Worked> worked) {
    Conditions known =
        worked.stream()
            .map(each -> each.run())
            .filter(run -> run.run().key().equals(lacking.run()))
            .map(RunResult::conditions)
            .findFirst()
            .orElseThrow();
    List<Figure> told =
        List.of(known.ambient(), known.water(), known.waterStart(), known.heatCapacity());
    boolean asked = told.stream().anyMatch(figure -> isFor(figure, lacking.reason()));
    boolean ofPlace = isFor(known.boilingPoint(), lacking.reason());
    if (ofPlace || (!asked && !known.boilingPoint().isKnown())) {
      return HeatSays.TYPE_ALTITUDE.with(STUDY, RUNS);
    }
    return told.stream().allMatch(Figure::isKnown)
        ? HeatSays.LOG_COOLING.with(POTS)
        : HeatSays.TYPE_IT.with(RUNS, POTS);
  }

  private static boolean isFor(Figure figure, Message reason) {
    return figure instanceof Figure.Unknown unknown && unknown.reason().equals(reason);
  }

  private Message consequence() {
    return references.normaliseBy() == NormaliseBy.HEAT_BALANCE
        ? Message.NONE
        : HeatSays.NOT_FOR_AIR.with();
  }
}
