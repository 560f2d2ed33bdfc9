package fairboil.reports;

import fairboil.analysis.Results;
import fairboil.analysis.WithExcluded;
import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.effect.EffectChecks;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.group.BuildSummaries;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Results with a part exchanged. */
public final class Altered {

  private Altered() {}

  /** The results with other settings. */
  public static Results settings(Results results, Row settings) {
    Study study = results.study();
    return new Results(
        new Study(
            study.name(),
            settings,
            study.builds(),
            study.rings(),
            study.holes(),
            study.pots(),
            study.runs(),
            study.marks(),
            study.sensors(),
            study.claims(),
            study.protocol(),
            study.sources(),
            study.findings()),
        results.references(),
        results.confidence(),
        results.runs(),
        results.builds(),
        results.rings(),
        results.holeEffects(),
        results.effectChecks(),
        results.comparisons(),
        results.rankComparisons(),
        results.fairness(),
        results.repeatability(),
        results.claims(),
        results.findings());
  }

  /** The results with other findings. */
  public static Results findings(Results results, List<Finding> findings) {
    return with(results, results.runs(), results.holeEffects(), results.claims(), findings);
  }

  /** The results with their runs exchanged. */
  public static Results runs(Results results, UnaryOperator<RunResult> change) {
    return with(
        results,
        results.runs().stream().map(change).toList(),
        results.holeEffects(),
        results.claims(),
        results.findings());
  }

  /** The results with other hole effects. */
  public static Results holeEffects(Results results, List<HoleEffect> effects) {
    return with(results, results.runs(), effects, results.claims(), results.findings());
  }

  /** The results with other checks of their hole effects. */
  public static Results effectChecks(Results results, List<EffectChecks> checks) {
    return new Results(
        results.study(),
        results.references(),
        results.confidence(),
        results.runs(),
        results.builds(),
        results.rings(),
        results.holeEffects(),
        checks,
        results.comparisons(),
        results.rankComparisons(),
        results.fairness(),
        results.repeatability(),
        results.claims(),
        results.findings());
  }

  /** The results with other claims. */
  public static Results claims(Results results, List<ClaimResult> claims) {
    return with(results, results.runs(), results.holeEffects(), claims, results.findings());
  }

  /** The results with the rows of their runs exchanged. */
  public static Results rows(Results results, UnaryOperator<Row> change) {
    return with(
        results,
        results.runs().stream().map(run -> row(run, change)).toList(),
        results.holeEffects(),
        results.claims(),
        results.findings());
  }

  private static RunResult row(RunResult run, UnaryOperator<Row> change) {
    Run sheet = run.run();
    return new RunResult(
        new Run(sheet.key(), sheet.build(), change.apply(sheet.row())),
        run.build(),
        run.inclusion(),
        run.state(),
        run.conditions(),
        run.timeline(),
        run.flame(),
        run.boil(),
        run.energy(),
        run.fuel(),
        run.sketch(),
        run.source(),
        run.rows(),
        run.samples(),
        run.findings());
  }

  private static Results with(
      Results results,
      List<RunResult> runs,
      List<HoleEffect> effects,
      List<ClaimResult> claims,
      List<Finding> findings) {
    return new Results(
        results.study(),
        results.references(),
        results.confidence(),
        runs,
        results.builds(),
        results.rings(),
        effects,
        results.effectChecks(),
        results.comparisons(),
        results.rankComparisons(),
        results.fairness(),
        results.repeatability(),
        claims,
        findings);
  }

  /** The same, with what would have come out had the excluded runs been counted. */
  public static Results withExcluded(Results results) {
    List<RunResult> all = results.runs().stream().map(RunResult::asIfIncluded).toList();
    return new Results(
        results.study(),
        results.references(),
        results.confidence(),
        results.runs(),
        results.builds(),
        results.rings(),
        results.holeEffects(),
        results.effectChecks(),
        results.comparisons(),
        results.rankComparisons(),
        results.fairness(),
        results.repeatability(),
        results.claims(),
        results.findings(),
        results.precision(),
        Optional.of(
            new WithExcluded(
                1,
                BuildSummaries.of(
                    results.study().builds(), all, results.confidence(), new Faults()),
                results.claims(),
                results.comparisons())),
        results.protocol(),
        results.without(),
        results.normalisation(),
        results.faults());
  }
}
