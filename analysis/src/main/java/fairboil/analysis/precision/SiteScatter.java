package fairboil.analysis.precision;

import fairboil.analysis.group.RunGroup;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.FactorSpace;
import fairboil.analysis.model.MeanSquare;
import fairboil.analysis.model.VarianceComponents;
import fairboil.ingest.sheet.Key;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Scatter of one measure where several sites, or testers, burnt stoves. Sums of squares are taken
 * in sequence, so that unequal numbers of runs do no harm.
 *
 * <p>Where a stove went round: the basic model of ISO 5725-2:1994 for each stove, pooled over
 * stoves; with two such stoves or more, build crossed with site. Where each site has several stoves
 * of its own: run in build in site.
 */
final class SiteScatter {

  private final Burned burned;
  private final FactorSpace cells;
  private final FactorSpace stoves;
  private final MeanSquare runs;

  SiteScatter(Burned burned) {
    this.burned = burned;
    this.cells = FactorSpace.of(burned.cells());
    this.stoves = FactorSpace.of(burned.stoves());
    this.runs = MeanSquare.beyond(cells, burned.values());
  }

  Burned burned() {
    return burned;
  }

  /** Run to run, of one stove at one site. */
  MeanSquare runs() {
    return runs;
  }

  private MeanSquare beyond(FactorSpace smaller, FactorSpace larger) {
    return MeanSquare.beyond(smaller, larger, burned.values());
  }

  /** Site to site for the stoves that went round: the estimator of ISO 5725-2:1994, 7.4. */
  Optional<VarianceComponents> betweenSites() {
    MeanSquare sites = beyond(stoves, cells);
    return sites.isThere() && runs.isThere()
        ? Optional.of(components(sites, burned.cells(), runs.value(), runs.degreesOfFreedom()))
        : Optional.empty();
  }

  private static VarianceComponents components(
      MeanSquare square, int[] factor, double error, int degreesOfFreedom) {
    return new VarianceComponents(
        square.degreesOfFreedom() + 1,
        square.weight(factor),
        square.value(),
        error,
        degreesOfFreedom);
  }

  /** The part of site to site that differs from stove to stove: two stoves must have gone round. */
  Optional<VarianceComponents> siteByStove() {
    MeanSquare both = beyond(FactorSpace.of(burned.stoves(), burned.sites()), cells);
    return both.isThere() && runs.isThere()
        ? Optional.of(components(both, burned.cells(), runs.value(), runs.degreesOfFreedom()))
        : Optional.empty();
  }

  /** The part of site to site that is the same for every stove. */
  Optional<VarianceComponents> siteAlike() {
    Optional<VarianceComponents> other = siteByStove();
    MeanSquare alike = beyond(stoves, FactorSpace.of(burned.stoves(), burned.sites()));
    return other
        .filter(found -> alike.isThere())
        .map(found -> components(alike, burned.sites(), error(alike, found), found.groups() - 1));
  }

  /** What a mean square is expected to be for want of its own factor: by stove, and run to run. */
  private double error(MeanSquare square, VarianceComponents cell) {
    double variance = cell.sdBetween() * cell.sdBetween();
    return runs.value() + square.weight(burned.cells()) * variance;
  }

  /** Stove to stove at one site: within sites, of one design. */
  Optional<VarianceComponents> stovesWithinSites() {
    FactorSpace sites = FactorSpace.of(burned.sites());
    MeanSquare own = beyond(sites, FactorSpace.of(burned.sites(), burned.stoves()));
    if (!own.isThere() || !runs.isThere()) {
      return Optional.empty();
    }
    Optional<VarianceComponents> cell = siteByStove();
    return Optional.of(
        components(
            own,
            burned.stoves(),
            cell.map(found -> error(own, found)).orElse(runs.value()),
            cell.map(found -> found.groups() - 1).orElse(runs.degreesOfFreedom())));
  }

  /** Site to site where each has several own stoves: run in build in site, within designs. */
  Optional<VarianceComponents> sitesWithOwnStoves() {
    FactorSpace designs = FactorSpace.of(burned.designs());
    FactorSpace sites = FactorSpace.of(burned.designs(), burned.sites());
    MeanSquare between = beyond(designs, sites);
    MeanSquare own = beyond(sites, FactorSpace.of(burned.stoves(), burned.sites()));
    if (!between.isThere() || !own.isThere() || !runs.isThere()) {
      return Optional.empty();
    }
    VarianceComponents stove =
        components(own, burned.stoves(), runs.value(), runs.degreesOfFreedom());
    double error =
        runs.value() + between.weight(burned.stoves()) * stove.sdBetween() * stove.sdBetween();
    return Optional.of(components(between, burned.sites(), error, own.degreesOfFreedom()));
  }

  /** The stoves that were burnt at more than one site. */
  Set<Key> wentRound() {
    Map<Key, Set<Integer>> sites = new HashMap<>();
    for (int i = 0; i < burned.size(); i++) {
      sites
          .computeIfAbsent(burned.runs().get(i).build().key(), key -> new HashSet<>())
          .add(burned.sites()[i]);
    }
    sites.values().removeIf(some -> some.size() < 2);
    return sites.keySet();
  }

  static SiteScatter of(RunGroup runs, Measure measure, Repeated by) {
    return new SiteScatter(Burned.of(runs, measure, by));
  }
}
