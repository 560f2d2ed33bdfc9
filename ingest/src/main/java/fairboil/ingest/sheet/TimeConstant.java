package fairboil.ingest.sheet;

import fairboil.ingest.quantity.Quantity;

/** How the time constant of a probe is told: as a time, or by a step that its log holds. */
public sealed interface TimeConstant {

  /** What is written for {@link OfStep}. */
  String STEP = "step";

  /**
   * A time.
   *
   * @param time the time to follow a step to 63 %, a {@link
   *     fairboil.ingest.quantity.Dimension#DURATION}
   */
  record Told(Quantity time) implements TimeConstant {}

  /** It is to be taken from a step in the log: the probe was moved at once from cool to hot. */
  record OfStep() implements TimeConstant {}
}
