package fairboil.ingest.sheet;

import fairboil.ingest.choice.Air;
import fairboil.ingest.choice.Datum;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import java.util.List;

/**
 * The columns of {@code rings.csv}. A ring of which something that was given cannot be read is not
 * the ring that was meant: it is neither drawn nor judged.
 */
public final class RingsSheet {

  /** Name of the ring. */
  public static final Column<String> RING =
      Column.text("ring", "name of the ring", "upper").required();

  /** Design that has the ring (blank: all). */
  public static final Column<String> DESIGN =
      Column.text("design", "design that has the ring (blank: all)", "two-wall");

  /** Build that has the ring (blank: all). */
  public static final Column<String> BUILD =
      Column.text("build", "build that has the ring (blank: all)", "K1");

  /** Part of the can that the ring is in. */
  public static final Column<Surface> SURFACE =
      Column.choice("surface", "part of the can that the ring is in", "wall", Surface.class)
          .orElse(Surface.WALL)
          .legible();

  /** What its air is for. */
  public static final Column<Air> AIR =
      Column.choice("air", "what its air is for", "secondary", Air.class);

  /** Edge that heights are measured from. */
  public static final Column<Datum> DATUM =
      Column.choice("datum", "edge that heights are measured from", "top rim", Datum.class)
          .orElse(Datum.TOP_RIM)
          .legible();

  /** How many holes. */
  public static final Column<Integer> HOLES =
      Column.whole("holes", "how many holes", "16").required();

  /** Equal parts of the circle (default: as many as holes). */
  public static final Column<Integer> DIVISIONS =
      Column.whole("divisions", "equal parts of the circle (default: as many as holes)", "16")
          .legible();

  /** Division numbers left without a hole. */
  public static final Column<List<Integer>> SKIPPED =
      Column.wholes("skipped", "division numbers left without a hole", "4, 12").legible();

  /** Circumference along a strip laid round the can. */
  public static final Column<Quantity> WRAP =
      Column.quantity(
              "wrap", "circumference along a strip laid round the can", "314 mm", Dimension.LENGTH)
          .legible();

  /** Radius of the circle on the base (0: centre hole). */
  public static final Column<Quantity> CIRCLE =
      Column.quantity(
              "circle",
              "radius of the circle on the base (0: centre hole)",
              "25 mm",
              Dimension.LENGTH)
          .legible();

  /** Angle of division 1 on the base. */
  public static final Column<Quantity> START =
      Column.quantity("start", "angle of division 1 on the base", "0 °", Dimension.ANGLE)
          .orElse(Quantity.of(0, Unit.DEGREE))
          .legible();

  /** Height of the ring from the datum. */
  public static final Column<Quantity> HEIGHT =
      Column.quantity("height", "height of the ring from the datum", "15 mm", Dimension.LENGTH)
          .legible();

  /** Diameter of the holes. */
  public static final Column<Quantity> DIAMETER =
      Column.quantity("diameter", "diameter of the holes", "6 mm", Dimension.LENGTH).legible();

  /** The sheet. */
  public static final SheetSchema SCHEMA =
      new SheetSchema(
          "rings.csv",
          "a ring of holes as intended",
          List.of(
              RING, DESIGN, BUILD, SURFACE, AIR, DATUM, HOLES, DIVISIONS, SKIPPED, WRAP, CIRCLE,
              START, HEIGHT, DIAMETER));

  private RingsSheet() {}
}
