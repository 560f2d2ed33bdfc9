package fairboil.reports;

import fairboil.analysis.effect.BuildPoint;
import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.EffectRow.Model;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.effect.HoleEffect.BandPoint;
import fairboil.analysis.effect.HoleEffect.EffectVerdict;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.TDistribution;

/** Hole effects of the sample: plain least squares, enough to draw and to tabulate. */
final class SampleEffects {

  private SampleEffects() {}

  static List<HoleEffect> of(List<RunResult> runs, List<RingResult> rings) {
    List<HoleEffect> effects = new ArrayList<>();
    for (String ring : rings.stream().map(RingResult::ring).distinct().toList()) {
      for (Measure response : List.of(Measure.NORMALISED_PEAK, Measure.NORMALISED_BOIL_TIME)) {
        effects.add(effect(response, ring, points(response, ring, runs, rings)));
      }
    }
    return effects;
  }

  private static List<BuildPoint> points(
      Measure response, String ring, List<RunResult> runs, List<RingResult> rings) {
    List<BuildPoint> points = new ArrayList<>();
    for (RingResult result : rings) {
      double[] burns =
          runs.stream()
              .filter(run -> run.build().key().equals(result.build()))
              .flatMap(run -> response.counted(run).stream())
              .mapToDouble(known -> known.measured().value())
              .toArray();
      if (result.ring().equals(ring) && burns.length > 0) {
        Optional<String> design =
            runs.stream()
                .filter(run -> run.build().key().equals(result.build()))
                .findFirst()
                .flatMap(run -> run.build().design());
        points.add(new BuildPoint(result.build(), design, result.rms().orNaN(), burns));
      }
    }
    return points;
  }

  private static HoleEffect effect(Measure response, String ring, List<BuildPoint> points) {
    if (points.size() < 3) {
      return new HoleEffect(
          response,
          ring,
          points,
          List.of(),
          Optional.empty(),
          EffectVerdict.TOO_FEW_BUILDS,
          List.of());
    }
    double[] x = points.stream().mapToDouble(BuildPoint::holeError).toArray();
    Line means = new Line(x, points.stream().mapToDouble(BuildPoint::mean).toArray());
    int runs = points.stream().mapToInt(point -> point.burns().length).sum();
    EffectRow slope = means.slope(Model.BUILD_MEANS, runs, points.size());
    EffectRow naive = burnLevel(points).slope(Model.BURN_LEVEL, runs, points.size());
    return new HoleEffect(
        response,
        ring,
        points,
        List.of(slope, means.intercept(runs, points.size()), naive),
        Optional.of(slope),
        verdict(slope.interval()),
        means.band());
  }

  private static Line burnLevel(List<BuildPoint> points) {
    double[] x =
        points.stream()
            .flatMapToDouble(point -> Arrays.stream(point.burns()).map(burn -> point.holeError()))
            .toArray();
    double[] y = points.stream().flatMapToDouble(point -> Arrays.stream(point.burns())).toArray();
    return new Line(x, y);
  }

  private static EffectVerdict verdict(Interval slope) {
    if (slope.contains(0)) {
      return EffectVerdict.NOT_SETTLED;
    }
    return slope.low() > 0 ? EffectVerdict.RISES : EffectVerdict.FALLS;
  }

  /** A least-squares line. */
  private static final class Line {
    private final double[] x;
    private final double slope;
    private final double meanX;
    private final double meanY;
    private final double sxx;
    private final double residualSd;

    Line(double[] x, double[] y) {
      this.x = x;
      meanX = Arrays.stream(x).average().orElseThrow();
      meanY = Arrays.stream(y).average().orElseThrow();
      double squares = 0;
      double products = 0;
      for (int i = 0; i < x.length; i++) {
        squares += (x[i] - meanX) * (x[i] - meanX);
        products += (x[i] - meanX) * (y[i] - meanY);
      }
      sxx = squares;
      slope = products / squares;
      double residuals = 0;
      for (int i = 0; i < x.length; i++) {
        residuals += Math.pow(y[i] - at(x[i]), 2);
      }
      residualSd = Math.sqrt(residuals / df());
    }

    private double at(double where) {
      return meanY + slope * (where - meanX);
    }

    private int df() {
      return x.length - 2;
    }

    private double t() {
      return TDistribution.of(df()).inverseCumulativeProbability(0.975);
    }

    EffectRow slope(Model model, int runs, int builds) {
      double error = residualSd / Math.sqrt(sxx);
      return row(model, EffectRow.HOLE_ERROR, slope, error, runs, builds);
    }

    EffectRow intercept(int runs, int builds) {
      double error = residualSd * Math.sqrt(1.0 / x.length + meanX * meanX / sxx);
      return row(Model.BUILD_MEANS, EffectRow.INTERCEPT, at(0), error, runs, builds);
    }

    private EffectRow row(
        Model model, String term, double estimate, double error, int runs, int builds) {
      double p = 2 * TDistribution.of(df()).survivalProbability(Math.abs(estimate / error));
      return new EffectRow(
          model,
          term,
          estimate,
          error,
          df(),
          Interval.around(estimate, t() * error),
          OptionalDouble.of(p),
          runs,
          builds);
    }

    List<BandPoint> band() {
      double from = Arrays.stream(x).min().orElseThrow();
      double to = Arrays.stream(x).max().orElseThrow();
      List<BandPoint> band = new ArrayList<>();
      for (int i = 0; i <= 40; i++) {
        double where = from + (to - from) * i / 40;
        double spread = residualSd * Math.sqrt(1.0 / x.length + Math.pow(where - meanX, 2) / sxx);
        band.add(new BandPoint(where, at(where), Interval.around(at(where), t() * spread)));
      }
      return band;
    }
  }
}
