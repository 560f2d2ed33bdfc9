package fairboil.ingest.sheet;

import fairboil.ingest.quantity.Quantity;

/** Wind as a person gave it: measured, or judged by the Beaufort scale. */
public sealed interface Wind {

  /**
   * A measured or estimated speed.
   *
   * @param speed a {@link fairboil.ingest.dimension.Dimension#SPEED}
   */
  record Speed(Quantity speed) implements Wind {}

  /**
   * A number of the Beaufort scale.
   *
   * @param number 0 to 12; tests are run at 0 to 4
   */
  record Beaufort(int number) implements Wind {}
}
