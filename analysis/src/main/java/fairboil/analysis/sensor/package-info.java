/**
 * What is known of temperature sensors by their type and class. Knows nothing of runs.
 *
 * <p>{@link fairboil.analysis.sensor.SensorType} and {@link
 * fairboil.analysis.sensor.ToleranceClass} are read from what people write; {@link
 * fairboil.analysis.sensor.Tolerance} tells how far a new sensor may be off, {@link
 * fairboil.analysis.sensor.Thermocouple} turns voltages into temperatures, {@link
 * fairboil.analysis.sensor.BeadRadiation} tells how far a bead may read low in a flame.
 */
package fairboil.analysis.sensor;
