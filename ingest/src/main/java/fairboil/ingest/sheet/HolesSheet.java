package fairboil.ingest.sheet;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.quantity.Quantity;
import java.util.List;

/** The columns of {@code holes.csv}. */
public final class HolesSheet {

  /** Build that has the hole. */
  public static final Column<String> BUILD =
      Column.text("build", "build that has the hole", "K1").required();

  /** Ring that has the hole. */
  public static final Column<String> RING =
      Column.text("ring", "ring that has the hole", "upper").required();

  /** Number of the hole, in order round the ring. */
  public static final Column<Integer> HOLE =
      Column.whole("hole", "number of the hole, in order round the ring", "1").required();

  /** 1 for the first reading, 2 for the second. */
  public static final Column<Integer> READING =
      Column.whole("reading", "1 for the first reading, 2 for the second", "1").orElse(1).legible();

  /** Place along the wrap. */
  public static final Column<Quantity> ALONG =
      Column.quantity("along", "place along the wrap", "19.6 mm", Dimension.LENGTH);

  /** Distance along the wrap to the next hole. */
  public static final Column<Quantity> GAP =
      Column.quantity(
          "gap", "distance along the wrap to the next hole", "19.6 mm", Dimension.LENGTH);

  /** Height from the datum of the ring. */
  public static final Column<Quantity> HEIGHT =
      Column.quantity("height", "height from the datum of the ring", "15.2 mm", Dimension.LENGTH);

  /** Place on the base, first direction. */
  public static final Column<Quantity> X =
      Column.quantity("x", "place on the base, first direction", "25.0 mm", Dimension.LENGTH);

  /** Place on the base, second direction. */
  public static final Column<Quantity> Y =
      Column.quantity("y", "place on the base, second direction", "0.0 mm", Dimension.LENGTH);

  /** Angle on the base. */
  public static final Column<Quantity> ANGLE =
      Column.quantity("angle", "angle on the base", "45 °", Dimension.ANGLE);

  /** Distance from the centre of the base. */
  public static final Column<Quantity> RADIUS =
      Column.quantity(
          "radius", "distance from the centre of the base", "25.0 mm", Dimension.LENGTH);

  /** Diameter of the hole. */
  public static final Column<Quantity> DIAMETER =
      Column.quantity("diameter", "diameter of the hole", "6.1 mm", Dimension.LENGTH);

  /** Length of the 100 mm check bar of the print that the hole was read with. */
  public static final Column<Quantity> BAR =
      Column.quantity(
              "bar",
              "100 mm check bar of the print that it was read with, as measured (blank: right)",
              "100 mm",
              Dimension.LENGTH)
          .legible();

  /** The sheet. */
  public static final SheetSchema SCHEMA =
      new SheetSchema(
          "holes.csv",
          "a hole as measured",
          List.of(
              BUILD, RING, HOLE, READING, ALONG, GAP, HEIGHT, X, Y, ANGLE, RADIUS, DIAMETER, BAR));

  private HolesSheet() {}
}
