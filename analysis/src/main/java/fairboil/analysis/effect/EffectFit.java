package fairboil.analysis.effect;

import fairboil.analysis.effect.EffectRow.Model;
import fairboil.analysis.effect.HoleEffect.BandPoint;
import fairboil.analysis.effect.HoleEffect.EffectVerdict;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.LinearFit;
import fairboil.analysis.model.MandelPaule;
import fairboil.analysis.model.Regressors;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Fits the lines of one response on the hole error of one ring. */
final class EffectFit {

  /** Fewer builds than this leave nothing to judge a line by. */
  private static final int FEWEST_BUILDS = 3;

  /** A spread of hole errors below this, in metres, is none: a tenth of a micrometre. */
  private static final double NO_SPREAD = 1e-7;

  private static final int BAND_POINTS = 41;

  private final Measure response;
  private final String ring;
  private final List<BuildPoint> points;
  private final double confidence;

  EffectFit(Measure response, String ring, List<BuildPoint> points, double confidence) {
    this.response = response;
    this.ring = ring;
    this.points = List.copyOf(points);
    this.confidence = confidence;
  }

  HoleEffect effect() {
    if (points.size() < FEWEST_BUILDS) {
      return without(EffectVerdict.TOO_FEW_BUILDS);
    }
    if (range() < NO_SPREAD) {
      return without(EffectVerdict.NO_SPREAD);
    }
    // not empty: there is a degree of freedom and a spread
    LinearFit means = onMeans().orElseThrow();
    List<EffectRow> rows = new ArrayList<>(rows(Model.BUILD_MEANS, means));
    onBurns().ifPresent(burns -> rows.addAll(rows(Model.BURN_LEVEL, burns)));
    EffectRow headline = rows.get(0);
    return new HoleEffect(
        response,
        ring,
        points,
        rows,
        Optional.of(headline),
        verdict(headline.interval()),
        band(means));
  }

  private HoleEffect without(EffectVerdict verdict) {
    return new HoleEffect(response, ring, points, List.of(), Optional.empty(), verdict, List.of());
  }

  private double range() {
    return highest() - lowest();
  }

  private double lowest() {
    return points.stream().mapToDouble(BuildPoint::holeError).min().orElseThrow();
  }

  private double highest() {
    return points.stream().mapToDouble(BuildPoint::holeError).max().orElseThrow();
  }

  private Optional<LinearFit> onMeans() {
    double[] errors = points.stream().mapToDouble(BuildPoint::holeError).toArray();
    double[] means = points.stream().mapToDouble(point -> point.mean() - zero()).toArray();
    double[] variances = varianceOfMeans(points);
    return MandelPaule.fit(Regressors.line(EffectRow.HOLE_ERROR, errors), means, variances);
  }

  /** Responses are fitted from here, so that equal ones differ by exactly nothing. */
  private double zero() {
    return points.get(0).mean();
  }

  /**
   * The variance of each mean that the scatter of its burns explains, pooled over builds; all 1
   * where no build was burnt twice or burns do not differ.
   */
  static double[] varianceOfMeans(List<BuildPoint> points) {
    double squares = 0;
    int degreesOfFreedom = 0;
    for (BuildPoint point : points) {
      for (double burn : point.burns()) {
        squares += (burn - point.mean()) * (burn - point.mean());
      }
      degreesOfFreedom += point.burns().length - 1;
    }
    double pooled = degreesOfFreedom > 0 && squares > 0 ? squares / degreesOfFreedom : 0;
    return points.stream()
        .mapToDouble(point -> pooled > 0 ? pooled / point.burns().length : 1)
        .toArray();
  }

  private Optional<LinearFit> onBurns() {
    double[] errors =
        points.stream()
            .flatMapToDouble(point -> Arrays.stream(point.burns()).map(burn -> point.holeError()))
            .toArray();
    double[] burns =
        points.stream()
            .flatMapToDouble(point -> Arrays.stream(point.burns()).map(burn -> burn - zero()))
            .toArray();
    return LinearFit.of(Regressors.line(EffectRow.HOLE_ERROR, errors), burns);
  }

  private List<EffectRow> rows(Model model, LinearFit fit) {
    return List.of(
        row(model, fit, EffectRow.HOLE_ERROR, 0), row(model, fit, EffectRow.INTERCEPT, zero()));
  }

  private EffectRow row(Model model, LinearFit fit, String term, double added) {
    Interval interval = fit.interval(term, confidence);
    double estimate = fit.estimate(term) + added;
    double pValue = LinearFit.pValue(estimate, fit.standardError(term), fit.degreesOfFreedom());
    return new EffectRow(
        model,
        term,
        estimate,
        fit.standardError(term),
        fit.degreesOfFreedom(),
        new Interval(interval.low() + added, interval.high() + added),
        Double.isNaN(pValue) ? OptionalDouble.empty() : OptionalDouble.of(pValue),
        burns(),
        points.size());
  }

  private int burns() {
    return points.stream().mapToInt(point -> point.burns().length).sum();
  }

  static EffectVerdict verdict(Interval slope) {
    if (slope.contains(0)) {
      return EffectVerdict.NOT_SETTLED;
    }
    return slope.high() < 0 ? EffectVerdict.FALLS : EffectVerdict.RISES;
  }

  private List<BandPoint> band(LinearFit fit) {
    List<BandPoint> band = new ArrayList<>();
    for (int i = 0; i < BAND_POINTS; i++) {
      double at = lowest() + range() * i / (BAND_POINTS - 1);
      Interval interval = fit.band(confidence, 1, at);
      band.add(
          new BandPoint(
              at,
              fit.fitted(1, at) + zero(),
              new Interval(interval.low() + zero(), interval.high() + zero())));
    }
    return band;
  }
}
