package fairboil.ingest.sheet;

import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.Given;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * One row of a sheet, read: each cell by its {@link Column}, those that could not be read too, and
 * the columns that the program does not know by their header. Immutable.
 */
public final class Row {

  private final Place place;
  private final Map<Column<?>, Given<?>> cells;
  private final Map<Column<?>, Unread> unread;
  private final Map<String, Given<String>> extras;

  private Row(Builder made) {
    this.place = made.place;
    this.cells = new LinkedHashMap<>(made.cells);
    this.unread = made.unread.isEmpty() ? Map.of() : new LinkedHashMap<>(made.unread);
    this.extras =
        made.extras.isEmpty()
            ? Map.of()
            : Collections.unmodifiableMap(new LinkedHashMap<>(made.extras));
  }

  /** Starts a row that stands at the given line of a sheet. */
  public static Builder at(Place place) {
    return new Builder(place);
  }

  /** The line of the sheet. */
  public Place place() {
    return place;
  }

  /** The cell of a column in this row, filled in or not. */
  public Place place(Column<?> column) {
    Given<?> given = cells.get(column);
    return given != null ? given.place() : place.column(column.name());
  }

  /** The cell of a column, or empty if nothing was filled in that could be read. */
  public <T> Optional<Given<T>> cell(Column<T> column) {
    @SuppressWarnings("unchecked") // Builder.put pairs a column with a cell of its own type
    Given<T> given = (Given<T>) cells.get(column);
    return Optional.ofNullable(given);
  }

  /** The cell of a column if it was filled in and could not be read. */
  public Optional<Unread> unread(Column<?> column) {
    return Optional.ofNullable(unread.get(column));
  }

  /**
   * The cells that could not be read and without which the row must not be used as though they were
   * empty, in the order of the sheet; none in a row that may be used.
   */
  public List<Unread> illegible() {
    return unread.entrySet().stream()
        .filter(cell -> cell.getKey().need() != Column.Need.OPTIONAL)
        .map(Map.Entry::getValue)
        .toList();
  }

  /**
   * The value in a column, else the column's fallback if it has one. A cell without which the row
   * must not be used has no fallback where it could not be read.
   */
  public <T> Optional<T> value(Column<T> column) {
    boolean lost = unread.containsKey(column) && column.need() != Column.Need.OPTIONAL;
    return lost ? Optional.empty() : cell(column).map(Given::value).or(column::fallback);
  }

  /**
   * The value in a column that always has one: a required column, or one with a fallback.
   *
   * @throws NoSuchElementException if there is no value
   */
  public <T> T get(Column<T> column) {
    return value(column)
        .orElseThrow(() -> new NoSuchElementException("no " + column.name() + " at " + place));
  }

  /**
   * The cells of columns that the program does not know, by header as written; unmodifiable. They
   * can be named in {@code compare by} and {@code covariates}.
   */
  public Map<String, Given<String>> extras() {
    return extras;
  }

  /** The same row, its cells told from outside the folder that holds the sheet. */
  public Row in(String folder) {
    Builder moved = new Builder(place.in(folder));
    cells.forEach((column, given) -> moved.cells.put(column, given.in(folder)));
    unread.forEach((column, cell) -> moved.unread.put(column, cell.in(folder)));
    extras.forEach((header, given) -> moved.extras.put(header, given.in(folder)));
    return moved.build();
  }

  /** Starts a row with the cells of this one, at its place. */
  public Builder copy() {
    Builder copy = new Builder(place);
    copy.cells.putAll(cells);
    copy.unread.putAll(unread);
    copy.extras.putAll(extras);
    return copy;
  }

  @Override
  public String toString() {
    return "Row[" + place + ", " + cells.values() + ", " + extras + "]";
  }

  /** Collects the cells of a row. */
  public static final class Builder {

    private final Place place;
    private final Map<Column<?>, Given<?>> cells = new LinkedHashMap<>();
    private final Map<Column<?>, Unread> unread = new LinkedHashMap<>();
    private final Map<String, Given<String>> extras = new LinkedHashMap<>();

    private Builder(Place place) {
      this.place = place;
    }

    /** Fills in a cell. */
    public <T> Builder put(Column<T> column, Given<T> given) {
      cells.put(column, given);
      return this;
    }

    /** Fills in a cell with a value that stands in the column of that name. */
    public <T> Builder put(Column<T> column, T value) {
      return put(column, Given.of(value, value.toString(), place.column(column.name())));
    }

    /** Tells that the cell of a column could not be read. */
    public Builder unread(Column<?> column, Unread cell) {
      unread.put(column, cell);
      return this;
    }

    /** Fills in the cell of a column as it stands in another row; leaves it if that is empty. */
    public <T> Builder putFrom(Row other, Column<T> column) {
      other.cell(column).ifPresent(given -> cells.put(column, given));
      other.unread(column).ifPresent(cell -> unread.put(column, cell));
      return this;
    }

    /** Fills in a cell of a column that the program does not know. */
    public Builder extra(String header, Given<String> given) {
      extras.put(header, given);
      return this;
    }

    /** The finished row. */
    public Row build() {
      return new Row(this);
    }
  }
}
