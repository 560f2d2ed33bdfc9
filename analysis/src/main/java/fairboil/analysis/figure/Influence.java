package fairboil.analysis.figure;

/** What makes a figure uncertain: the lines of an uncertainty budget. */
public enum Influence {
  /** Scatter of the readings. */
  NOISE,
  /** The smallest step of the instrument. */
  RESOLUTION,
  /** How far a probe of its class may be off. */
  SENSOR_TOLERANCE,
  /** Where the probe sat. */
  PLACEMENT,
  /** The voltage of the cold junction of a thermocouple. */
  COLD_JUNCTION,
  /** The lag of the probe. */
  LAG,
  /** Scatter that undoing the lag of the probe adds. */
  LAG_NOISE,
  /** The scale. */
  SCALE,
  /** The stopwatch and who pressed it. */
  STOPWATCH,
  /** The time between two readings of the log. */
  SAMPLING,
  /** Joining the clocks of log and stopwatch. */
  CLOCK_JOINING,
  /** The line fitted to the trace. */
  FIT,
  /** The correction of the peak for the noise that lifts it. */
  PEAK_BIAS,
  /** Station pressure, or the weather where none was taken. */
  PRESSURE,
  /** The altitude. */
  ALTITUDE,
  /** The air temperature. */
  AMBIENT,
  /** The mass of the water. */
  WATER_MASS,
  /** The temperature of the water at the start. */
  WATER_START,
  /** The heat capacity of the pot. */
  POT,
  /** The boiling point. */
  BOILING_POINT,
  /** The boil time that another figure stands on. */
  BOIL_TIME,
  /** Heat lost to the air. */
  HEAT_LOSS,
  /** Heat lost in the fire, as against beside it. */
  LOSS_IN_FIRE,
  /** Growth of the fire. */
  FIRE_GROWTH,
  /** The heating value of the fuel. */
  HEATING_VALUE,
  /** Water in the fuel. */
  MOISTURE
}
