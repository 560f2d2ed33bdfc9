package fairboil.reports.table;

import fairboil.analysis.figure.Figure;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Function;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.LongColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.columns.Column;

/**
 * One column of a result table: its name, its unit, what it means and how to get it.
 *
 * @param <R> what a row is made from
 */
public final class TableColumn<R> {

  /** What a column holds. */
  public enum Type {
    /** Words. */
    TEXT,
    /** Numbers with decimals. */
    NUMBER,
    /** Whole numbers. */
    COUNT
  }

  private final String name;
  private final TableUnit unit;
  private final String meaning;
  private final Type type;
  private final Function<Iterable<R>, Column<?>> values;

  private TableColumn(
      String name,
      TableUnit unit,
      String meaning,
      Type type,
      Function<Iterable<R>, Column<?>> values) {
    this.name = Objects.requireNonNull(name, "name");
    this.unit = unit;
    this.meaning = Objects.requireNonNull(meaning, "meaning");
    this.type = type;
    this.values = values;
  }

  /** A column of words; an empty one where nothing is known. */
  static <R> TableColumn<R> text(String name, String meaning, Function<R, String> get) {
    return new TableColumn<>(
        name,
        TableUnit.NONE,
        meaning,
        Type.TEXT,
        rows -> {
          StringColumn column = StringColumn.create(name);
          rows.forEach(row -> column.append(get.apply(row)));
          return column;
        });
  }

  /** A column of whole numbers. */
  static <R> TableColumn<R> count(String name, String meaning, Function<R, OptionalLong> get) {
    return new TableColumn<>(
        name,
        TableUnit.NONE,
        meaning,
        Type.COUNT,
        rows -> {
          LongColumn column = LongColumn.create(name);
          rows.forEach(row -> appendCount(column, get.apply(row)));
          return column;
        });
  }

  private static void appendCount(LongColumn column, OptionalLong count) {
    if (count.isPresent()) {
      column.append(count.getAsLong());
    } else {
      column.appendMissing();
    }
  }

  /** A column of held values, each written in the unit; what is not finite is left empty. */
  static <R> TableColumn<R> number(
      String name, TableUnit unit, String meaning, Function<R, OptionalDouble> get) {
    return new TableColumn<>(
        name,
        unit,
        meaning,
        Type.NUMBER,
        rows -> {
          DoubleColumn column = DoubleColumn.create(name);
          rows.forEach(row -> appendNumber(column, unit, get.apply(row)));
          return column;
        });
  }

  private static void appendNumber(DoubleColumn column, TableUnit unit, OptionalDouble held) {
    if (held.isPresent() && Double.isFinite(held.getAsDouble())) {
      column.append(unit.of(held.getAsDouble()));
    } else {
      column.appendMissing();
    }
  }

  /** A column of figures; the unit is part of the name. */
  static <R> TableColumn<R> figure(
      String base, TableUnit unit, String meaning, Function<R, Figure> get) {
    return number(unit.name(base), unit, meaning, row -> value(get.apply(row)));
  }

  /** A column of the standard uncertainties of figures. */
  static <R> TableColumn<R> uncertainty(
      String base, TableUnit unit, String meaning, Function<R, Figure> get) {
    return number(unit.name(base + "_u"), unit, meaning, row -> uncertainty(get.apply(row)));
  }

  /** A column of the parts of those uncertainties that are independent from run to run. */
  static <R> TableColumn<R> independentUncertainty(
      String base, TableUnit unit, String meaning, Function<R, Figure> get) {
    return number(
        unit.name(base + "_u_independent"), unit, meaning, row -> independent(get.apply(row)));
  }

  private static OptionalDouble value(Figure figure) {
    return figure.isKnown() ? OptionalDouble.of(figure.orNaN()) : OptionalDouble.empty();
  }

  private static OptionalDouble uncertainty(Figure figure) {
    return figure
        .ifKnown()
        .map(measured -> OptionalDouble.of(measured.standardUncertainty()))
        .orElse(OptionalDouble.empty());
  }

  private static OptionalDouble independent(Figure figure) {
    return figure.budget().lines().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(figure.budget().independent());
  }

  /** The name in the header: lower case, words parted by underscores, the unit last. */
  public String name() {
    return name;
  }

  /** The symbol of its unit; empty for words, counts and shares. */
  public String unit() {
    return unit.symbol();
  }

  /** What it means, a clause for people. */
  public String meaning() {
    return meaning;
  }

  /** What it holds. */
  public Type type() {
    return type;
  }

  Column<?> of(Iterable<R> rows) {
    return values.apply(rows);
  }
}
