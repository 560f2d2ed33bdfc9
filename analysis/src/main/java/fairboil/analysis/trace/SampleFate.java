package fairboil.analysis.trace;

/** Why a reading of a channel is not part of its clean trace. */
public enum SampleFate {
  /** A fault code or fault word. */
  FAULT,
  /** A lone spike. */
  SPIKE,
  /** An empty cell. */
  GAP
}
