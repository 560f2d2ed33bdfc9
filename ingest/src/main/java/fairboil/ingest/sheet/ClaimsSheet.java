package fairboil.ingest.sheet;

import fairboil.ingest.choice.HoldsFor;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.quantity.Amount;
import java.time.LocalDate;
import java.util.List;

/** The columns of {@code claims.csv}. */
public final class ClaimsSheet {

  /** Short name of the claim. */
  public static final Column<String> CLAIM =
      Column.text("claim", "short name of the claim", "C1").required();

  /** Sentence to be tested. */
  public static final Column<String> TEXT =
      Column.text(
              "text",
              "sentence to be tested",
              "The two-wall stove boils 1 kg of water in 9 minutes.")
          .required();

  /** Measure that it is about. */
  public static final Column<String> MEASURE =
      Column.text("measure", "measure that it is about", "normalised boil time").required();

  /** Build, design or runs that it is about. */
  public static final Column<Selection> ABOUT =
      Column.selection("about", "build, design or runs that it is about", "two-wall").legible();

  /** Build, design or runs that it is compared with (blank: a fixed value). */
  public static final Column<Selection> AGAINST =
      Column.selection(
              "against",
              "build, design or runs that it is compared with (blank: a fixed value)",
              "one-wall")
          .legible();

  /** Runs that it is about. */
  public static final Column<Selection> WHERE =
      Column.selection("where", "runs that it is about", "fuel=pellets; lid=on").legible();

  /** What it says. */
  public static final Column<Relation> RELATION =
      Column.choice("relation", "what it says", "at most", Relation.class).required();

  /** Value that it names. */
  public static final Column<Amount> VALUE =
      Column.amount("value", "value that it names", "9 min").legible();

  /** Difference that does not matter. */
  public static final Column<Amount> MARGIN =
      Column.amount("margin", "difference that does not matter", "20 s").legible();

  /** The mean of burns, or 19 burns in 20. */
  public static final Column<HoldsFor> HOLDS_FOR =
      Column.choice(
              "holds for", "the mean of burns, or 19 burns in 20", "on average", HoldsFor.class)
          .orElse(HoldsFor.ON_AVERAGE)
          .legible();

  /** Day on which it was written down. */
  public static final Column<LocalDate> WRITTEN_ON =
      Column.date("written on", "day on which it was written down", "2026-02-01");

  /** The sheet. */
  public static final SheetSchema SCHEMA =
      new SheetSchema(
          "claims.csv",
          "a sentence to be tested",
          List.of(
              CLAIM,
              TEXT,
              MEASURE,
              ABOUT,
              AGAINST,
              WHERE,
              RELATION,
              VALUE,
              MARGIN,
              HOLDS_FOR,
              WRITTEN_ON));

  private ClaimsSheet() {}
}
