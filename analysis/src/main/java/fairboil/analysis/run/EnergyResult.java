package fairboil.analysis.run;

import fairboil.analysis.figure.Figure;
import fairboil.ingest.choice.NormaliseBy;
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
 */
public record EnergyResult(
    Figure netPower,
    Figure powerGrowth,
    Figure loss,
    Figure energyScaledBoilTime,
    Figure heatBalanceBoilTime,
    Figure normalisedBoilTime,
    Optional<NormaliseBy> normalisedBy) {}
