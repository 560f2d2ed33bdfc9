package fairboil.analysis.run;

import fairboil.ingest.choice.NormaliseBy;

/**
 * The reference conditions that results are restated for.
 *
 * @param water mass of water, kg
 * @param start temperature of the water at the start, °C
 * @param ambient air temperature, °C
 * @param boilingPoint boiling point at the reference altitude, °C
 * @param altitude the reference altitude, m
 * @param normaliseBy the method asked for
 */
public record References(
    double water,
    double start,
    double ambient,
    double boilingPoint,
    double altitude,
    NormaliseBy normaliseBy) {}
