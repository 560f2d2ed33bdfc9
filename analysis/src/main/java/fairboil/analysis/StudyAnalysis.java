package fairboil.analysis;

import fairboil.analysis.claim.Claims;
import fairboil.analysis.compare.Comparisons;
import fairboil.analysis.compare.FairnessFinder;
import fairboil.analysis.effect.HoleEffects;
import fairboil.analysis.group.BuildSummaries;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.layout.HoleLayout;
import fairboil.analysis.layout.LayoutResult;
import fairboil.analysis.normalise.Normalising;
import fairboil.analysis.precision.Repeatabilities;
import fairboil.analysis.protocol.Protocols;
import fairboil.analysis.protocol.RunProtocol;
import fairboil.analysis.protocol.Without;
import fairboil.analysis.run.References;
import fairboil.analysis.run.RunAnalysis;
import fairboil.analysis.run.RunResult;
import fairboil.analysis.run.SameLogs;
import fairboil.ingest.Study;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.log.LogOpener;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The whole analysis: a study in, results out. */
public final class StudyAnalysis {

  private static final double LEAST_CONFIDENCE = 0.5;
  private static final double MOST_CONFIDENCE = 0.9999;
  private static final double USUAL_CONFIDENCE = 0.95;

  private final Study study;
  private final List<Finding> findings = new ArrayList<>();

  private StudyAnalysis(Study study) {
    this.study = study;
    this.findings.addAll(study.findings());
  }

  /**
   * Works out a study on all processors.
   *
   * @param study the sheets
   * @param logs opens the log of each run; each is read once, worked out and dropped
   */
  public static Results of(Study study, LogOpener logs) {
    return of(study, logs, Runtime.getRuntime().availableProcessors());
  }

  /**
   * Works out a study; the same on any number of workers.
   *
   * @param study the sheets
   * @param logs opens the log of each run; called from several threads at once, for different runs
   * @param workers how many runs may be worked on at once, at least 1: so many logs are held
   */
  public static Results of(Study study, LogOpener logs, int workers) {
    References references = References.of(study);
    RunAnalysis analysis = new RunAnalysis(study, references);
    LogTurns turns = new LogTurns(logs);
    return of(
        study, references, run -> turns.with(run, () -> analysis.analyse(run, logs)), workers);
  }

  /**
   * Works out a study, run by run, then as a whole.
   *
   * @param references the reference conditions
   * @param perRun works out one run; called from several threads at once, for different runs
   * @param workers how many runs may be worked on at once, at least 1
   */
  static Results of(
      Study study, References references, Function<Run, RunResult> perRun, int workers) {
    return new StudyAnalysis(study).results(references, InOrder.map(study.runs(), workers, perRun));
  }

  private Results results(References references, List<RunResult> alone) {
    double confidence = confidence();
    Normalising.Outcome normalised = Normalising.of(study, references, alone, confidence);
    List<RunResult> runs = normalised.runs();
    LayoutResult layout = HoleLayout.of(study);
    HoleEffects.Outcome effects =
        HoleEffects.of(study, runs, layout, references.ambient(), confidence);
    Claims.Outcome claims = Claims.of(study, runs, effects.effects(), confidence);
    Comparisons.Outcome comparisons = Comparisons.of(study, runs, confidence);
    Repeatabilities.Outcome scatter = Repeatabilities.of(runs, confidence);
    List<RunProtocol> protocol = Protocols.of(study, runs);
    runs.forEach(run -> findings.addAll(run.findings()));
    findings.addAll(Protocols.findings(protocol));
    findings.addAll(normalised.findings());
    findings.addAll(SameLogs.of(runs));
    findings.addAll(layout.findings());
    findings.addAll(effects.findings());
    findings.addAll(comparisons.findings());
    findings.addAll(claims.findings());
    return new Results(
        study,
        references,
        confidence,
        runs,
        BuildSummaries.of(study.builds(), runs, confidence),
        layout.rings(),
        effects.effects(),
        effects.checks(),
        comparisons.differences(),
        comparisons.ranks(),
        FairnessFinder.of(study, runs),
        scatter.scatter(),
        claims.results(),
        study.told(findings).stream().distinct().sorted().toList(),
        scatter.precision(),
        withExcluded(runs, effects, confidence),
        protocol,
        without(references, runs, layout, protocol, confidence),
        normalised.normalisation());
  }

  private Optional<WithExcluded> withExcluded(
      List<RunResult> runs, HoleEffects.Outcome effects, double confidence) {
    long excluded = runs.stream().filter(run -> !run.inclusion().isWhole()).count();
    if (excluded == 0) {
      return Optional.empty();
    }
    List<RunResult> all = RunGroup.withExcluded(runs).runs();
    return Optional.of(
        new WithExcluded(
            (int) excluded,
            BuildSummaries.of(study.builds(), all, confidence),
            Claims.of(study, all, effects.effects(), confidence).results(),
            Comparisons.of(study, all, confidence).differences()));
  }

  /**
   * The same without the runs that did not keep to the protocol; what it finds is known by then.
   */
  private Optional<Without> without(
      References references,
      List<RunResult> runs,
      LayoutResult layout,
      List<RunProtocol> protocol,
      double confidence) {
    Set<Key> within =
        protocol.stream()
            .filter(RunProtocol::isWithin)
            .map(RunProtocol::run)
            .collect(Collectors.toSet());
    List<RunResult> kept = runs.stream().filter(it -> within.contains(it.run().key())).toList();
    if (kept.isEmpty() || kept.size() == runs.size()) {
      return Optional.empty();
    }
    HoleEffects.Outcome effects =
        HoleEffects.of(study, kept, layout, references.ambient(), confidence);
    return Optional.of(
        new Without(
            kept.size(),
            BuildSummaries.of(study.builds(), kept, confidence),
            effects.effects(),
            Repeatabilities.of(kept, confidence).scatter(),
            Claims.of(study, kept, effects.effects(), confidence).results()));
  }

  private double confidence() {
    Quantity asked = study.settings().get(Settings.CONFIDENCE);
    if (LEAST_CONFIDENCE <= asked.value() && asked.value() <= MOST_CONFIDENCE) {
      return asked.value();
    }
    findings.add(
        Finding.error(
            study.settings().place(Settings.CONFIDENCE),
            "a confidence must lie between 50 % and 99.99 %",
            "type 95 % or leave it out; 95 % was used"));
    return USUAL_CONFIDENCE;
  }
}
