package fairboil.analysis.run;

import fairboil.analysis.figure.Figure;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import java.util.Optional;

/**
 * Heat into the water, and boil times restated for reference conditions.
 *
 * @param netPower heat gained by water and pot from start to boil over the boil time, W
 * @param powerGrowth growth of the fire's power from pot on, 1/s
 * @param loss heat lost to the air, W/K
 * @param energyScaledBoilTime boil time restated by energy scaling, s
 * @param heatBalanceBoilTime boil time restated by heat balance, s
 * @param normalisedBoilTime the one of them that the study uses, s
 * @param normalisedBy which one; empty if there is none
 * @param balance the heat balance, where there is one
 */
public record EnergyResult(
    Figure netPower,
    Figure powerGrowth,
    Figure loss,
    Figure energyScaledBoilTime,
    Figure heatBalanceBoilTime,
    Figure normalisedBoilTime,
    Optional<NormaliseBy> normalisedBy,
    Optional<BalanceResult> balance) {

  private static final Figure NOT_YET =
      Figure.unknown(Template.of("the heat balance needs the other runs of the study").with());

  /** Without a heat balance. */
  public EnergyResult(
      Figure netPower,
      Figure powerGrowth,
      Figure loss,
      Figure energyScaledBoilTime,
      Figure heatBalanceBoilTime,
      Figure normalisedBoilTime,
      Optional<NormaliseBy> normalisedBy) {
    this(
        netPower,
        powerGrowth,
        loss,
        energyScaledBoilTime,
        heatBalanceBoilTime,
        normalisedBoilTime,
        normalisedBy,
        Optional.empty());
  }

  /** A run of whose heat nothing is known, for one reason. */
  static EnergyResult unknown(Message reason) {
    Figure unknown = Figure.unknown(reason);
    return new EnergyResult(unknown, unknown, unknown, unknown, unknown, unknown, Optional.empty());
  }

  /** What a run by itself can tell, normalised by energy scaling until the study decides. */
  static EnergyResult byScaling(Figure netPower, Figure scaled) {
    return new EnergyResult(
        netPower,
        NOT_YET,
        NOT_YET,
        scaled,
        NOT_YET,
        scaled,
        scaled.isKnown() ? Optional.of(NormaliseBy.ENERGY_SCALING) : Optional.empty());
  }
}
