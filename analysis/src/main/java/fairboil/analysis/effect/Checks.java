package fairboil.analysis.effect;

import fairboil.analysis.effect.EffectChecks.AllRings;
import fairboil.analysis.effect.EffectChecks.Exactness;
import fairboil.analysis.effect.EffectChecks.WithoutBuild;
import fairboil.analysis.effect.EffectChecks.WithoutRun;
import fairboil.analysis.effect.EffectRow.Model;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.model.Chance;
import fairboil.analysis.model.LinearFit;
import fairboil.analysis.model.MandelPaule;
import fairboil.analysis.model.Regressors;
import fairboil.analysis.model.SlopePermutation;
import fairboil.analysis.model.TheilSen;
import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Asks the question of one hole effect in other ways. */
final class Checks {

  private static final int FEWEST_FOR_CURVATURE = 6;

  /** The chance of finding the smallest slope. */
  private static final double POWER = 0.8;

  private final HoleEffect effect;
  private final EffectRow headline;
  private final List<Burns> builds;
  private final LinearFit line;
  private final List<RingResult> rings;
  private final double confidence;

  /**
   * Checks of an effect that could be estimated.
   *
   * @param effect the effect
   * @param builds the builds behind its points, with their ambients, in the same order
   * @param rings their rings, in the same order
   * @param confidence of intervals
   */
  Checks(HoleEffect effect, List<Burns> builds, List<RingResult> rings, double confidence) {
    this.effect = effect;
    this.headline = effect.headline().orElseThrow();
    this.builds =
        IntStream.range(0, builds.size())
            .mapToObj(i -> builds.get(i).as(effect.points().get(i)))
            .toList();
    this.line = Line.through(this.builds).fit();
    this.rings = rings;
    this.confidence = confidence;
  }

  EffectChecks result(int seed, Optional<EffectRow> withExcluded, Optional<AllRings> allRings) {
    Optional<SlopePermutation> permutation = permutation(seed);
    return new EffectChecks(
        effect.response(),
        effect.ring(),
        confidence,
        ambientCorrelation(),
        areaCorrelation(),
        TheilSen.of(errors(), adjusted(), confidence),
        permutation,
        permutation.map(this::exactness).orElse(Exactness.APPROXIMATE),
        withoutEachBuild(),
        curvature(),
        OptionalDouble.of(smallestSlope()),
        ReadingError.takenOut(
            line,
            fromFirst(),
            rings,
            headline,
            confidence,
            Chance.stream(seed, effect.ring() + effect.response(), "reading")),
        withExcluded,
        hardestRun(),
        allRings);
  }

  private double[] errors() {
    return builds.stream().mapToDouble(build -> build.point().holeError()).toArray();
  }

  private double[] means() {
    return builds.stream().mapToDouble(build -> build.point().mean()).toArray();
  }

  /** The means as far as they differ from the first: equal ones by exactly nothing. */
  private double[] fromFirst() {
    double zero = builds.get(0).point().mean();
    return Arrays.stream(means()).map(mean -> mean - zero).toArray();
  }

  /** The means with what the line allows for taken off. */
  private double[] adjusted() {
    double[] adjusted = means();
    List<String> names = line.regressors().names();
    for (int i = 0; i < adjusted.length; i++) {
      double[] row = line.regressors().row(i);
      for (int j = 2; j < row.length; j++) {
        adjusted[i] -= row[j] * line.estimate(names.get(j));
      }
    }
    return adjusted;
  }

  private OptionalDouble ambientCorrelation() {
    return builds.stream().allMatch(Burns::knowAmbients)
        ? correlation(errors(), builds.stream().mapToDouble(Burns::meanAmbient).toArray())
        : OptionalDouble.empty();
  }

  private OptionalDouble areaCorrelation() {
    double[] off =
        rings.stream()
            .mapToDouble(ring -> ring.openArea().orNaN() - ring.openAreaIntended().orNaN())
            .toArray();
    return Arrays.stream(off).anyMatch(Double::isNaN)
        ? OptionalDouble.empty()
        : correlation(errors(), off);
  }

  /** Pearson's correlation; empty if either does not differ. */
  static OptionalDouble correlation(double[] x, double[] y) {
    double meanX = Arrays.stream(x).average().orElse(0);
    double meanY = Arrays.stream(y).average().orElse(0);
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int i = 0; i < x.length; i++) {
      xx += (x[i] - meanX) * (x[i] - meanX);
      xy += (x[i] - meanX) * (y[i] - meanY);
      yy += (y[i] - meanY) * (y[i] - meanY);
    }
    double r = xy / Math.sqrt(xx * yy);
    boolean flat = xx <= 1e-18 * meanX * meanX || yy <= 1e-18 * meanY * meanY;
    return flat || Double.isNaN(r)
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.max(-1, Math.min(1, r)));
  }

  private Optional<SlopePermutation> permutation(int seed) {
    List<String> designs = builds.stream().map(b -> b.point().design().orElse("")).toList();
    boolean nothingToDeal = designs.stream().distinct().count() == designs.size();
    return nothingToDeal
        ? Optional.empty()
        : Optional.of(
            SlopePermutation.of(
                errors(),
                adjusted(),
                designs,
                Chance.stream(seed, effect.ring() + effect.response(), "permutation")));
  }

  private Exactness exactness(SlopePermutation permutation) {
    int burns = builds.get(0).ambients().length;
    boolean equal = builds.stream().allMatch(build -> build.ambients().length == burns);
    boolean designOnly =
        builds.get(0).covariates().keySet().stream()
            .allMatch(name -> name.startsWith(EffectRow.DESIGN));
    return equal && designOnly && permutation.method() == SlopePermutation.Method.ALL
        ? Exactness.EXACT
        : Exactness.APPROXIMATE;
  }

  /** Each line has the weights of the line through all. */
  private List<WithoutBuild> withoutEachBuild() {
    double[] means = fromFirst();
    List<WithoutBuild> without = new ArrayList<>();
    for (int i = 0; i < builds.size(); i++) {
      Key left = builds.get(i).point().build();
      double cook = line.cook(i);
      LinearFit.of(
              line.regressors().withoutRow(i),
              Burns.without(means, i),
              Burns.without(line.weights(), i))
          .ifPresent(
              fit ->
                  without.add(
                      new WithoutBuild(
                          left,
                          cook,
                          fit.estimate(EffectRow.HOLE_ERROR),
                          fit.interval(EffectRow.HOLE_ERROR, confidence))));
    }
    return without;
  }

  /**
   * The run without which the mean of its build would move the slope most. Runs of builds that have
   * no other are not among them: they are whole builds.
   */
  private Optional<WithoutRun> hardestRun() {
    int hardest = -1;
    int burn = 0;
    double most = 0;
    for (int i = 0; i < builds.size(); i++) {
      double[] burns = builds.get(i).point().burns();
      double pull = Math.abs(line.pull(EffectRow.HOLE_ERROR, i)) / (burns.length - 1);
      for (int j = 0; j < burns.length && burns.length > 1; j++) {
        double move = pull * Math.abs(burns[j] - builds.get(i).point().mean());
        if (move > most && !builds.get(i).runs().isEmpty()) {
          most = move;
          hardest = i;
          burn = j;
        }
      }
    }
    return hardest < 0 ? Optional.empty() : Optional.of(withoutRun(hardest, burn));
  }

  private WithoutRun withoutRun(int build, int burn) {
    List<Burns> others = new ArrayList<>(builds);
    others.set(build, builds.get(build).without(burn));
    EffectRow row =
        Line.through(others)
            .row(Model.BUILD_MEANS, EffectRow.HOLE_ERROR, confidence, headline.runs() - 1);
    return new WithoutRun(builds.get(build).runs().get(burn), row.estimate(), row.interval());
  }

  /** The quadratic term about the middle of the hole errors; builds are the error, never runs. */
  private Optional<EffectRow> curvature() {
    if (builds.size() < FEWEST_FOR_CURVATURE) {
      return Optional.empty();
    }
    double[] errors = errors();
    double middle = Arrays.stream(errors).average().orElseThrow();
    double[] centred = Arrays.stream(errors).map(error -> error - middle).toArray();
    double[] squared = Arrays.stream(centred).map(error -> error * error).toArray();
    Regressors x = Line.regressors(builds).and(EffectRow.CURVATURE, squared);
    List<BuildPoint> points = builds.stream().map(Burns::point).toList();
    return MandelPaule.fit(x, fromFirst(), Line.varianceOfMeans(points))
        .map(fit -> row(fit, EffectRow.CURVATURE));
  }

  private EffectRow row(LinearFit fit, String term) {
    double pValue = fit.pValue(term);
    return new EffectRow(
        Model.BUILD_MEANS,
        term,
        fit.estimate(term),
        fit.standardError(term),
        fit.degreesOfFreedom(),
        fit.interval(term, confidence),
        Double.isNaN(pValue) ? OptionalDouble.empty() : OptionalDouble.of(pValue),
        headline.runs(),
        headline.builds());
  }

  /** By the quantiles of Student's t at the chance of a false alarm and at the power. */
  private double smallestSlope() {
    double df = headline.degreesOfFreedom();
    return headline.standardError()
        * (Measured.coverageFactor(confidence, df) + Measured.coverageFactor(2 * POWER - 1, df));
  }
}
