package fairboil.analysis.effect;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.layout.LayoutResult;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.sheet.Build;
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

  private final Study study;
  private final LayoutResult layout;
  private final Map<Key, RunGroup> runs;
  private final double referenceAmbient;
  private final double confidence;
  private final List<Finding> findings = new ArrayList<>();

  private HoleEffects(
      Study study,
      List<RunResult> runs,
      LayoutResult layout,
      double referenceAmbient,
      double confidence) {
    this.study = study;
    this.layout = layout;
    this.runs = RunGroup.of(runs).byBuild();
    this.referenceAmbient = referenceAmbient;
    this.confidence = confidence;
  }

  /**
   * Effects and findings.
   *
   * @param effects for each ring each response, the hole ring first; unmodifiable
   * @param findings what a reader should know; unmodifiable
   */
  public record Outcome(List<HoleEffect> effects, List<Finding> findings) {

    /** Copies the lists. */
    public Outcome {
      effects = List.copyOf(effects);
      findings = List.copyOf(findings);
    }
  }

  /**
   * Works out the hole effects of a study.
   *
   * @param study the sheets
   * @param runs the results of all runs
   * @param layout the rings of all builds
   * @param referenceAmbient air temperature that responses are moved to, °C
   * @param confidence of the intervals, between 0 and 1
   */
  public static Outcome of(
      Study study,
      List<RunResult> runs,
      LayoutResult layout,
      double referenceAmbient,
      double confidence) {
    HoleEffects effects = new HoleEffects(study, runs, layout, referenceAmbient, confidence);
    List<HoleEffect> all =
        effects.rings().stream().flatMap(ring -> effects.ofRing(ring).stream()).toList();
    return new Outcome(all, effects.findings);
  }

  /** The hole ring, else the wall rings, the one with most builds first; else those on a base. */
  private List<String> rings() {
    Optional<String> asked = study.settings().value(Settings.HOLE_RING);
    if (asked.isPresent()) {
      if (builds(asked.get()) == 0) {
        findings.add(notMeasured(asked.get()));
      }
      return List.of(asked.get());
    }
    if (layout.rings().isEmpty()) {
      findings.add(
          Finding.note(
              Place.of(holesFile()),
              "no hole positions could be judged, so whether hole position matters is not asked",
              "measure the holes of each build and list them in holes.csv and rings.csv"));
      return List.of();
    }
    List<String> walls = names(Surface.WALL);
    return walls.isEmpty() ? names(Surface.BASE) : walls;
  }

  private Finding notMeasured(String ring) {
    return Finding.error(
        study.settings().place(Settings.HOLE_RING),
        "no holes of ring " + ring + " could be judged",
        "correct the name, or measure its holes; until then there is no hole effect");
  }

  private List<String> names(Surface surface) {
    return layout.rings().stream()
        .filter(ring -> ring.surface() == surface)
        .map(RingResult::ring)
        .distinct()
        .sorted(Comparator.comparingLong(this::builds).reversed())
        .toList();
  }

  private long builds(String ring) {
    return layout.rings().stream()
        .filter(result -> result.ring().equals(ring) && result.rms().isKnown())
        .count();
  }

  private String holesFile() {
    return study.holes().isEmpty() ? "holes.csv" : study.holes().get(0).row().place().file();
  }

  private List<HoleEffect> ofRing(String ring) {
    List<HoleEffect> effects = RESPONSES.stream().map(response -> effect(response, ring)).toList();
    HoleEffect first = effects.get(0);
    if (builds(ring) > 0) {
      reportWhatIsLacking(first);
    }
    return effects;
  }

  private HoleEffect effect(Measure response, String ring) {
    List<Burns> builds = new ArrayList<>();
    for (Build build : study.builds()) {
      burns(build, response, ring).ifPresent(builds::add);
    }
    return new EffectFit(response, ring, builds, referenceAmbient, confidence).effect();
  }

  private Optional<Burns> burns(Build build, Measure response, String ring) {
    RunGroup own = runs.get(build.key());
    Optional<Double> error =
        layout
            .ring(build.key(), ring)
            .map(RingResult::rms)
            .filter(Figure::isKnown)
            .map(Figure::orNaN);
    if (own == null || error.isEmpty()) {
      return Optional.empty();
    }
    if (own.hidesFailures(response)) {
      findings.add(hidden(build, response, own));
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
            known.stream().mapToDouble(run -> run.conditions().ambient().orNaN()).toArray()));
  }

  private static Finding hidden(Build build, Measure response, RunGroup own) {
    return Finding.warning(
        build.row().place(),
        "build "
            + build.key()
            + " did not boil in "
            + own.failures()
            + " of "
            + own.size()
            + " runs, so it has no mean "
            + response.label()
            + " and is not in the hole effect on it",
        "nothing need be done: not boiling is a result, and is counted");
  }

  private void reportWhatIsLacking(HoleEffect effect) {
    int builds = effect.points().size();
    switch (effect.verdict()) {
      case TOO_FEW_BUILDS ->
          findings.add(
              Finding.warning(
                  Place.of(holesFile()),
                  tooFew(builds, effect),
                  "drill and burn at least " + (4 - builds) + " more"));
      case NO_SPREAD ->
          findings.add(
              Finding.warning(
                  Place.of(holesFile()),
                  "all builds have the same hole error in ring "
                      + effect.ring()
                      + ", so its effect cannot be seen",
                  "drill some stoves better and some worse"));
      default -> {}
    }
  }

  private static String tooFew(int builds, HoleEffect effect) {
    String having = " with hole positions in ring " + effect.ring() + " and a known flame";
    return switch (builds) {
      case 0 -> "no build" + having + ": nothing to draw a line through";
      case 1 -> "1 build" + having + ": no line through 1 point can be drawn";
      default -> builds + " builds" + having + ": no line through 2 points can be tested";
    };
  }
}
