package fairboil.ingest.sheet;

/**
 * One burn of one build, from lighting to glow out or the end of the record.
 *
 * @param key its study and name
 * @param build the build that was burnt
 * @param row its row of {@link RunsSheet}
 */
public record Run(Key key, Key build, Row row) {}
