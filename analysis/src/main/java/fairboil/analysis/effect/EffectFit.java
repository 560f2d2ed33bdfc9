package fairboil.analysis.effect;

import fairboil.analysis.effect.EffectRow.Model;
import fairboil.analysis.effect.HoleEffect.BandPoint;
import fairboil.analysis.effect.HoleEffect.EffectVerdict;
import fairboil.analysis.figure.Deviations;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.LinearFit;
import fairboil.analysis.model.RandomIntercept;
import fairboil.analysis.model.Regressors;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Fits the lines of one response on the hole error of one ring. */
final class EffectFit {

  /** Fewer builds than this leave nothing to judge a line by. */
  private static final int FEWEST_BUILDS = 3;

  /** A spread of hole errors below this, in metres, is none: a tenth of a micrometre. */
  private static final double NO_SPREAD = 1e-7;

  private static final int BAND_POINTS = 41;

  private final Measure response;
  private final String ring;
  private final List<Burns> builds;
  private final double referenceAmbient;
  private final double confidence;

  EffectFit(
      Measure response,
      String ring,
      List<Burns> builds,
      double referenceAmbient,
      double confidence) {
    this.response = response;
    this.ring = ring;
    this.builds = List.copyOf(builds);
    this.referenceAmbient = referenceAmbient;
    this.confidence = confidence;
  }

  HoleEffect effect() {
    if (builds.size() < FEWEST_BUILDS) {
      return without(EffectVerdict.TOO_FEW_BUILDS);
    }
    if (highest() - lowest() < NO_SPREAD) {
      return without(EffectVerdict.NO_SPREAD);
    }
    if (isWithoutScatter()) {
      return without(EffectVerdict.NO_SCATTER);
    }
    Line means = Line.through(builds);
    Optional<Moved> moved = moved();
    if (moved.filter(this::isTheAnswer).map(Moved::line).orElse(means).isWithoutScatter()) {
      return without(EffectVerdict.NO_SCATTER_ABOUT_LINE);
    }
    List<EffectRow> rows = new ArrayList<>(rows(Model.BUILD_MEANS, means));
    moved.ifPresent(
        each -> {
          rows.addAll(rows(Model.AMBIENT_ADJUSTED, each.line));
          rows.add(ambientRow(each.slope));
        });
    rows.addAll(mixed());
    rows.addAll(burnLevel());
    return moved.filter(this::isTheAnswer).isPresent()
        ? answer(moved.get().builds, rows, moved.get().line, Model.AMBIENT_ADJUSTED)
        : answer(builds, rows, means, Model.BUILD_MEANS);
  }

  /** Only the row that the answer would stand on, if there is one. */
  Optional<EffectRow> headline() {
    if (builds.size() < FEWEST_BUILDS || highest() - lowest() < NO_SPREAD || isWithoutScatter()) {
      return Optional.empty();
    }
    Optional<Moved> moved = moved().filter(this::isTheAnswer);
    Line line = moved.map(Moved::line).orElseGet(() -> Line.through(builds));
    Model model = moved.isPresent() ? Model.AMBIENT_ADJUSTED : Model.BUILD_MEANS;
    return line.isWithoutScatter()
        ? Optional.empty()
        : Optional.of(line.row(model, EffectRow.HOLE_ERROR, confidence, burns()));
  }

  /** The burns moved to the reference ambient along their own slope, and the line through them. */
  private record Moved(AmbientSlope slope, List<Burns> builds, Line line) {}

  private Optional<Moved> moved() {
    return AmbientSlope.of(builds)
        .map(
            slope -> {
              List<Burns> moved =
                  builds.stream()
                      .map(build -> build.movedTo(referenceAmbient, slope.slope()))
                      .toList();
              return new Moved(slope, moved, Line.through(moved, referenceAmbient, slope));
            });
  }

  /** Whether the slope by convention does not hold. */
  private boolean isTheAnswer(Moved moved) {
    return !moved.slope.interval(confidence).contains(0);
  }

  private HoleEffect answer(List<Burns> shown, List<EffectRow> rows, Line line, Model model) {
    EffectRow headline =
        rows.stream()
            .filter(row -> row.model() == model && row.term().equals(EffectRow.HOLE_ERROR))
            .findFirst()
            .orElseThrow();
    return new HoleEffect(
        response,
        ring,
        shown.stream().map(Burns::point).toList(),
        rows,
        Optional.of(headline),
        verdict(headline.interval()),
        band(line));
  }

  private HoleEffect without(EffectVerdict verdict) {
    return new HoleEffect(
        response,
        ring,
        builds.stream().map(Burns::point).toList(),
        List.of(),
        Optional.empty(),
        verdict,
        List.of());
  }

  private boolean isWithoutScatter() {
    return Deviations.areNone(
        builds.stream().flatMapToDouble(build -> Arrays.stream(build.point().burns())).toArray());
  }

  private double lowest() {
    return builds.stream().mapToDouble(build -> build.point().holeError()).min().orElseThrow();
  }

  private double highest() {
    return builds.stream().mapToDouble(build -> build.point().holeError()).max().orElseThrow();
  }

  private List<EffectRow> rows(Model model, Line line) {
    return line.terms().stream().map(term -> line.row(model, term, confidence, burns())).toList();
  }

  /**
   * How the bead follows the air. A normalised peak has been moved along a slope of 1 already, so
   * that of the peak is 1 more.
   */
  private EffectRow ambientRow(AmbientSlope slope) {
    double convention = response == Measure.NORMALISED_PEAK ? 1 : 0;
    return row(
        Model.AMBIENT_ADJUSTED,
        EffectRow.AMBIENT,
        slope.slope() + convention,
        slope.standardError(),
        slope.degreesOfFreedom());
  }

  /** The mixed model; at its boundary with the degrees of freedom of the builds. */
  private List<EffectRow> mixed() {
    double zero = builds.get(0).point().mean();
    int[] groups =
        IntStream.range(0, builds.size())
            .flatMap(i -> IntStream.generate(() -> i).limit(builds.get(i).size()))
            .toArray();
    Regressors x = onBurns();
    for (String name : builds.get(0).covariates().keySet()) {
      x = x.and(name, centred(name));
    }
    List<String> terms = x.names();
    return RandomIntercept.fit(x, responses(zero), groups)
        .map(fit -> terms.stream().map(term -> mixedRow(fit, term, terms.size(), zero)).toList())
        .orElse(List.of());
  }

  /** A covariate of each burn, about the mean of the builds as in the line through means. */
  private double[] centred(String name) {
    double middle = builds.stream().mapToDouble(build -> build.mean(name)).average().orElseThrow();
    return builds.stream()
        .flatMapToDouble(build -> Arrays.stream(build.covariates().get(name)))
        .map(value -> value - middle)
        .toArray();
  }

  private EffectRow mixedRow(RandomIntercept fit, String term, int terms, double zero) {
    return row(
        Model.MIXED,
        term,
        fit.estimate(term) + (term.equals(EffectRow.INTERCEPT) ? zero : 0),
        fit.standardError(term),
        fit.degreesOfFreedom(term).orElse(Math.max(1, builds.size() - (double) terms)));
  }

  private List<EffectRow> burnLevel() {
    double zero = builds.get(0).point().mean();
    return LinearFit.of(onBurns(), responses(zero))
        .map(
            fit ->
                List.of(
                    burnRow(fit, EffectRow.HOLE_ERROR, 0), burnRow(fit, EffectRow.INTERCEPT, zero)))
        .orElse(List.of());
  }

  private EffectRow burnRow(LinearFit fit, String term, double added) {
    return row(
        Model.BURN_LEVEL,
        term,
        fit.estimate(term) + added,
        fit.standardError(term),
        fit.degreesOfFreedom());
  }

  private Regressors onBurns() {
    double[] errors =
        builds.stream()
            .map(Burns::point)
            .flatMapToDouble(point -> Arrays.stream(point.burns()).map(burn -> point.holeError()))
            .toArray();
    return Regressors.line(EffectRow.HOLE_ERROR, errors);
  }

  private double[] responses(double zero) {
    return builds.stream()
        .flatMapToDouble(build -> Arrays.stream(build.point().burns()))
        .map(burn -> burn - zero)
        .toArray();
  }

  private EffectRow row(
      Model model, String term, double estimate, double standardError, double df) {
    double pValue = LinearFit.pValue(estimate, standardError, df);
    return new EffectRow(
        model,
        term,
        estimate,
        standardError,
        df,
        Interval.around(estimate, Measured.coverageFactor(confidence, df) * standardError),
        Double.isNaN(pValue) ? OptionalDouble.empty() : OptionalDouble.of(pValue),
        burns(),
        builds.size());
  }

  private int burns() {
    return builds.stream().mapToInt(build -> build.ambients().length).sum();
  }

  static EffectVerdict verdict(Interval slope) {
    if (slope.contains(0)) {
      return EffectVerdict.NOT_SETTLED;
    }
    return slope.high() < 0 ? EffectVerdict.FALLS : EffectVerdict.RISES;
  }

  private List<BandPoint> band(Line line) {
    List<BandPoint> band = new ArrayList<>();
    for (int i = 0; i < BAND_POINTS; i++) {
      band.add(line.at(lowest() + (highest() - lowest()) * i / (BAND_POINTS - 1), confidence));
    }
    return band;
  }
}
