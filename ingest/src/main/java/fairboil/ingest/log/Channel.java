package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Sensor;
import java.util.Optional;
import tech.tablesaw.api.DoubleColumn;

/**
 * One column of temperatures, or of thermocouple voltages, in a log.
 *
 * @param name its header, or {@code #3} for a column without one
 * @param role what it holds
 * @param sensor the row of {@code sensors.csv} that speaks of it, if any
 * @param unit the unit as written
 * @param values one value per reading: °C, or volts where the unit is one of voltage; NaN where
 *     missing
 * @param resolution the smallest step as written, in K or V; 0 where it is not known
 * @param faults how many readings were fault codes or fault words
 * @param empty how many readings were empty cells
 * @param place the file and column
 */
public record Channel(
    String name,
    Role role,
    Optional<Sensor> sensor,
    Unit unit,
    DoubleColumn values,
    double resolution,
    int faults,
    int empty,
    Place place) {}
