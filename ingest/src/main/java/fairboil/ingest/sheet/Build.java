package fairboil.ingest.sheet;

import java.util.Optional;

/**
 * A stove as built: the unit to which hole-position error belongs.
 *
 * @param key its study and name
 * @param row its row of {@link BuildsSheet}, or a row without cells for a build that only runs name
 */
public record Build(Key key, Row row) {

  /** The plan it was built to, if one was told. */
  public Optional<String> design() {
    return row.value(BuildsSheet.DESIGN);
  }
}
