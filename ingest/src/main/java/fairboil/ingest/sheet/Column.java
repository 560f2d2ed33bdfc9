package fairboil.ingest.sheet;

import fairboil.ingest.choice.Choice;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Reading;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A column of a sheet, or a setting of {@code study.csv}: its name, what may stand in it, what it
 * means and an example. The one description from which sheets are read, empty sheets are written
 * and forms are printed. Immutable; two columns are equal only if they are the same object.
 *
 * @param <T> what its cells are read as
 */
public final class Column<T> {

  /** Whether a row is any use without the column. */
  public enum Need {
    /** A row without it is set aside. */
    REQUIRED,
    /** It may be left empty. */
    OPTIONAL,
    /** It may be left empty; but a row in which it cannot be read must not be used. */
    LEGIBLE
  }

  private final String name;
  private final String meaning;
  private final String example;
  private final List<Dimension> dimensions;
  private final List<Dimension> headerDimensions;
  private final CellReader<T> reader;
  private final Need need;
  private final Optional<T> fallback;

  private Column(
      String name,
      String meaning,
      String example,
      List<Dimension> dimensions,
      List<Dimension> headerDimensions,
      CellReader<T> reader,
      Need need,
      Optional<T> fallback) {
    this.name = name;
    this.meaning = meaning;
    this.example = example;
    this.dimensions = dimensions;
    this.headerDimensions = headerDimensions;
    this.reader = reader;
    this.need = need;
    this.fallback = fallback;
  }

  private static <T> Column<T> of(
      String name, String meaning, String example, CellReader<T> reader, Dimension... dimensions) {
    List<Dimension> held = List.of(dimensions);
    return new Column<>(
        name, meaning, example, held, held, reader, Need.OPTIONAL, Optional.empty());
  }

  private Column<T> withHeaderOf(List<Dimension> others) {
    return new Column<>(name, meaning, example, dimensions, others, reader, need, fallback);
  }

  static Column<String> text(String name, String meaning, String example) {
    return of(name, meaning, example, Cells.text());
  }

  /** A reason for leaving something out. */
  static Column<String> reason(String name, String meaning, String example) {
    return of(name, meaning, example, Cells.reason());
  }

  static Column<List<String>> texts(String name, String meaning, String example) {
    return of(name, meaning, example, Cells.texts());
  }

  static Column<Integer> whole(String name, String meaning, String example) {
    return of(name, meaning, example, Cells.whole());
  }

  static Column<List<Integer>> wholes(String name, String meaning, String example) {
    return of(name, meaning, example, Cells.wholes());
  }

  static <E extends Enum<E> & Choice> Column<E> choice(
      String name, String meaning, String example, Class<E> choices) {
    return of(name, meaning, example, Cells.choice(choices));
  }

  /** A quantity of one dimension, or of one of several, such as a mass or a volume of water. */
  static Column<Quantity> quantity(
      String name, String meaning, String example, Dimension... dimensions) {
    return of(name, meaning, example, Cells.quantity(List.of(dimensions)), dimensions);
  }

  /** A number whose dimension only its user knows, such as the value of a claim. */
  static Column<Amount> amount(String name, String meaning, String example) {
    return of(name, meaning, example, Cells.amount()).withHeaderOf(List.of(Dimension.values()));
  }

  /** A plain number that other numbers are multiplied with. */
  static Column<Quantity> factor(String name, String meaning, String example) {
    return of(name, meaning, example, Cells.factor(), Dimension.RATIO);
  }

  /** A time on a stopwatch or a clock. */
  static Column<ClockTime> moment(String name, String meaning, String example) {
    return of(name, meaning, example, Cells.moment()).withHeaderOf(List.of(Dimension.DURATION));
  }

  /** A time on a clock. */
  static Column<ClockTime> timeOfDay(String name, String meaning, String example) {
    return of(name, meaning, example, Cells.timeOfDay());
  }

  static Column<LocalDate> date(String name, String meaning, String example) {
    return of(name, meaning, example, Cells.date());
  }

  static Column<PotGiven> pot(String name, String meaning, String example) {
    return of(name, meaning, example, Cells.pot(), Dimension.MASS);
  }

  static Column<Wind> wind(String name, String meaning, String example) {
    return of(name, meaning, example, Cells.wind(), Dimension.SPEED);
  }

  static Column<Selection> selection(String name, String meaning, String example) {
    return of(name, meaning, example, Cells.selection());
  }

  /** This column, required. */
  Column<T> required() {
    return new Column<>(
        name, meaning, example, dimensions, headerDimensions, reader, Need.REQUIRED, fallback);
  }

  /** This column, which may be left empty, but without whose text its row must not be used. */
  Column<T> legible() {
    return new Column<>(
        name, meaning, example, dimensions, headerDimensions, reader, Need.LEGIBLE, fallback);
  }

  /** This column, with the value that holds where the cell is empty. */
  Column<T> orElse(T value) {
    return new Column<>(
        name, meaning, example, dimensions, headerDimensions, reader, need, Optional.of(value));
  }

  /** The name as written in headers, lower case, words parted by a blank. */
  public String name() {
    return name;
  }

  /** What it means, a clause for people. */
  public String meaning() {
    return meaning;
  }

  /** A cell as an example, invented, with its unit. */
  public String example() {
    return example;
  }

  /** What its quantities may be quantities of; empty for columns of other things. */
  public List<Dimension> dimensions() {
    return dimensions;
  }

  /** Whether a row needs it. */
  public Need need() {
    return need;
  }

  /** The value that holds where the cell is empty, if there is one. */
  public Optional<T> fallback() {
    return fallback;
  }

  /** What a unit in its header may be a unit of; empty where none makes sense. */
  List<Dimension> headerDimensions() {
    return headerDimensions;
  }

  Reading<T> read(String text, CellContext context) {
    return reader.read(text, context);
  }

  @Override
  public String toString() {
    return name;
  }
}
