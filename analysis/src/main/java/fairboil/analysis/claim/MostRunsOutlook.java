package fairboil.analysis.claim;

import fairboil.analysis.claim.ClaimResult.Estimate;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.model.Noncentral;
import fairboil.analysis.model.RandomModelPower;
import fairboil.analysis.model.ToleranceFactor;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * How many burns, or builds, would settle what is claimed of most runs: the number from which four
 * studies in five would, if runs scatter as they were found to. Instruments that all runs share
 * move the bound towards the estimate by their part.
 *
 * @param most what is claimed
 * @param units how many units there are
 * @param unit what one is, in the plural
 * @param power how often a number of units settles it
 */
record MostRunsOutlook(MostRuns most, int units, Message unit, Power power) implements Outlook {

  /** How often so many units leave the bounds; the bounds have been moved for what is shared. */
  interface Power {

    /**
     * Prepares it.
     *
     * @param bounds the values for which the claim holds
     * @param holds whether it is to be supported, or contradicted
     * @param confidence of the interval
     */
    IntToDoubleFunction at(Interval bounds, boolean holds, double confidence);
  }

  /** Of one build: the bound is exact by the noncentral t distribution, and so is its power. */
  static Outlook ofOneBuild(MostRuns most, double mean, double sd, int runs) {
    return new MostRunsOutlook(
        most,
        runs,
        OutlookSays.BURNS_OF_THAT_STOVE,
        (bounds, holds, confidence) ->
            most.relation() == Relation.NO_DIFFERENT_FROM
                ? n -> between(n, bounds, mean, sd, confidence)
                : n -> beyond(n, distance(bounds, mean), sd, holds, confidence));
  }

  /** Of builds: studies are made up, and each is judged as this one is. */
  static Outlook ofBuilds(MostRuns most, List<double[]> builds, long seed) {
    RandomModelPower model = RandomModelPower.of(builds, seed);
    int runs = builds.stream().mapToInt(values -> values.length).sum();
    boolean bothSides = most.relation() == Relation.NO_DIFFERENT_FROM;
    double share = bothSides ? (1 + MostRuns.SHARE) / 2 : MostRuns.SHARE;
    return new MostRunsOutlook(
        most,
        builds.size(),
        OutlookSays.builds(runs, builds.size()),
        (bounds, holds, confidence) ->
            n -> model.power(n, share, (1 - confidence) / 2, bounds, holds));
  }

  @Override
  public Optional<Message> needed(Estimate estimate, Interval bounds, double confidence) {
    boolean bothSides = most.relation() == Relation.NO_DIFFERENT_FROM;
    boolean holds = bothSides || bounds.contains(estimate.value());
    double shift = Measured.coverageFactor(confidence, Double.POSITIVE_INFINITY) * most.shared();
    double inwards = holds ? shift : -shift;
    double low = bounds.low() + inwards;
    double high = bounds.high() - inwards;
    boolean isPassed =
        low > high || (!bothSides && holds != new Interval(low, high).contains(estimate.value()));
    return Optional.of(
        isPassed
            ? OutlookSays.NO_NUMBER.with(Argument.clause(unit))
            : Outlook.clause(
                Outlook.fewest(units + 1, power.at(new Interval(low, high), holds, confidence)),
                unit,
                OutlookSays.SCATTER_IS));
  }

  /** From the mean to the one bound, away from the middle of the runs where positive. */
  private static double distance(Interval bounds, double mean) {
    return Double.isFinite(bounds.high()) ? bounds.high() - mean : mean - bounds.low();
  }

  private static double beyond(
      int n, double distance, double sd, boolean holds, double confidence) {
    if (sd == 0) {
      return 1;
    }
    double tail = (1 - confidence) / 2;
    double root = Math.sqrt(n);
    double factor = ToleranceFactor.oneSided(n, MostRuns.SHARE, holds ? 1 - tail : tail);
    double below = Noncentral.t(factor * root, n - 1.0, root * distance / sd);
    return holds ? 1 - below : below;
  }

  /** How often mean ± k s lies within bounds: over the mean exactly, over s by quadrature. */
  private static double between(int n, Interval bounds, double mean, double sd, double confidence) {
    double factor = ToleranceFactor.twoSided(n, MostRuns.SHARE, confidence);
    return sd == 0 ? 1 : Noncentral.within(n, factor, bounds.low(), bounds.high(), mean, sd);
  }
}
