package fairboil.analysis;

import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.compare.Comparison;
import fairboil.analysis.compare.Fairness;
import fairboil.analysis.compare.RankComparison;
import fairboil.analysis.effect.EffectChecks;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.fault.Fault;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.normalise.Normalisation;
import fairboil.analysis.precision.Precision;
import fairboil.analysis.precision.Repeatability;
import fairboil.analysis.protocol.RunProtocol;
import fairboil.analysis.protocol.Without;
import fairboil.analysis.run.References;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.grid.SourceFile;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything worked out for a study: what a report is made from. Immutable.
 *
 * @param study the sheets
 * @param references the reference conditions used
 * @param confidence the confidence of the intervals, between 0 and 1
 * @param runs one result a run, in the order of the study
 * @param builds one result a build, in the order of the study
 * @param rings one result for each build and ring of which holes were measured
 * @param holeEffects for each response and ring, those of the hole ring first
 * @param effectChecks the same asked in other ways, for each hole effect that could be estimated
 * @param comparisons differences between builds, designs and conditions
 * @param rankComparisons the same by rank, where some runs did not boil
 * @param fairness whether the comparisons are fair ones
 * @param repeatability scatter between runs and between builds
 * @param claims one result a claim, in the order of the study
 * @param findings all findings: of sheets, logs, runs and the study, sorted
 * @param precision who repeated the burns, and what each found
 * @param withExcluded the same with the runs that the sheet excludes, if it excludes any
 * @param protocol whether each run kept to what the group agreed, in the order of the runs; none if
 *     nothing was agreed
 * @param without the results without the runs that did not, where some did and some did not
 * @param normalisation how boil times were restated
 * @param faults parts at which the program failed; each is a finding too
 */
public record Results(
    Study study,
    References references,
    double confidence,
    List<RunResult> runs,
    List<BuildResult> builds,
    List<RingResult> rings,
    List<HoleEffect> holeEffects,
    List<EffectChecks> effectChecks,
    List<Comparison> comparisons,
    List<RankComparison> rankComparisons,
    Fairness fairness,
    List<Repeatability> repeatability,
    List<ClaimResult> claims,
    List<Finding> findings,
    Precision precision,
    Optional<WithExcluded> withExcluded,
    List<RunProtocol> protocol,
    Optional<Without> without,
    Normalisation normalisation,
    List<Fault> faults) {

  /** Copies the lists. */
  public Results {
    runs = List.copyOf(runs);
    builds = List.copyOf(builds);
    rings = List.copyOf(rings);
    holeEffects = List.copyOf(holeEffects);
    effectChecks = List.copyOf(effectChecks);
    comparisons = List.copyOf(comparisons);
    rankComparisons = List.copyOf(rankComparisons);
    repeatability = List.copyOf(repeatability);
    claims = List.copyOf(claims);
    findings = List.copyOf(findings);
    protocol = List.copyOf(protocol);
    faults = List.copyOf(faults);
  }

  /** Results of a study that nobody repeated, with no run excluded, nothing agreed, no balance. */
  public Results(
      Study study,
      References references,
      double confidence,
      List<RunResult> runs,
      List<BuildResult> builds,
      List<RingResult> rings,
      List<HoleEffect> holeEffects,
      List<EffectChecks> effectChecks,
      List<Comparison> comparisons,
      List<RankComparison> rankComparisons,
      Fairness fairness,
      List<Repeatability> repeatability,
      List<ClaimResult> claims,
      List<Finding> findings) {
    this(
        study,
        references,
        confidence,
        runs,
        builds,
        rings,
        holeEffects,
        effectChecks,
        comparisons,
        rankComparisons,
        fairness,
        repeatability,
        claims,
        findings,
        Precision.NONE,
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Normalisation.NONE,
        List.of());
  }

  /** Results of a study in which nothing is compared: without checks, comparisons and scatter. */
  public Results(
      Study study,
      References references,
      double confidence,
      List<RunResult> runs,
      List<BuildResult> builds,
      List<RingResult> rings,
      List<HoleEffect> holeEffects,
      List<ClaimResult> claims,
      List<Finding> findings) {
    this(
        study,
        references,
        confidence,
        runs,
        builds,
        rings,
        holeEffects,
        List.of(),
        List.of(),
        List.of(),
        Fairness.NONE,
        List.of(),
        claims,
        findings,
        Precision.NONE,
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Normalisation.NONE,
        List.of());
  }

  /** The same results with more faults, each a finding too. */
  public Results with(List<Fault> more) {
    return more.isEmpty()
        ? this
        : new Results(
            study,
            references,
            confidence,
            runs,
            builds,
            rings,
            holeEffects,
            effectChecks,
            comparisons,
            rankComparisons,
            fairness,
            repeatability,
            claims,
            Stream.concat(findings.stream(), study.told(findings(more)).stream())
                .distinct()
                .sorted()
                .toList(),
            precision,
            withExcluded,
            protocol,
            without,
            normalisation,
            Stream.concat(faults.stream(), more.stream()).distinct().toList());
  }

  private static List<Finding> findings(List<Fault> faults) {
    return faults.stream().map(Fault::finding).toList();
  }

  /** Every file that was read, once: sheets first, then logs in the order of the runs. */
  public List<SourceFile> sources() {
    Stream<SourceFile> logs = runs.stream().map(RunResult::source).flatMap(Optional::stream);
    return Stream.concat(study.sources().stream(), logs).distinct().toList();
  }
}
