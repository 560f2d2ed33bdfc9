package fairboil.ingest.finding;

import java.util.Comparator;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * Where in a study something stands: a file, and within it a line and a column where they are
 * known.
 *
 * <p>The file is named relative to the study folder with forward slashes. In a workbook the file is
 * {@code study.xlsx!runs} (workbook and tab), the line is the row and the column is its letter. In
 * a CSV file the line is the physical line, counted from 1, and the column is the header as
 * written.
 *
 * @param file the file's name; never blank
 * @param line the line, from 1, or empty where the whole file is meant
 * @param column the column's header or letter, or empty where the whole line is meant
 */
public record Place(String file, OptionalInt line, Optional<String> column)
    implements Comparable<Place> {

  private static final Comparator<Place> ORDER =
      Comparator.comparing(Place::file)
          .thenComparingInt(place -> place.line().orElse(0))
          .thenComparing(place -> place.column().orElse(""));

  private static final Pattern LETTERS = Pattern.compile("[A-Z]{1,3}");

  /** Checks that there is a file and that lines count from 1. */
  public Place {
    Objects.requireNonNull(line, "line");
    Objects.requireNonNull(column, "column");
    if (file.isBlank()) {
      throw new IllegalArgumentException("a place needs a file name");
    }
    if (line.isPresent() && line.getAsInt() < 1) {
      throw new IllegalArgumentException("lines count from 1, not " + line.getAsInt());
    }
  }

  /** The whole file. */
  public static Place of(String file) {
    return new Place(file, OptionalInt.empty(), Optional.empty());
  }

  /** A whole line of a file. */
  public static Place of(String file, int line) {
    return new Place(file, OptionalInt.of(line), Optional.empty());
  }

  /** One cell: a line of a file and a column. */
  public static Place of(String file, int line, String column) {
    return new Place(file, OptionalInt.of(line), Optional.of(column));
  }

  /** This line (or file), at the given column. */
  public Place column(String name) {
    return new Place(file, line, Optional.of(name));
  }

  /** The same place, its file named from outside the folder that holds it. */
  public Place in(String folder) {
    return new Place(folder + "/" + file, line, column);
  }

  /** Sorts by file, then line, then column. */
  @Override
  public int compareTo(Place other) {
    return ORDER.compare(this, other);
  }

  /**
   * {@code runs.csv, line 7, column water}: as a person would say it; in a workbook {@code
   * study.xlsx!runs, cell C7}.
   */
  @Override
  public String toString() {
    if (isTab() && line.isPresent() && column.filter(LETTERS.asMatchPredicate()).isPresent()) {
      return file + ", cell " + column.get() + line.getAsInt();
    }
    StringBuilder text = new StringBuilder(file);
    line.ifPresent(number -> text.append(isTab() ? ", row " : ", line ").append(number));
    column.ifPresent(name -> text.append(", column ").append(name));
    return text.toString();
  }

  private boolean isTab() {
    return file.toLowerCase(Locale.ROOT).contains(".xlsx!");
  }
}
