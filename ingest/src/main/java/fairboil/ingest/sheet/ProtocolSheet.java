package fairboil.ingest.sheet;

import fairboil.ingest.quantity.Amount;
import java.util.List;

/** The columns of {@code protocol.csv}. */
public final class ProtocolSheet {

  /** Column of runs.csv. */
  public static final Column<String> COLUMN =
      Column.text("column", "column of runs.csv", "water").required();

  /** Least that was agreed. */
  public static final Column<Amount> LOW = Column.amount("low", "least that was agreed", "950 g");

  /** Most that was agreed. */
  public static final Column<Amount> HIGH = Column.amount("high", "most that was agreed", "1050 g");

  /** Texts that were agreed. */
  public static final Column<List<String>> ALLOWED =
      Column.texts("allowed", "texts that were agreed", "on");

  /** The sheet. */
  public static final SheetSchema SCHEMA =
      new SheetSchema(
          "protocol.csv", "something that the group agreed", List.of(COLUMN, LOW, HIGH, ALLOWED));

  private ProtocolSheet() {}
}
