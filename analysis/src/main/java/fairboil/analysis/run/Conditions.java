package fairboil.analysis.run;

import fairboil.analysis.figure.Figure;

/**
 * The conditions of a run.
 *
 * @param ambient air temperature, °C
 * @param pressure station pressure, Pa: as taken, or from sea-level pressure or altitude
 * @param boilingPoint boiling point of water at that pressure, °C
 * @param water mass of water put on, kg
 * @param waterStart temperature of the water at the start, °C
 * @param heatCapacity heat capacity of water and pot together, J/K, held as {@link
 *     fairboil.ingest.dimension.Dimension#ENERGY} for 1 K
 */
public record Conditions(
    Figure ambient,
    Figure pressure,
    Figure boilingPoint,
    Figure water,
    Figure waterStart,
    Figure heatCapacity) {}
