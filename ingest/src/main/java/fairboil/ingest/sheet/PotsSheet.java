package fairboil.ingest.sheet;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.quantity.Quantity;
import java.util.List;

/** The columns of {@code pots.csv}. */
public final class PotsSheet {

  /** Name of the pot. */
  public static final Column<String> POT =
      Column.text("pot", "name of the pot", "billy").required();

  /** Mass of the empty pot with its lid. */
  public static final Column<Quantity> MASS =
      Column.quantity("mass", "mass of the empty pot with its lid", "240 g", Dimension.MASS);

  /** What it is made of. */
  public static final Column<String> MATERIAL =
      Column.text("material", "what it is made of", "aluminium");

  /** Width across the base. */
  public static final Column<Quantity> WIDTH =
      Column.quantity("width", "width across the base", "150 mm", Dimension.LENGTH);

  /** Heat it loses per second and degree. */
  public static final Column<Quantity> LOSS_COEFFICIENT =
      Column.quantity(
          "loss coefficient",
          "heat it loses per second and degree",
          "1.6 W/K",
          Dimension.CONDUCTANCE);

  /** The sheet. */
  public static final SheetSchema SCHEMA =
      new SheetSchema("pots.csv", "a pot", List.of(POT, MASS, MATERIAL, WIDTH, LOSS_COEFFICIENT));

  private PotsSheet() {}
}
