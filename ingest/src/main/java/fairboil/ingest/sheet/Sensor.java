package fairboil.ingest.sheet;

import fairboil.ingest.choice.Role;
import java.util.Optional;

/**
 * What is told of a column of logs.
 *
 * @param study the study that it belongs to
 * @param row its row of {@link SensorsSheet}
 */
public record Sensor(String study, Row row) {

  /** What the column holds. */
  public Role role() {
    return row.get(SensorsSheet.ROLE);
  }

  /** The probe: rows of the same study with the same id are the same probe. */
  public Optional<Key> id() {
    return row.value(SensorsSheet.SENSOR).map(name -> new Key(study, name));
  }
}
