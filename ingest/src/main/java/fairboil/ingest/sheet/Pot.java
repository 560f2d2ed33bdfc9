package fairboil.ingest.sheet;

/**
 * A pot.
 *
 * @param key its study and name
 * @param row its row of {@link PotsSheet}
 */
public record Pot(Key key, Row row) {}
