package fairboil.ingest.sheet;

/**
 * One reading of one hole of a build.
 *
 * @param build the build
 * @param ring the name of its ring
 * @param number the number of the hole, from 1, in order round the ring
 * @param row its row of {@link HolesSheet}
 */
public record Hole(Key build, String ring, int number, Row row) {}
