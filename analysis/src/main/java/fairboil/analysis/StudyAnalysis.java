package fairboil.analysis;

import fairboil.analysis.claim.Claims;
import fairboil.analysis.compare.Comparisons;
import fairboil.analysis.compare.Fairness;
import fairboil.analysis.compare.FairnessFinder;
import fairboil.analysis.effect.HoleEffects;
import fairboil.analysis.fault.Fault;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.BuildSummaries;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.layout.HoleLayout;
import fairboil.analysis.layout.LayoutResult;
import fairboil.analysis.normalise.Normalising;
import fairboil.analysis.precision.Repeatabilities;
import fairboil.analysis.protocol.Protocols;
import fairboil.analysis.protocol.RunProtocol;
import fairboil.analysis.protocol.Without;
import fairboil.analysis.run.LostRun;
import fairboil.analysis.run.References;
import fairboil.analysis.run.RunAnalysis;
import fairboil.analysis.run.RunResult;
import fairboil.analysis.run.SameLogs;
import fairboil.ingest.Study;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.log.LogOpener;
import fairboil.ingest.log.OpenedLog;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.ProtocolSheet;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The whole analysis: a study in, results out. What nobody foresaw costs the part in which it
 * happens; the results tell which.
 */
public final class StudyAnalysis {

  private static final double LEAST_CONFIDENCE = 0.5;
  private static final double MOST_CONFIDENCE = 0.9999;
  private static final double USUAL_CONFIDENCE = 0.95;

  private final Study study;
  private final List<Finding> findings = new ArrayList<>();
  private final Faults faults = new Faults();

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
        study,
        references,
        (run, faults) ->
            turns.with(run, () -> analysis.analyse(run, open -> opened(open, logs, faults))),
        workers);
  }

  private static OpenedLog opened(Run run, LogOpener logs, Faults faults) {
    return faults
        .contain(
            StudySays.LOG.with(Argument.name(run.key().name())),
            run.row().place(),
            () -> logs.open(run))
        .orElseGet(() -> new OpenedLog(Optional.empty(), Optional.empty(), findings(faults)));
  }

  private static List<Finding> findings(Faults faults) {
    return faults.all().stream().map(Fault::finding).toList();
  }

  /**
   * Works out a study, run by run, then as a whole.
   *
   * @param references the reference conditions
   * @param perRun works out one run and tells faults in parts of it; called from several threads at
   *     once, for different runs
   * @param workers how many runs may be worked on at once, at least 1
   */
  static Results of(
      Study study, References references, BiFunction<Run, Faults, RunResult> perRun, int workers) {
    List<Worked> worked = InOrder.map(study.runs(), workers, run -> Worked.of(study, run, perRun));
    StudyAnalysis analysis = new StudyAnalysis(study);
    worked.forEach(each -> analysis.faults.addAll(each.faults()));
    return analysis.results(references, worked.stream().map(Worked::result).toList());
  }

  /** A run, and what went wrong in it. */
  private record Worked(RunResult result, List<Fault> faults) {

    static Worked of(Study study, Run run, BiFunction<Run, Faults, RunResult> perRun) {
      Faults own = new Faults();
      RunResult result =
          own.contain(
                  StudySays.RUN.with(Argument.name(run.key().name())),
                  run.row().place(),
                  () -> perRun.apply(run, own))
              .orElseGet(() -> LostRun.of(study, run, findings(own)));
      return new Worked(result, own.all());
    }
  }

  private Results results(References references, List<RunResult> alone) {
    double confidence = confidence();
    Normalising.Outcome normalised = normalised(references, alone, confidence);
    List<RunResult> runs = normalised.runs();
    LayoutResult layout = layout();
    HoleEffects.Outcome effects = effects(runs, layout, references, confidence);
    Claims.Outcome claims = claims(runs, effects, confidence);
    Comparisons.Outcome comparisons = comparisons(runs, confidence);
    Repeatabilities.Outcome scatter = scatter(runs, confidence);
    List<RunProtocol> protocol = protocol(runs);
    runs.forEach(run -> findings.addAll(run.findings()));
    findings.addAll(Protocols.findings(protocol));
    findings.addAll(normalised.findings());
    findings.addAll(sameLogs(runs));
    findings.addAll(layout.findings());
    findings.addAll(effects.findings());
    findings.addAll(comparisons.findings());
    findings.addAll(claims.findings());
    return new Results(
            study,
            references,
            confidence,
            runs,
            builds(runs, confidence),
            layout.rings(),
            effects.effects(),
            effects.checks(),
            comparisons.differences(),
            comparisons.ranks(),
            fairness(runs),
            scatter.scatter(),
            claims.results(),
            study.told(findings).stream().distinct().sorted().toList(),
            scatter.precision(),
            contain(StudySays.RESULTS_COUNTED, () -> withExcluded(runs, effects, confidence))
                .flatMap(all -> all),
            protocol,
            contain(
                    StudySays.RESULTS_WITHIN,
                    () -> without(references, runs, layout, protocol, confidence))
                .flatMap(kept -> kept),
            normalised.normalisation(),
            List.of())
        .with(faults.all());
  }

  /** Does a part that is about all runs; empty if it is lost. */
  private <R> Optional<R> contain(Template part, Faults.Work<R, RuntimeException> work) {
    return faults.contain(part.with(), Place.of(RunsSheet.SCHEMA.file()), work);
  }

  private Normalising.Outcome normalised(
      References references, List<RunResult> alone, double confidence) {
    Normalising.Outcome outcome =
        contain(StudySays.BALANCES, () -> Normalising.of(study, references, alone, confidence))
            .orElseGet(() -> Normalising.Outcome.unchanged(alone));
    faults.addAll(outcome.faults());
    return outcome;
  }

  private LayoutResult layout() {
    LayoutResult layout =
        faults
            .contain(
                StudySays.HOLES.with(),
                Place.of(HolesSheet.SCHEMA.file()),
                () -> HoleLayout.of(study))
            .orElseGet(() -> new LayoutResult(List.of(), List.of()));
    faults.addAll(layout.faults());
    return layout;
  }

  private HoleEffects.Outcome effects(
      List<RunResult> runs, LayoutResult layout, References references, double confidence) {
    HoleEffects.Outcome outcome =
        contain(
                StudySays.EFFECTS,
                () -> HoleEffects.of(study, runs, layout, references.ambient(), confidence))
            .orElse(HoleEffects.Outcome.NONE);
    faults.addAll(outcome.faults());
    return outcome;
  }

  private Claims.Outcome claims(
      List<RunResult> runs, HoleEffects.Outcome effects, double confidence) {
    Claims.Outcome outcome =
        faults
            .contain(
                StudySays.CLAIMS.with(),
                Place.of(ClaimsSheet.SCHEMA.file()),
                () -> Claims.of(study, runs, effects.effects(), confidence))
            .orElseGet(() -> Claims.lost(study, confidence));
    faults.addAll(outcome.faults());
    return outcome;
  }

  private Comparisons.Outcome comparisons(List<RunResult> runs, double confidence) {
    Comparisons.Outcome outcome =
        contain(StudySays.COMPARISONS, () -> Comparisons.of(study, runs, confidence))
            .orElse(Comparisons.Outcome.NONE);
    faults.addAll(outcome.faults());
    return outcome;
  }

  private Repeatabilities.Outcome scatter(List<RunResult> runs, double confidence) {
    Repeatabilities.Outcome outcome =
        contain(StudySays.SCATTER, () -> Repeatabilities.of(runs, confidence))
            .orElse(Repeatabilities.Outcome.NONE);
    faults.addAll(outcome.faults());
    return outcome;
  }

  private List<RunProtocol> protocol(List<RunResult> runs) {
    return faults
        .contain(
            StudySays.PROTOCOL.with(),
            Place.of(ProtocolSheet.SCHEMA.file()),
            () -> Protocols.of(study, runs))
        .orElse(List.of());
  }

  private List<Finding> sameLogs(List<RunResult> runs) {
    return contain(StudySays.SAME_LOGS, () -> SameLogs.of(runs)).orElse(List.of());
  }

  private List<BuildResult> builds(List<RunResult> runs, double confidence) {
    return contain(
            StudySays.BUILDS, () -> BuildSummaries.of(study.builds(), runs, confidence, faults))
        .orElse(List.of());
  }

  private Fairness fairness(List<RunResult> runs) {
    return contain(StudySays.FAIRNESS, () -> FairnessFinder.of(study, runs)).orElse(Fairness.NONE);
  }

  private Optional<WithExcluded> withExcluded(
      List<RunResult> runs, HoleEffects.Outcome effects, double confidence) {
    long excluded =
        runs.stream()
            .map(RunResult::inclusion)
            .filter(inclusion -> !inclusion.isWhole() && !inclusion.isLost())
            .count();
    if (excluded == 0) {
      return Optional.empty();
    }
    List<RunResult> all = RunGroup.withExcluded(runs).runs();
    Faults own = new Faults();
    List<BuildResult> builds = BuildSummaries.of(study.builds(), all, confidence, own);
    Claims.Outcome claims = Claims.of(study, all, effects.effects(), confidence);
    Comparisons.Outcome comparisons = Comparisons.of(study, all, confidence);
    Stream.of(own.all(), claims.faults(), comparisons.faults())
        .forEach(some -> faults.addAll(some, StudySays.COUNTED));
    return Optional.of(
        new WithExcluded((int) excluded, builds, claims.results(), comparisons.differences()));
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
    Faults own = new Faults();
    List<BuildResult> builds = BuildSummaries.of(study.builds(), kept, confidence, own);
    Repeatabilities.Outcome scatter = Repeatabilities.of(kept, confidence);
    Claims.Outcome claims = Claims.of(study, kept, effects.effects(), confidence);
    Stream.of(own.all(), effects.faults(), scatter.faults(), claims.faults())
        .forEach(some -> faults.addAll(some, StudySays.WITHIN));
    return Optional.of(
        new Without(kept.size(), builds, effects.effects(), scatter.scatter(), claims.results()));
  }

  private double confidence() {
    Quantity asked = study.settings().get(Settings.CONFIDENCE);
    if (LEAST_CONFIDENCE <= asked.value() && asked.value() <= MOST_CONFIDENCE) {
      return asked.value();
    }
    findings.add(
        Finding.error(
            study.settings().place(Settings.CONFIDENCE),
            StudySays.ODD_CONFIDENCE.with(
                Argument.share(LEAST_CONFIDENCE),
                Argument.number(100 * MOST_CONFIDENCE, 2),
                Argument.share(USUAL_CONFIDENCE)),
            StudySays.TYPE_CONFIDENCE.with(Argument.share(USUAL_CONFIDENCE))));
    return USUAL_CONFIDENCE;
  }
}
