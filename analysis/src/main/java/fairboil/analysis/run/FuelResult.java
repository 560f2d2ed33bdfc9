package fairboil.analysis.run;

import fairboil.analysis.figure.Figure;
import fairboil.ingest.finding.Message;

/**
 * Fuel measures of a run; they cover lit to flame out, or to when the fuel was smothered.
 *
 * @param dryFuel equivalent dry fuel burnt, kg
 * @param burningRate dry fuel per second, kg/s
 * @param firepower heat of the fuel per second, W
 * @param efficiency share of the fuel's heat that went into water and steam, char credited
 * @param efficiencyWithoutChar the same, char not credited
 * @param specificConsumption dry fuel per mass of water left of what was heated, a ratio (kg/kg)
 * @param fuelPerBoil dry fuel that at this efficiency brings the reference water to the boil, kg
 */
public record FuelResult(
    Figure dryFuel,
    Figure burningRate,
    Figure firepower,
    Figure efficiency,
    Figure efficiencyWithoutChar,
    Figure specificConsumption,
    Figure fuelPerBoil) {

  /** Fuel measures that are not known at all, for one reason. */
  public static FuelResult unknown(Message reason) {
    Figure unknown = Figure.unknown(reason);
    return new FuelResult(unknown, unknown, unknown, unknown, unknown, unknown, unknown);
  }
}
