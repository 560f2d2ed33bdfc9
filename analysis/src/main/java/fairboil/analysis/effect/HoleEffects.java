package fairboil.analysis.effect;

import fairboil.analysis.effect.EffectChecks.AllRings;
import fairboil.analysis.effect.EffectRow.Model;
import fairboil.analysis.fault.Fault;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.layout.LayoutResult;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The hole effect on each response, for each ring that it is asked of. */
public final class HoleEffects {

  /** What may respond to hole error. */
  private static final List<Measure> RESPONSES =
      List.of(Measure.NORMALISED_PEAK, Measure.STEADY_FLAME, Measure.NORMALISED_BOIL_TIME);

  /** Builds that a line with a slope for each ring needs beyond one for each of them. */
  private static final int SPARE_BUILDS = 4;

  private static final Template EFFECT =
      Template.of("the effect of the holes of ring {name} on {word}");

  private final Study study;
  private final LayoutResult layout;
  private final Map<Key, RunGroup> runs;
  private final Map<Key, RunGroup> withExcluded;
  private final double referenceAmbient;
  private final List<String> rings;
  private final double confidence;
  private final EffectFindings words;
  private final Covariates covariates;
  private final List<EffectChecks> checks = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final Faults faults = new Faults();

  private HoleEffects(
      Study study,
      List<RunResult> runs,
      LayoutResult layout,
      double referenceAmbient,
      double confidence) {
    this.study = study;
    this.layout = layout;
    this.words = new EffectFindings(study);
    this.covariates = Covariates.of(study);
    this.runs = RunGroup.of(runs).byBuild();
    this.withExcluded = RunGroup.withExcluded(runs).byBuild();
    this.referenceAmbient = referenceAmbient;
    this.rings = rings();
    this.confidence = rings.size() > 1 ? 1 - (1 - confidence) / rings.size() : confidence;
    if (rings.size() > 1) {
      findings.add(words.severalRings(rings, this.confidence));
    }
  }

  /**
   * Effects and findings.
   *
   * @param effects for each ring each response, the hole ring first; unmodifiable
   * @param checks for each effect that could be estimated; unmodifiable
   * @param findings what a reader should know; unmodifiable
   * @param faults effects at which the program failed; unmodifiable
   */
  public record Outcome(
      List<HoleEffect> effects,
      List<EffectChecks> checks,
      List<Finding> findings,
      List<Fault> faults) {

    /** Of a study whose hole effects are lost, as their own fault tells. */
    public static final Outcome NONE = new Outcome(List.of(), List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Outcome {
      effects = List.copyOf(effects);
      checks = List.copyOf(checks);
      findings = List.copyOf(findings);
      faults = List.copyOf(faults);
    }
  }

  /**
   * Works out the hole effects of a study.
   *
   * @param study the sheets
   * @param runs the results of all runs
   * @param layout the rings of all builds
   * @param referenceAmbient air temperature that responses are moved to, °C
   * @param confidence of all rings together, between 0 and 1: where several rings are asked about,
   *     each interval has a higher one (Bonferroni)
   */
  public static Outcome of(
      Study study,
      List<RunResult> runs,
      LayoutResult layout,
      double referenceAmbient,
      double confidence) {
    HoleEffects effects = new HoleEffects(study, runs, layout, referenceAmbient, confidence);
    List<HoleEffect> all =
        effects.rings.stream().flatMap(ring -> effects.ofRing(ring).stream()).toList();
    return new Outcome(all, effects.checks, effects.findings, effects.faults.all());
  }

  /** The hole ring, else the wall rings, the one with most builds first; else those on a base. */
  private List<String> rings() {
    Optional<String> asked = study.settings().value(Settings.HOLE_RING);
    if (asked.isPresent()) {
      if (measured(asked.get()) == 0) {
        findings.add(words.notMeasured(asked.get()));
      }
      return List.of(asked.get());
    }
    if (layout.rings().isEmpty()) {
      findings.add(words.noHoles());
      return List.of();
    }
    List<String> walls = names(Surface.WALL);
    return walls.isEmpty() ? names(Surface.BASE) : walls;
  }

  private List<String> names(Surface surface) {
    return layout.rings().stream()
        .filter(ring -> ring.surface() == surface)
        .map(RingResult::ring)
        .distinct()
        .sorted(Comparator.comparingLong(this::measured).reversed())
        .toList();
  }

  private long measured(String ring) {
    return layout.rings().stream()
        .filter(result -> result.ring().equals(ring) && result.rms().isKnown())
        .count();
  }

  private List<HoleEffect> ofRing(String ring) {
    List<HoleEffect> effects =
        RESPONSES.stream().flatMap(response -> contained(response, ring).stream()).toList();
    if (measured(ring) > 0 && !effects.isEmpty()) {
      findings.addAll(words.lacking(effects.get(0)));
    }
    return effects;
  }

  private Optional<HoleEffect> contained(Measure response, String ring) {
    return faults.contain(
        EFFECT.with(Argument.name(ring), Argument.word(response.label())),
        Place.of(HolesSheet.SCHEMA.file()),
        () -> effect(response, ring));
  }

  private HoleEffect effect(Measure response, String ring) {
    List<Burns> builds = builds(response, ring, runs);
    HoleEffect effect = fit(response, ring, builds);
    if (effect.headline().isEmpty()) {
      return effect;
    }
    Optional<AllRings> allRings = allRings(response, ring, builds);
    checks.add(check(effect, builds, allRings));
    return allRings.map(AllRings::row).map(effect::and).orElse(effect);
  }

  /** The slope beside those of the other rings, where there are builds enough for all of them. */
  private Optional<AllRings> allRings(Measure response, String ring, List<Burns> builds) {
    if (rings.size() < 2 || builds.size() < rings.size() + SPARE_BUILDS) {
      return Optional.empty();
    }
    List<Burns> more = builds;
    for (String other : rings) {
      if (!other.equals(ring)) {
        if (!builds.stream().allMatch(build -> error(build.point().build(), other).isPresent())) {
          return Optional.empty();
        }
        more =
            more.stream()
                .map(
                    build ->
                        build.and(
                            EffectRow.HOLE_ERROR + " of " + other,
                            error(build.point().build(), other).orElseThrow()))
                .toList();
      }
    }
    if (!Covariates.canBeTold(more)) {
      return Optional.empty();
    }
    double inflation = Line.through(more).fit().varianceInflation(EffectRow.HOLE_ERROR);
    return new EffectFit(response, ring, more, referenceAmbient, confidence)
        .headline()
        .map(row -> new AllRings(row.by(Model.ALL_RINGS), inflation));
  }

  private HoleEffect fit(Measure response, String ring, List<Burns> builds) {
    return new EffectFit(response, ring, builds, referenceAmbient, confidence).effect();
  }

  private EffectChecks check(HoleEffect effect, List<Burns> builds, Optional<AllRings> allRings) {
    List<RingResult> rings =
        builds.stream()
            .map(b -> layout.ring(b.point().build(), effect.ring()).orElseThrow())
            .toList();
    EffectChecks check =
        new Checks(effect, builds, rings, confidence)
            .result(study.settings().get(Settings.SEED), withExcluded(effect, builds), allRings);
    findings.addAll(words.together(check));
    return check;
  }

  /** The answer with the runs that the sheet excludes, if that changes anything. */
  private Optional<EffectRow> withExcluded(HoleEffect effect, List<Burns> builds) {
    List<Burns> all = builds(effect.response(), effect.ring(), withExcluded);
    return burns(all) == burns(builds)
        ? Optional.empty()
        : new EffectFit(effect.response(), effect.ring(), all, referenceAmbient, confidence)
            .headline();
  }

  private static int burns(List<Burns> builds) {
    return builds.stream().mapToInt(build -> build.ambients().length).sum();
  }

  private List<Burns> builds(Measure response, String ring, Map<Key, RunGroup> groups) {
    List<Burns> builds = new ArrayList<>();
    for (Build build : study.builds()) {
      burns(build, response, ring, groups).ifPresent(builds::add);
    }
    return covariates.usable(builds, findings::add);
  }

  private Optional<Burns> burns(
      Build build, Measure response, String ring, Map<Key, RunGroup> groups) {
    RunGroup own = groups.get(build.key());
    Optional<Double> error = error(build.key(), ring);
    if (own == null || error.isEmpty() || own.hidesFailures(response)) {
      return Optional.empty();
    }
    List<RunResult> known =
        own.runs().stream().filter(run -> response.counted(run).isPresent()).toList();
    if (known.isEmpty()) {
      return Optional.empty();
    }
    double[] burns = known.stream().mapToDouble(run -> response.of(run).orNaN()).toArray();
    return Optional.of(
        new Burns(
            new BuildPoint(build.key(), build.design(), error.get(), burns),
            known.stream().map(run -> run.run().key()).toList(),
            known.stream().mapToDouble(run -> run.conditions().ambient().orNaN()).toArray(),
            covariates.values(known)));
  }

  private Optional<Double> error(Key build, String ring) {
    return layout.ring(build, ring).map(RingResult::rms).filter(Figure::isKnown).map(Figure::orNaN);
  }
}
