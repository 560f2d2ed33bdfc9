package fairboil.ingest.grid;

/** What a file's own numbers and separators say of a comma between digits. */
public enum DecimalMark {
  /** Cells are parted by commas: a comma in {@code 5,280} parts thousands. */
  POINT,
  /** Some number can only have a decimal comma: {@code 1,250} is one and a quarter. */
  COMMA,
  /** Nothing tells: {@code 1,250} could be either, and is asked. */
  UNKNOWN
}
