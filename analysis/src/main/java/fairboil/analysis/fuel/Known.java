package fairboil.analysis.fuel;

/** What was weighed and measured of a burn and its pot. */
public enum Known {
  /** Moist fuel burnt: put in, less what was left unburnt, kg. */
  MOIST_FUEL,
  /** Water in the fuel as a share of moist fuel, from 0 to below 1. */
  MOISTURE,
  /** Lower heating value of the dry fuel, J/kg. */
  HEATING_VALUE,
  /** Char left, kg. */
  CHAR,
  /** Lower heating value of the char, J/kg. */
  CHAR_HEATING_VALUE,
  /** Air temperature, °C. */
  AIR,
  /** Boiling point, °C. */
  BOILING_POINT,
  /** Water put on, kg. */
  WATER,
  /** Its temperature at the start, °C. */
  START,
  /** Its highest temperature, °C: of a run that boiled, the boiling point. */
  HOTTEST,
  /** Water left, kg. */
  WATER_LEFT,
  /** How long the fuel burnt, s. */
  BURNING
}
