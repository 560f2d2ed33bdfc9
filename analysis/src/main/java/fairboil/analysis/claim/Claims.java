package fairboil.analysis.claim;

import fairboil.analysis.claim.ClaimResult.Estimate;
import fairboil.analysis.claim.ClaimResult.Verdict;
import fairboil.analysis.claim.Evidence.Reach;
import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.group.BuildSummaries;
import fairboil.analysis.group.Summary;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.Chance;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.HoldsFor;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.sheet.Claim;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/** Tests the claims of a study. */
public final class Claims {

  private static final String NO_SCATTER =
      "all values are the same, so they have no scatter to judge it by; measure more finely";

  /** Counts rarer than this are not looked at. */
  private static final double NEGLIGIBLE = 1e-6;

  private final List<HoleEffect> effects;
  private final Subject.Finder finder;
  private final int seed;
  private final List<Finding> findings = new ArrayList<>();

  private Claims(Study study, List<RunResult> runs, List<HoleEffect> effects) {
    this.effects = effects;
    this.finder = new Subject.Finder(study, runs);
    this.seed = study.settings().get(Settings.SEED);
  }

  /**
   * Results and findings.
   *
   * @param results one a claim, in the order of the study; unmodifiable
   * @param findings what a reader should know of the sheet; unmodifiable
   */
  public record Outcome(List<ClaimResult> results, List<Finding> findings) {

    /** Copies the lists. */
    public Outcome {
      results = List.copyOf(results);
      findings = List.copyOf(findings);
    }
  }

  /** A claim that has been read, and what there is to judge it by or why it cannot be. */
  private record Prepared(
      Claim claim,
      Optional<Measure> measure,
      Optional<Statement> statement,
      Optional<Evidence> evidence,
      Optional<String> refusal) {}

  /**
   * Tests claims. The chance of an error is shared out over all those that can be tested
   * (Bonferroni).
   *
   * @param study the sheets
   * @param runs the results of all runs
   * @param effects the hole effects, the hole ring's first
   * @param confidence of all claims together, between 0 and 1
   */
  public static Outcome of(
      Study study, List<RunResult> runs, List<HoleEffect> effects, double confidence) {
    Claims claims = new Claims(study, runs, effects);
    List<Prepared> prepared = study.claims().stream().map(claims::prepare).toList();
    long testable = prepared.stream().filter(claim -> claim.evidence.isPresent()).count();
    double alpha = (1 - confidence) / Math.max(1, testable);
    return new Outcome(
        prepared.stream().map(claim -> result(claim, alpha)).toList(), claims.findings);
  }

  private Prepared prepare(Claim claim) {
    ClaimReader reader = new ClaimReader(claim, findings::add);
    Optional<Measure> measure = Optional.empty();
    try {
      measure = Optional.of(reader.measure());
      Optional<Subject> against = finder.against(claim);
      Statement statement =
          against.isPresent()
              ? reader.statement(measure.get().dimension().ofDifference(), Optional.of(0.0))
              : reader.statement(measure.get().dimension(), Optional.empty());
      Evidence evidence = evidence(claim, measure.get(), against);
      return new Prepared(
          claim, measure, Optional.of(statement), Optional.of(evidence), Optional.empty());
    } catch (Refusal refusal) {
      return new Prepared(
          claim,
          measure,
          Optional.empty(),
          Optional.empty(),
          Optional.ofNullable(refusal.getMessage()));
    }
  }

  private Evidence evidence(Claim claim, Measure measure, Optional<Subject> against)
      throws Refusal {
    if (measure.level() == Measure.Level.STUDY) {
      return holeEffect(measure);
    }
    Subject about = finder.about(claim);
    Means means = new Means(measure);
    if (claim.row().get(ClaimsSheet.HOLDS_FOR) == HoldsFor.MOST_RUNS) {
      return mostRuns(claim, means, about, against);
    }
    if (measure.level() == Measure.Level.BUILD) {
      return against.isEmpty() ? share(about) : shares(about, against.get());
    }
    return against.isEmpty()
        ? means.mean(about)
        : means.difference(about, against.get(), finder.where(claim));
  }

  private Evidence mostRuns(Claim claim, Means means, Subject about, Optional<Subject> against)
      throws Refusal {
    if (against.isPresent()) {
      throw new Refusal("most runs are judged against a value, not against other runs");
    }
    return means.mostRuns(
        about,
        claim.row().get(ClaimsSheet.RELATION),
        Chance.stream(seed, claim.key().name(), "most runs"));
  }

  private static Evidence share(Subject about) {
    int runs = about.runs().size();
    int builds = about.runs().byBuild().size();
    if (runs == 0) {
      return Evidence.none(0, 0, "no run counts");
    }
    return new Evidence(
            confidence -> Optional.of(share(about.runs().boiled(), runs, confidence)),
            runs,
            builds,
            Optional.empty())
        .with(
            (estimate, bounds, confidence) ->
                Optional.of(runsNeeded(estimate.value(), runs, bounds, confidence)));
  }

  private static Estimate share(int boiled, int runs, double confidence) {
    Summary share = BuildSummaries.share(boiled, runs, confidence);
    return new Estimate(share.mean(), share.interval().orElseThrow());
  }

  private static String runsNeeded(double share, int runs, Interval bounds, double confidence) {
    return Outlook.clause(
        Outlook.fewest(runs + 1, n -> power(share, n, bounds, confidence)),
        "burns",
        "the true share is");
  }

  /** How often so many burns settle it: the binomial chances of the counts that do. */
  private static double power(double share, int runs, Interval bounds, double confidence) {
    BinomialDistribution counts = BinomialDistribution.of(runs, share);
    double power = 0;
    for (int boiled = 0; boiled <= runs; boiled++) {
      double chance = counts.probability(boiled);
      if (chance > NEGLIGIBLE && !leaves(bounds, share(boiled, runs, confidence))) {
        power += chance;
      }
    }
    return power;
  }

  /** Whether an interval lies across a bound. */
  private static boolean leaves(Interval bounds, Estimate estimate) {
    Interval interval = estimate.interval();
    boolean inside = bounds.low() <= interval.low() && interval.high() <= bounds.high();
    boolean outside = interval.high() < bounds.low() || interval.low() > bounds.high();
    return !inside && !outside;
  }

  /** Two shares by their exact intervals (Newcombe, Statistics in Medicine 17, 1998). */
  private static Evidence shares(Subject about, Subject against) {
    int runs = about.runs().size() + against.runs().size();
    return new Evidence(
        confidence -> {
          Summary a = BuildSummaries.share(about.runs().boiled(), about.runs().size(), confidence);
          Summary b =
              BuildSummaries.share(against.runs().boiled(), against.runs().size(), confidence);
          double difference = a.mean() - b.mean();
          Interval ofA = a.interval().orElseThrow();
          Interval ofB = b.interval().orElseThrow();
          return Optional.of(
              new Estimate(
                  difference,
                  new Interval(
                      difference - Math.hypot(a.mean() - ofA.low(), ofB.high() - b.mean()),
                      difference + Math.hypot(ofA.high() - a.mean(), b.mean() - ofB.low()))));
        },
        runs,
        about.runs().byBuild().size() + against.runs().byBuild().size(),
        Optional.empty());
  }

  private Evidence holeEffect(Measure measure) {
    Measure response =
        measure == Measure.HOLE_EFFECT_ON_PEAK
            ? Measure.NORMALISED_PEAK
            : Measure.NORMALISED_BOIL_TIME;
    Optional<HoleEffect> effect =
        effects.stream().filter(each -> each.response() == response).findFirst();
    Optional<EffectRow> row = effect.flatMap(HoleEffect::headline);
    if (row.isEmpty()) {
      int builds = effect.map(each -> each.points().size()).orElse(0);
      return Evidence.none(0, builds, "there is no hole effect to judge it by");
    }
    EffectRow answer = row.get();
    return Evidence.student(
            answer.estimate(),
            answer.standardError(),
            answer.degreesOfFreedom(),
            answer.runs(),
            answer.builds(),
            Optional.empty())
        .with(
            new Scatter(
                answer.standardError(),
                answer.builds(),
                answer.degreesOfFreedom(),
                0,
                Scatter.builds(answer.runs(), answer.builds()),
                "slope"));
  }

  private static ClaimResult result(Prepared prepared, double alpha) {
    if (prepared.evidence.isEmpty()) {
      return new ClaimResult(
          prepared.claim,
          prepared.measure,
          Verdict.NOT_TESTABLE,
          prepared.refusal,
          Optional.empty(),
          Optional.empty(),
          1 - alpha,
          0,
          0);
    }
    Evidence evidence = prepared.evidence.get();
    Statement statement = prepared.statement.orElseThrow();
    double confidence = statement.confidence(alpha);
    Optional<Estimate> estimate = evidence.estimator().apply(confidence);
    if (estimate.filter(each -> each.interval().isPoint()).isPresent()) {
      evidence = Evidence.none(evidence.runs(), evidence.builds(), NO_SCATTER);
      estimate = Optional.empty();
    }
    Verdict verdict =
        estimate.map(each -> statement.verdict(each.interval())).orElse(Verdict.NOT_SETTLED);
    if (evidence.reach() == Reach.FROM_BELOW && !statement.holdsBeyond(verdict)) {
      estimate = Optional.empty();
      verdict = Verdict.NOT_SETTLED;
    }
    return new ClaimResult(
        prepared.claim,
        prepared.measure,
        verdict,
        reason(evidence, statement, estimate, verdict, confidence),
        estimate,
        Optional.of(statement.bounds()),
        confidence,
        evidence.runs(),
        evidence.builds());
  }

  /** What needs saying of the evidence; of a claim not settled also what would settle it. */
  private static Optional<String> reason(
      Evidence evidence,
      Statement statement,
      Optional<Estimate> estimate,
      Verdict verdict,
      double confidence) {
    boolean more = verdict == Verdict.NOT_SETTLED && estimate.isPresent();
    Optional<String> needed =
        more
            ? evidence
                .outlook()
                .flatMap(it -> it.needed(estimate.get(), statement.bounds(), confidence))
            : Optional.empty();
    return evidence.reason().isPresent() && needed.isPresent()
        ? Optional.of(evidence.reason().get() + "; " + needed.get())
        : evidence.reason().or(() -> needed);
  }
}
