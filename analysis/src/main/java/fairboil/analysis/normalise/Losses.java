package fairboil.analysis.normalise;

import fairboil.analysis.heat.CoolingFit;
import fairboil.analysis.heat.Loss;
import fairboil.analysis.heat.LossEstimate;
import fairboil.analysis.heat.LossEstimate.Source;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.PotsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the pot of each run loses heat: as told for the pot or the study; else by its own cooling;
 * else as other runs with the same pot, lid and wind show. Never from the heating.
 */
final class Losses {

  /** Relative standard deviation from run to run where a single run was seen: a judgement. */
  private static final double UNSEEN_SCATTER = 0.1;

  /** Steam counts where it was seen beyond twice its standard uncertainty. */
  private static final double SEEN = 2;

  private final Study study;
  private final Map<Key, CoolingFit> fits = new LinkedHashMap<>();
  private final Map<Key, LossEstimate> own = new LinkedHashMap<>();
  private final Map<LossGroup, PooledLoss> pools = new LinkedHashMap<>();

  private Losses(Study study) {
    this.study = study;
  }

  static Losses of(Study study, List<RunResult> runs) {
    Losses losses = new Losses(study);
    Map<LossGroup, List<Cooling>> groups = new LinkedHashMap<>();
    for (RunResult run : runs) {
      if (run.inclusion().included()) {
        Cooling.of(run)
            .ifPresent(
                each -> groups.computeIfAbsent(each.group(), group -> new ArrayList<>()).add(each));
      }
    }
    groups.forEach(losses::pool);
    return losses;
  }

  /** Pools, in the order of their first runs. */
  List<PooledLoss> pools() {
    return List.copyOf(pools.values());
  }

  /** The cooling of a run as fitted. */
  Optional<CoolingFit> fit(RunResult run) {
    return Optional.ofNullable(fits.get(run.run().key()));
  }

  /** How the pot of a run loses heat, if anything tells. */
  Optional<LossEstimate> of(RunResult run) {
    return told(run)
        .or(() -> Optional.ofNullable(own.get(run.run().key())))
        .or(() -> Optional.ofNullable(pools.get(LossGroup.of(run))).map(Losses::ofAnother));
  }

  private Optional<LossEstimate> told(RunResult run) {
    Key pot = new Key(run.run().key().study(), potName(run));
    return study
        .pot(pot)
        .flatMap(it -> it.row().cell(PotsSheet.LOSS_COEFFICIENT))
        .or(() -> study.settings().cell(Settings.LOSS_COEFFICIENT))
        .map(Given::value)
        .filter(given -> given.value() > 0)
        .map(Losses::told);
  }

  private static String potName(RunResult run) {
    String name = LossGroup.of(run).pot();
    return name.isBlank() ? "?" : name;
  }

  private static LossEstimate told(Quantity given) {
    return LossEstimate.told(given.value(), given.resolution());
  }

  private void pool(LossGroup group, List<Cooling> coolings) {
    Steam steam = group.mayLoseSteam() ? Steam.of(coolings) : Steam.NONE;
    List<LossEstimate> estimates = new ArrayList<>();
    for (Cooling cooling : coolings) {
      Optional<CoolingFit> fit = cooling.withPerPascal(steam.perPascal());
      if (fit.isPresent()) {
        Key key = cooling.run().run().key();
        LossEstimate estimate = cooling.estimate(fit.get(), steam.uncertainty());
        fits.put(key, fit.get());
        own.put(key, estimate);
        estimates.add(estimate);
      }
    }
    if (!estimates.isEmpty()) {
      pools.put(group, pooled(group, steam, estimates));
    }
  }

  private static PooledLoss pooled(LossGroup group, Steam steam, List<LossEstimate> estimates) {
    int count = estimates.size();
    double mean = mean(estimates.stream().mapToDouble(each -> each.loss().perKelvin()).toArray());
    double squares = 0;
    for (LossEstimate each : estimates) {
      squares += Math.pow(each.loss().perKelvin() - mean, 2);
    }
    double scatter = count == 1 ? UNSEEN_SCATTER * mean : Math.sqrt(squares / (count - 1));
    return new PooledLoss(
        group,
        new Loss(mean, steam.perPascal()),
        scatter,
        steam.uncertainty(),
        mean(estimates.stream().mapToDouble(LossEstimate::perKelvinByPerPascal).toArray()),
        mean(estimates.stream().mapToDouble(LossEstimate::perKelvinUncertainty).toArray()),
        count);
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  /** What a pool says of one more run of its kind: scatter and the doubt of the mean together. */
  private static LossEstimate ofAnother(PooledLoss pool) {
    double ofMean = Math.hypot(pool.scatter(), pool.ownUncertainty());
    double spread = pool.coolings() == 1 ? ofMean : ofMean * Math.sqrt(1 + 1.0 / pool.coolings());
    return new LossEstimate(
        pool.loss(),
        spread,
        pool.perPascalUncertainty(),
        pool.perKelvinByPerPascal(),
        pool.coolings() == 1 ? Double.POSITIVE_INFINITY : pool.coolings() - 1.0,
        Source.POOLED,
        pool.coolings());
  }

  /**
   * The steam of a group: the mean of what its coolings show, each weighted by the inverse of its
   * variance; its uncertainty is enlarged where they scatter by more than they should (R. T. Birge,
   * Physical Review 40, 1932, 207).
   */
  private record Steam(double perPascal, double uncertainty) {

    static final Steam NONE = new Steam(0, 0);

    static Steam of(List<Cooling> coolings) {
      List<CoolingFit> fits =
          coolings.stream().map(Cooling::withSteam).flatMap(Optional::stream).toList();
      double weights = 0;
      double sum = 0;
      for (CoolingFit fit : fits) {
        double weight = Math.pow(fit.perPascalUncertainty(), -2);
        weights += weight;
        sum += weight * fit.loss().perPascal();
      }
      double mean = sum / weights;
      double squares = 0;
      for (CoolingFit fit : fits) {
        squares += Math.pow((fit.loss().perPascal() - mean) / fit.perPascalUncertainty(), 2);
      }
      double birge = fits.size() > 1 ? Math.max(1, Math.sqrt(squares / (fits.size() - 1))) : 1;
      double uncertainty = birge / Math.sqrt(weights);
      return mean > SEEN * uncertainty ? new Steam(mean, uncertainty) : NONE;
    }
  }
}
