package fairboil.analysis.normalise;

import fairboil.analysis.heat.BlockMeans;
import fairboil.analysis.heat.Contents;
import fairboil.analysis.heat.CoolingFit;
import fairboil.analysis.heat.LossEstimate;
import fairboil.analysis.heat.LossEstimate.Source;
import fairboil.analysis.heat.Surroundings;
import fairboil.analysis.run.RunResult;
import java.util.Arrays;
import java.util.Optional;

/**
 * The cooling of one run, ready to be fitted.
 *
 * @param run the run
 * @param part its blocks
 * @param contents water left, and the pot
 * @param air the air about it
 */
record Cooling(RunResult run, BlockMeans part, Contents contents, Surroundings air) {

  /** No pot of such a stove loses so much, W/K: the probe was out of the water. */
  private static final double MOST_LOSS = 20;

  private static final double MOST_SCATTER = 0.5;
  private static final double MOST_SCATTER_OF_FALL = 0.05;

  /** The cooling of a run, if it has one and what is needed to work it out. */
  static Optional<Cooling> of(RunResult run) {
    boolean known =
        run.heat().cooling().isPresent()
            && run.heat().pot().isPresent()
            && run.heat().waterLeft().isKnown()
            && run.conditions().ambient().isKnown();
    return known
        ? Optional.of(
            new Cooling(
                run,
                run.heat().cooling().orElseThrow().blocks(),
                new Contents(
                    run.heat().waterLeft().orNaN(), run.heat().pot().orElseThrow().capacity()),
                Surroundings.at(run.conditions().ambient().orNaN())))
        : Optional.empty();
  }

  LossGroup group() {
    return LossGroup.of(run);
  }

  /** The loss with k free; empty where k comes out below 0 or the cooling is no pot's. */
  Optional<CoolingFit> withSteam() {
    return CoolingFit.withSteam(part, contents, air)
        .filter(fit -> fit.perPascalUncertainty() > 0)
        .filter(this::isOfAPot);
  }

  /** The loss with k held; empty where the cooling is no pot's. */
  Optional<CoolingFit> withPerPascal(double perPascal) {
    return CoolingFit.withPerPascal(part, contents, air, perPascal).filter(this::isOfAPot);
  }

  private boolean isOfAPot(CoolingFit fit) {
    double squares = Arrays.stream(fit.residuals()).map(each -> each * each).sum();
    double scatter = Math.sqrt(squares / fit.residuals().length);
    return fit.loss().perKelvin() < MOST_LOSS
        && scatter < Math.max(MOST_SCATTER, MOST_SCATTER_OF_FALL * -part.rise());
  }

  /** The estimate that a fit makes, with what water, pot, air and probe add to its uncertainty. */
  LossEstimate estimate(CoolingFit fit, double perPascalUncertainty) {
    double perKelvin = fit.loss().perKelvin();
    double ofContents =
        Math.hypot(
                run.heat().waterLeft().budget().combined() * 4186,
                run.heat().pot().orElseThrow().uncertainty())
            / contents.capacity();
    double ofKelvins =
        Math.hypot(run.conditions().ambient().budget().combined(), run.heat().probe())
            / Math.max(1, part.mean() - air.ambient());
    double systematic = perKelvin * Math.hypot(ofContents, ofKelvins);
    double combined = Math.hypot(fit.perKelvinUncertainty(), systematic);
    double share = fit.perKelvinUncertainty() / combined;
    return new LossEstimate(
        fit.loss(),
        combined,
        perPascalUncertainty,
        fit.perKelvinByPerPascal(),
        share > 0 ? fit.degreesOfFreedom() / Math.pow(share, 4) : Double.POSITIVE_INFINITY,
        Source.OWN,
        1);
  }
}
