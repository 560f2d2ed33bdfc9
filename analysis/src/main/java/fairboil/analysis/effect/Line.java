package fairboil.analysis.effect;

import fairboil.analysis.effect.EffectRow.Model;
import fairboil.analysis.effect.HoleEffect.BandPoint;
import fairboil.analysis.figure.Deviations;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.model.LinearFit;
import fairboil.analysis.model.MandelPaule;
import fairboil.analysis.model.Regressors;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A line through the means of builds, its interval widened by what is not known of the slope on
 * ambient where responses were moved along it.
 *
 * @param fit the line, responses counted from {@code zero}
 * @param zero what was taken off each response
 * @param carried how far the line moves for each unit of the slope on ambient; empty where
 *     responses were not moved
 * @param slope the slope on ambient; empty where responses were not moved
 */
record Line(LinearFit fit, double zero, Optional<LinearFit> carried, Optional<AmbientSlope> slope) {

  /** An estimate with what it is uncertain by. */
  private record Part(double estimate, double standardError, double degreesOfFreedom) {}

  /** The line as means of builds have it; at least three builds that differ in hole error. */
  static Line through(List<Burns> builds) {
    double zero = builds.get(0).point().mean();
    return new Line(fit(builds, zero), zero, Optional.empty(), Optional.empty());
  }

  /** The line of responses that were moved to one ambient along a slope. */
  static Line through(List<Burns> moved, double ambient, AmbientSlope slope) {
    double zero = moved.get(0).point().mean();
    LinearFit fit = fit(moved, zero);
    double[] shifts = moved.stream().mapToDouble(b -> ambient - b.meanAmbient()).toArray();
    Optional<LinearFit> carried = LinearFit.of(fit.regressors(), shifts, fit.weights());
    return new Line(fit, zero, carried, Optional.of(slope));
  }

  /** Responses are fitted from one of them, so that equal ones differ by exactly nothing. */
  private static LinearFit fit(List<Burns> builds, double zero) {
    List<BuildPoint> points = builds.stream().map(Burns::point).toList();
    double[] means = points.stream().mapToDouble(point -> point.mean() - zero).toArray();
    // not empty: there is a degree of freedom and a spread
    return MandelPaule.fit(regressors(builds), means, varianceOfMeans(points)).orElseThrow();
  }

  /** Hole error, and what else is allowed for, each about its mean. */
  static Regressors regressors(List<Burns> builds) {
    double[] errors = builds.stream().mapToDouble(build -> build.point().holeError()).toArray();
    Regressors x = Regressors.line(EffectRow.HOLE_ERROR, errors);
    for (String name : builds.get(0).covariates().keySet()) {
      double[] values = builds.stream().mapToDouble(b -> b.mean(name)).toArray();
      double mean = Arrays.stream(values).average().orElseThrow();
      x = x.and(name, Arrays.stream(values).map(value -> value - mean).toArray());
    }
    return x;
  }

  /** The names of what is estimated, hole error first. */
  List<String> terms() {
    List<String> terms = new ArrayList<>(fit.regressors().names());
    terms.remove(EffectRow.HOLE_ERROR);
    terms.add(0, EffectRow.HOLE_ERROR);
    return terms;
  }

  /**
   * The variance of each mean that the scatter of its burns explains, pooled over builds; all 1
   * where no build was burnt twice or burns do not differ.
   */
  static double[] varianceOfMeans(List<BuildPoint> points) {
    double squares = 0;
    int degreesOfFreedom = 0;
    for (BuildPoint point : points) {
      squares += Deviations.squares(point.burns());
      degreesOfFreedom += point.burns().length - 1;
    }
    double pooled = degreesOfFreedom > 0 && squares > 0 ? squares / degreesOfFreedom : 0;
    return points.stream()
        .mapToDouble(point -> pooled > 0 ? pooled / point.burns().length : 1)
        .toArray();
  }

  /** Whether the means lie on it but for rounding. */
  boolean isWithoutScatter() {
    return Interval.around(0, fit.residualSd() / 2).isPoint();
  }

  EffectRow row(Model model, String term, double confidence, int burns) {
    double added = term.equals(EffectRow.INTERCEPT) ? zero : 0;
    Part part =
        part(
            fit.estimate(term) + added,
            fit.standardError(term),
            carried.map(line -> line.estimate(term)).orElse(0.0));
    double pValue = LinearFit.pValue(part.estimate, part.standardError, part.degreesOfFreedom);
    return new EffectRow(
        model,
        term,
        part.estimate,
        part.standardError,
        part.degreesOfFreedom,
        interval(part, confidence),
        Double.isNaN(pValue) ? OptionalDouble.empty() : OptionalDouble.of(pValue),
        burns,
        fit.rows());
  }

  BandPoint at(double holeError, double confidence) {
    double[] there = new double[fit.regressors().size()];
    there[0] = 1;
    there[1] = holeError;
    Part part =
        part(
            fit.fitted(there) + zero,
            fit.standardErrorAt(there),
            carried.map(line -> line.fitted(there)).orElse(0.0));
    return new BandPoint(holeError, part.estimate, interval(part, confidence));
  }

  /** Both sources together; degrees of freedom by Welch–Satterthwaite (JCGM 100:2008, G.2b). */
  private Part part(double estimate, double ofMeans, double carriedByAmbient) {
    double ofAmbient =
        slope.map(AmbientSlope::standardError).orElse(0.0) * Math.abs(carriedByAmbient);
    if (ofAmbient == 0) {
      return new Part(estimate, ofMeans, fit.degreesOfFreedom());
    }
    double together = Math.hypot(ofMeans, ofAmbient);
    double degreesOfFreedom =
        Math.pow(together, 4)
            / (Math.pow(ofMeans, 4) / fit.degreesOfFreedom()
                + Math.pow(ofAmbient, 4) / slope.orElseThrow().degreesOfFreedom());
    return new Part(estimate, together, degreesOfFreedom);
  }

  private static Interval interval(Part part, double confidence) {
    double factor = Measured.coverageFactor(confidence, part.degreesOfFreedom);
    return Interval.around(part.estimate, factor * part.standardError);
  }
}
