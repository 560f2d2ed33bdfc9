package fairboil.demo;

/** What a logger of the demonstration records, in the order of its columns. */
enum Channel {
  /** A bead in the flame. */
  FLAME,
  /** The water. */
  WATER,
  /** The air. */
  AMBIENT
}
