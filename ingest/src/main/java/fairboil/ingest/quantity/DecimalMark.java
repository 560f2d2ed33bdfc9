package fairboil.ingest.quantity;

/** What a file's own numbers and separators say of a comma or point between digits. */
public enum DecimalMark {
  /**
   * Cells are parted by commas and none has a decimal comma: {@code 5,280} has a thousands mark.
   */
  POINT,
  /** Some number can only have a decimal comma: {@code 1,250} is one and a quarter. */
  COMMA,
  /** Nothing tells, or signs conflict: {@code 1,250} could be either, and is asked. */
  UNKNOWN
}
