package fairboil.ingest.sheet;

import fairboil.ingest.finding.Finding;

/**
 * A cell that a person filled in and that could not be read. It is not an empty cell: what holds
 * where a cell is empty does not hold for it.
 *
 * @param written the cell's text, trimmed
 * @param finding what is wrong with it and what follows
 */
public record Unread(String written, Finding finding) {

  /** The same cell, its file named from outside the folder that holds it. */
  Unread in(String folder) {
    return new Unread(written, finding.in(folder));
  }
}
