package fairboil.ingest.sheet;

/**
 * A sentence to be tested.
 *
 * @param key its study and name
 * @param row its row of {@link ClaimsSheet}
 */
public record Claim(Key key, Row row) {}
