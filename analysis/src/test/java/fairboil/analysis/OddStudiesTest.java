package fairboil.analysis;

import static fairboil.analysis.NoNaN.assertNoNaN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import fairboil.analysis.claim.Claims;
import fairboil.analysis.compare.Comparisons;
import fairboil.analysis.compare.FairnessFinder;
import fairboil.analysis.effect.HoleEffects;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.group.BuildSummaries;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.layout.HoleLayout;
import fairboil.analysis.layout.LayoutResult;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.normalise.Normalising;
import fairboil.analysis.plan.Asked;
import fairboil.analysis.plan.PlanException;
import fairboil.analysis.plan.Plans;
import fairboil.analysis.plan.Wish;
import fairboil.analysis.precision.Repeatabilities;
import fairboil.analysis.run.References;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.NormaliseBy;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * No study makes a piece of the analysis throw, take for ever, or give a number that is none. The
 * pieces are called one by one, so that nothing that holds failures back can hide one.
 */
class OddStudiesTest {

  private static final Duration LIMIT = Duration.ofSeconds(60);

  private static final References REFERENCES =
      new References(1, 20, 20, 99.97, 0, NormaliseBy.AUTO);

  @Property(tries = 60, seed = "1")
  void everyPiece(@ForAll long seed) {
    assertTimeoutPreemptively(LIMIT, () -> everyPiece(new OddStudy(seed)), () -> "seed " + seed);
  }

  private static void everyPiece(OddStudy odd) {
    Study study = odd.study();
    Normalising.Outcome normalised = Normalising.of(study, REFERENCES, odd.runs(), 0.95);
    assertNoNaN(normalised.runs(), "normalised");
    pieces(study, odd.runs());
    pieces(study, RunGroup.withExcluded(odd.runs()).runs());
  }

  private static void pieces(Study study, List<RunResult> runs) {
    LayoutResult layout = HoleLayout.of(study);
    assertNoNaN(layout, "layout");
    HoleEffects.Outcome effects = HoleEffects.of(study, runs, layout, 20, 0.95);
    assertNoNaN(effects, "effects");
    Claims.Outcome claims = Claims.of(study, runs, effects.effects(), 0.95);
    assertNoNaN(claims, "claims");
    Comparisons.Outcome comparisons = Comparisons.of(study, runs, 0.95);
    assertNoNaN(comparisons, "comparisons");
    Repeatabilities.Outcome repeatability = Repeatabilities.of(runs, 0.95);
    assertNoNaN(repeatability, "repeatability");
    Faults faults = new Faults();
    assertNoNaN(BuildSummaries.of(study.builds(), runs, 0.95, faults), "builds");
    assertNoNaN(FairnessFinder.of(study, runs), "fairness");
    // A fault that was contained is a fault.
    faults.addAll(layout.faults());
    faults.addAll(effects.faults());
    faults.addAll(claims.faults());
    faults.addAll(comparisons.faults());
    faults.addAll(repeatability.faults());
    assertThat(faults.all()).isEmpty();
  }

  @Property(tries = 25, seed = "1")
  void everyPlan(@ForAll long seed) {
    OddStudy odd = new OddStudy(seed);
    OddNumbers numbers = new OddNumbers(seed);
    List<Measure> measures =
        Arrays.stream(Measure.values()).filter(it -> it.level() == Measure.Level.RUN).toList();
    Wish wish = new Wish(numbers.oneOf(List.of(Wish.Kind.values())), numbers.positive());
    Asked asked =
        new Asked(
            numbers.oneOf(measures),
            numbers.happens(0.3) ? List.of() : List.of(wish),
            0.8,
            numbers.happens(0.3) ? OptionalDouble.of(numbers.positive()) : OptionalDouble.empty(),
            numbers.happens(0.3) ? OptionalDouble.of(numbers.positive()) : OptionalDouble.empty(),
            OptionalDouble.of(numbers.positive()),
            OptionalInt.empty(),
            OptionalInt.empty(),
            List.of());
    assertTimeoutPreemptively(
        LIMIT,
        () -> {
          Results results =
              StudyAnalysis.of(odd.study(), REFERENCES, (run, faults) -> odd.result(run), 1);
          assertThat(results.faults()).isEmpty();
          planned(results, asked);
        },
        () -> "seed " + seed);
  }

  private static void planned(Results results, Asked asked) {
    try {
      assertNoNaN(Plans.of(results, asked), "plan");
    } catch (PlanException isSaid) {
      assertNoNaN(isSaid.getMessage(), "why there is none");
    }
  }
}
