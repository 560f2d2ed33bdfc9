package fairboil.ingest.sheet;

import fairboil.ingest.choice.YesNo;
import java.util.List;

/** The columns of {@code builds.csv}. */
public final class BuildsSheet {

  /** Name of the build. */
  public static final Column<String> BUILD =
      Column.text("build", "name of the build", "K1").required();

  /** Plan that it was built to. */
  public static final Column<String> DESIGN =
      Column.text("design", "plan that it was built to", "two-wall");

  /** Name to show on charts. */
  public static final Column<String> LABEL =
      Column.text("label", "name to show on charts", "Kiln one");

  /** Whether the same stove was sent round between groups. */
  public static final Column<YesNo> SHARED =
      Column.choice(
          "shared", "whether the same stove was sent round between groups", "no", YesNo.class);

  /** Anything else. */
  public static final Column<String> NOTES = Column.text("notes", "anything else", "rim dented");

  /** The sheet. */
  public static final SheetSchema SCHEMA =
      new SheetSchema(
          "builds.csv", "a stove as built", List.of(BUILD, DESIGN, LABEL, SHARED, NOTES));

  private BuildsSheet() {}
}
