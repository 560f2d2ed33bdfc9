package fairboil.analysis.claim;

import fairboil.analysis.claim.ClaimResult.Estimate;
import fairboil.analysis.claim.ClaimResult.Verdict;
import fairboil.analysis.claim.Evidence.Reach;
import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.fault.Fault;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.group.BoilCount;
import fairboil.analysis.group.BuildSummaries;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.group.Summary;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.measure.WithoutBoil;
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
      "the values do not scatter at all, so there is nothing to judge it by; measure more finely";

  private static final String FAILED =
      "this program failed at this claim; that says nothing of the claim itself";

  /** Counts rarer than this are not looked at. */
  private static final double NEGLIGIBLE = 1e-6;

  private final List<HoleEffect> effects;
  private final Subject.Finder finder;
  private final int seed;
  private final List<Finding> findings = new ArrayList<>();
  private final Faults faults = new Faults();

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
   * @param faults claims at which the program failed; unmodifiable
   */
  public record Outcome(List<ClaimResult> results, List<Finding> findings, List<Fault> faults) {

    /** Copies the lists. */
    public Outcome {
      results = List.copyOf(results);
      findings = List.copyOf(findings);
      faults = List.copyOf(faults);
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
    List<Prepared> prepared = study.claims().stream().map(claims::prepared).toList();
    long lost = claims.faults.all().size(); // they were to be tested, so others stand unchanged
    long testable = lost + prepared.stream().filter(claim -> claim.evidence.isPresent()).count();
    double alpha = (1 - confidence) / Math.max(1, testable);
    List<ClaimResult> results =
        prepared.stream().map(claim -> claims.contained(claim, alpha)).toList();
    return new Outcome(results, claims.findings, claims.faults.all());
  }

  /** The claims of a study at all of which the program failed, as their own fault tells. */
  public static Outcome lost(Study study, double confidence) {
    List<ClaimResult> results =
        study.claims().stream().map(claim -> notTestable(lost(claim), 1 - confidence)).toList();
    return new Outcome(results, List.of(), List.of());
  }

  private static Prepared lost(Claim claim) {
    return new Prepared(
        claim, Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(FAILED));
  }

  private Prepared prepared(Claim claim) {
    return contain(claim, () -> prepare(claim)).orElseGet(() -> lost(claim));
  }

  private ClaimResult contained(Prepared prepared, double alpha) {
    return contain(prepared.claim, () -> result(prepared, alpha))
        .orElseGet(() -> notTestable(lost(prepared.claim), alpha));
  }

  private <R> Optional<R> contain(Claim claim, Faults.Work<R, RuntimeException> work) {
    return faults.contain("claim " + claim.key(), claim.row().place(), work);
  }

  private Prepared prepare(Claim claim) {
    ClaimReader reader = new ClaimReader(claim, findings::add);
    Optional<Measure> measure = Optional.empty();
    try {
      measure = Optional.of(reader.measure());
      reader.refuseUnread();
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
    return withUnseen(ofRuns(claim, measure, about, against), measure, about, against);
  }

  private Evidence ofRuns(Claim claim, Measure measure, Subject about, Optional<Subject> against)
      throws Refusal {
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

  /** What was not seen is no failure, but the reader has to know of how many runs it was not. */
  private static Evidence withUnseen(
      Evidence evidence, Measure measure, Subject about, Optional<Subject> against) {
    boolean needsABoil =
        measure.level() == Measure.Level.RUN
            && measure.withoutBoil() != WithoutBoil.HAS_A_VALUE
            && measure.withoutBoil() != WithoutBoil.HAS_NONE_IF_WEIGHED_AT_THE_BOIL;
    int unseen =
        about.runs().boils().unseen()
            + against.map(other -> other.runs().boils().unseen()).orElse(0);
    return needsABoil && unseen > 0
        ? evidence.saying(
            "in "
                + unseen
                + (unseen == 1 ? " more run" : " more runs")
                + " nobody saw whether the water boiled")
        : evidence;
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

  /** Of the runs that are judged; the interval allows for either fate of those not seen. */
  private static Evidence share(Subject about) {
    BoilCount boils = about.runs().boils();
    int builds = about.runs().byBuild().size();
    if (boils.judged() == 0) {
      return Evidence.none(0, builds, nothingJudged(about.runs()));
    }
    Evidence evidence =
        new Evidence(
            confidence -> Optional.of(share(boils, confidence)),
            boils.judged(),
            builds,
            unseen(boils.unseen()));
    return boils.unseen() > 0
        ? evidence
        : evidence.with(
            (estimate, bounds, confidence) ->
                Optional.of(runsNeeded(estimate.value(), boils.judged(), bounds, confidence)));
  }

  private static String nothingJudged(RunGroup runs) {
    return runs.boils().unseen() == 0
        ? "no run counts"
        : "in none of "
            + runs.boils().unseen()
            + (runs.boils().unseen() == 1 ? " run" : " runs")
            + " was it seen whether the water boiled";
  }

  private static Optional<String> unseen(int runs) {
    return runs == 0
        ? Optional.empty()
        : Optional.of(
            "in "
                + runs
                + (runs == 1 ? " more run" : " more runs")
                + " nobody saw whether the water boiled, and the interval allows for both");
  }

  /** The share of judged runs; its interval from none to all of the others having boiled. */
  private static Estimate share(BoilCount boils, double confidence) {
    int all = boils.judged() + boils.unseen();
    double low = share(boils.unseenFailed().boiled(), all, confidence).interval().low();
    double high = share(boils.unseenBoiled().boiled(), all, confidence).interval().high();
    return new Estimate((double) boils.boiled() / boils.judged(), new Interval(low, high));
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

  /**
   * Two shares by their exact intervals (Newcombe, Statistics in Medicine 17, 1998); those not seen
   * taken as they would lower the difference most, and raise it most.
   */
  private static Evidence shares(Subject about, Subject against) {
    BoilCount a = about.runs().boils();
    BoilCount b = against.runs().boils();
    int builds = about.runs().byBuild().size() + against.runs().byBuild().size();
    if (a.judged() == 0 || b.judged() == 0) {
      return Evidence.none(
          a.judged() + b.judged(),
          builds,
          nothingJudged(a.judged() == 0 ? about.runs() : against.runs()));
    }
    return new Evidence(
        confidence ->
            Optional.of(
                new Estimate(
                    (double) a.boiled() / a.judged() - (double) b.boiled() / b.judged(),
                    new Interval(
                        difference(a.unseenFailed(), b.unseenBoiled(), confidence).low(),
                        difference(a.unseenBoiled(), b.unseenFailed(), confidence).high()))),
        a.judged() + b.judged(),
        builds,
        unseen(a.unseen() + b.unseen()));
  }

  private static Interval difference(BoilCount one, BoilCount other, double confidence) {
    Estimate a = share(one, confidence);
    Estimate b = share(other, confidence);
    double difference = a.value() - b.value();
    Interval ofA = a.interval();
    Interval ofB = b.interval();
    return new Interval(
        difference - Math.hypot(a.value() - ofA.low(), ofB.high() - b.value()),
        difference + Math.hypot(ofA.high() - a.value(), b.value() - ofB.low()));
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
      return notTestable(prepared, alpha);
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
    if (evidence.reach() == Reach.FROM_BELOW) {
      boolean holds = statement.holdsBeyond(verdict);
      estimate = Optional.empty();
      verdict = holds ? verdict : Verdict.NOT_SETTLED;
      evidence = holds ? evidence.saying("even that mean is above the value claimed") : evidence;
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

  private static ClaimResult notTestable(Prepared prepared, double alpha) {
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
