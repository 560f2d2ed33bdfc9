package fairboil.ingest.sheet;

import fairboil.ingest.quantity.Quantity;

/** The pot of a run: a pot of {@code pots.csv} by its name, or just its empty mass. */
public sealed interface PotGiven {

  /**
   * A pot described in {@code pots.csv}.
   *
   * @param name its name there
   */
  record Named(String name) implements PotGiven {}

  /**
   * A pot of which only the empty mass is told.
   *
   * @param mass its mass, a {@link fairboil.ingest.dimension.Dimension#MASS}
   */
  record EmptyMass(Quantity mass) implements PotGiven {}
}
