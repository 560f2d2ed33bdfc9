package fairboil.analysis.normalise;

import fairboil.analysis.figure.Interval;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.finding.Message;
import fairboil.ingest.sheet.Key;
import java.util.List;
import java.util.Optional;

/**
 * How the boil times of a study were restated, and why so.
 *
 * @param method {@link NormaliseBy#HEAT_BALANCE} or {@link NormaliseBy#ENERGY_SCALING}
 * @param losses what the coolings show, one a group of pot, lid and wind; unmodifiable
 * @param lacking runs that boiled and of which there is no heat balance to be relied on, and why;
 *     unmodifiable
 * @param check the first-order interval of one run beside that of a full Monte Carlo
 */
public record Normalisation(
    NormaliseBy method, List<PooledLoss> losses, List<Lacking> lacking, Optional<Check> check) {

  /** Where nothing was restated by heat balance. */
  public static final Normalisation NONE =
      new Normalisation(NormaliseBy.ENERGY_SCALING, List.of(), List.of(), Optional.empty());

  /** Copies the lists. */
  public Normalisation {
    losses = List.copyOf(losses);
    lacking = List.copyOf(lacking);
  }

  /**
   * A run without a heat balance to be relied on.
   *
   * @param run the run
   * @param reason why, a clause
   */
  public record Lacking(Key run, Message reason) {}

  /**
   * The interval of a restated boil time worked out in two ways.
   *
   * @param run the run
   * @param firstOrder by the law of propagation of uncertainty, JCGM 100, s
   * @param drawn by propagation of distributions, JCGM 101, s
   * @param draws how many draws
   */
  public record Check(Key run, Interval firstOrder, Interval drawn, int draws) {}
}
