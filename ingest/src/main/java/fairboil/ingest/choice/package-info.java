/**
 * The fixed sets of answers that cells of the sheets may hold, one enum each.
 *
 * <p>Each constant's {@link fairboil.ingest.choice.Choice#label label} is what people write and
 * read.
 */
package fairboil.ingest.choice;
