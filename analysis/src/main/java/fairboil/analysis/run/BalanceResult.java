package fairboil.analysis.run;

import fairboil.analysis.heat.BlockMeans;
import fairboil.analysis.heat.Fire;
import fairboil.analysis.heat.LossEstimate;
import java.util.Arrays;
import java.util.Optional;

/**
 * The heat balance of a run.
 *
 * @param loss how its pot loses heat
 * @param fire the fire that brings its water to the boil in the boil time seen
 * @param growthFrom where the growth of the fire is from
 * @param heating the heating as fitted, if there is a log of it
 * @param cooling the cooling as fitted, if there is a log of it
 */
public record BalanceResult(
    LossEstimate loss,
    Fire fire,
    GrowthFrom growthFrom,
    Optional<Fitted> heating,
    Optional<Fitted> cooling) {

  /** Where the growth of a fire is from. */
  public enum GrowthFrom {
    /** From the heating of the run itself. */
    OWN_LOG,
    /** From the other runs of the study: there is no log of its heating. */
    OTHER_RUNS,
    /** From nowhere: none is taken, and a wide doubt with it. */
    NOT_KNOWN
  }

  /** A part of the water's course with what the balance makes of it. Immutable. */
  public static final class Fitted {

    private final double origin;
    private final BlockMeans blocks;
    private final double[] residuals;

    /**
     * A part as fitted.
     *
     * @param origin when its time is 0, s on the run's time line
     * @param blocks its readings, averaged
     * @param residuals observed less fitted, K, one a block; copied
     */
    public Fitted(double origin, BlockMeans blocks, double[] residuals) {
      if (residuals.length != blocks.size()) {
        throw new IllegalArgumentException(
            residuals.length + " residuals of " + blocks.size() + " blocks");
      }
      this.origin = origin;
      this.blocks = blocks;
      this.residuals = residuals.clone();
    }

    /** Mean time of each block, s on the run's time line; a copy. */
    public double[] seconds() {
      return Arrays.stream(blocks.seconds()).map(each -> each + origin).toArray();
    }

    /** Mean temperature of each block, °C; a copy. */
    public double[] celsius() {
      return blocks.celsius();
    }

    /** Observed less fitted, K; a copy. */
    public double[] residuals() {
      return residuals.clone();
    }

    /** The standard deviation of the residuals, K. */
    public double scatter() {
      double squares = 0;
      for (double residual : residuals) {
        squares += residual * residual;
      }
      return Math.sqrt(squares / Math.max(1, residuals.length));
    }
  }
}
