package fairboil.ingest.finding;

import fairboil.ingest.dimension.Dimension;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What a message says, apart from its wording: kept as a value until a person is to read it. */
public sealed interface Argument {

  /** The argument as people read it. */
  String text(Voice voice);

  /** What the change makes of the argument, or of those within it. */
  default Argument map(UnaryOperator<Argument> change) {
    return change.apply(this);
  }

  /** What the user calls a thing; shown as it is. */
  record Name(String text) implements Argument {

    /** Checks that there is a name; it may be empty, as a cell may. */
    public Name {
      Objects.requireNonNull(text, "text");
    }

    @Override
    public String text(Voice voice) {
      return text;
    }
  }

  /** A cell as written; shown in quotation marks, cut where it is long. */
  record Cell(String written) implements Argument {

    /** Checks that it is there; it may be empty. */
    public Cell {
      Objects.requireNonNull(written, "written");
    }

    @Override
    public String text(Voice voice) {
      return Quoted.text(written);
    }
  }

  /** A word of ours: a label, the symbol of a unit, the name of a column. */
  record Word(String text) implements Argument {

    /** Checks that it is there. */
    public Word {
      Objects.requireNonNull(text, "text");
    }

    @Override
    public String text(Voice voice) {
      return text;
    }
  }

  /**
   * A value.
   *
   * @param held in the unit in which the dimension is held
   * @param uncertainty its standard uncertainty, held as a difference; 0 for three significant
   *     digits
   * @param dimension what it is a value of
   */
  record Value(double held, double uncertainty, Dimension dimension) implements Argument {

    /** Checks the dimension. */
    public Value {
      Objects.requireNonNull(dimension, "dimension");
    }

    @Override
    public String text(Voice voice) {
      return voice.value(this);
    }
  }

  /**
   * Two ends, as of an interval or of what a column holds.
   *
   * @param low held in the unit in which the dimension is held
   * @param high likewise
   * @param uncertainty what the ends are rounded to, held as a difference; 0 for three significant
   *     digits
   * @param dimension what they are values of
   */
  record Range(double low, double high, double uncertainty, Dimension dimension)
      implements Argument {

    /** Checks the dimension. */
    public Range {
      Objects.requireNonNull(dimension, "dimension");
    }

    @Override
    public String text(Voice voice) {
      return voice.range(this);
    }
  }

  /**
   * A value as one would type it into a cell, in the units of the study: {@code 5m43s}, {@code 1.50
   * in}.
   *
   * @param held in the unit in which the dimension is held
   * @param resolution how finely it is to be typed, held as a difference; above 0
   * @param dimension what it is a value of
   */
  record Typed(double held, double resolution, Dimension dimension) implements Argument {

    /** Checks that the digits to be typed are known. */
    public Typed {
      Objects.requireNonNull(dimension, "dimension");
      if (!(resolution > 0)) {
        throw new IllegalArgumentException("how finely is it to be typed? " + resolution);
      }
    }

    @Override
    public String text(Voice voice) {
      return voice.typed(this);
    }
  }

  /**
   * A bare number.
   *
   * @param value finite
   * @param decimals how many to show; fewer than 0 for as many as the number has
   */
  record Bare(double value, int decimals) implements Argument {
    @Override
    public String text(Voice voice) {
      return voice.number(this);
    }
  }

  /**
   * How many, or from how many to how many.
   *
   * @param low at least 0
   * @param high at least as many; the same where there is one number
   */
  record Count(long low, long high) implements Argument {
    @Override
    public String text(Voice voice) {
      return low == high ? voice.count(low) : voice.count(low) + " to " + voice.count(high);
    }
  }

  /** A share: 0.12 is shown as 12 %. */
  record Share(double fraction) implements Argument {
    @Override
    public String text(Voice voice) {
      return voice.share(fraction);
    }
  }

  /** A file and where in it. */
  record At(Place place) implements Argument {

    /** Checks that there is a place. */
    public At {
      Objects.requireNonNull(place, "place");
    }

    @Override
    public String text(Voice voice) {
      return place.toString();
    }
  }

  /**
   * A sheet of the study.
   *
   * @param file its file, such as {@code runs.csv}
   * @param workbook the workbook of which it is a tab, where it is one
   */
  record Sheet(String file, Optional<String> workbook) implements Argument {

    @Override
    public String text(Voice voice) {
      return workbook
          .map(book -> "the tab " + file.substring(0, file.indexOf('.')) + " of " + book)
          .orElse(file);
    }
  }

  /** A date, with a time of day where that is known; shown as ISO 8601 has it, with a blank. */
  record Moment(LocalDate date, Optional<LocalDateTime> time) implements Argument {

    private static final DateTimeFormatter WRITTEN =
        DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

    private static String written(LocalDateTime time) {
      return time.truncatedTo(ChronoUnit.SECONDS).format(WRITTEN);
    }

    @Override
    public String text(Voice voice) {
      return time.map(Moment::written).orElseGet(date::toString);
    }
  }

  /** How the items of a list are joined. */
  enum Joining {
    /** {@code a, b and c}. */
    AND(", ", " and "),
    /** {@code a, b or c}. */
    OR(", ", " or "),
    /** {@code a, b, c}. */
    COMMA(", ", ", "),
    /** {@code a; b; c}. */
    SEMICOLON("; ", "; ");

    private final String between;
    private final String beforeLast;

    Joining(String between, String beforeLast) {
      this.between = between;
      this.beforeLast = beforeLast;
    }

    private String join(List<String> items) {
      int last = items.size() - 1;
      return last < 1
          ? String.join("", items)
          : String.join(between, items.subList(0, last)) + beforeLast + items.get(last);
    }
  }

  /**
   * Several arguments in a row.
   *
   * @param items unmodifiable
   * @param joining what stands between them
   */
  record Listed(List<Argument> items, Joining joining) implements Argument {

    /** Copies the items. */
    public Listed {
      items = List.copyOf(items);
    }

    @Override
    public String text(Voice voice) {
      return joining.join(items.stream().map(item -> item.text(voice)).toList());
    }

    @Override
    public Argument map(UnaryOperator<Argument> change) {
      return new Listed(items.stream().map(item -> item.map(change)).toList(), joining);
    }
  }

  /** A message within a message. */
  record Clause(Message message) implements Argument {

    /** Checks that there is a message; it may be empty. */
    public Clause {
      Objects.requireNonNull(message, "message");
    }

    @Override
    public String text(Voice voice) {
      return message.text(voice);
    }

    @Override
    public Argument map(UnaryOperator<Argument> change) {
      return new Clause(message.map(change));
    }
  }

  /** A {@link Name}. */
  static Argument name(String text) {
    return new Name(text);
  }

  /** A {@link Cell}. */
  static Argument cell(String written) {
    return new Cell(written);
  }

  /** A {@link Word}. */
  static Argument word(String text) {
    return new Word(text);
  }

  /** A {@link Value} that is rounded to its uncertainty. */
  static Argument value(double held, double uncertainty, Dimension dimension) {
    return new Value(held, uncertainty, dimension);
  }

  /** A {@link Range} that is rounded to its uncertainty. */
  static Argument range(double low, double high, double uncertainty, Dimension dimension) {
    return new Range(low, high, uncertainty, dimension);
  }

  /** A {@link Typed} value. */
  static Argument typed(double held, double resolution, Dimension dimension) {
    return new Typed(held, resolution, dimension);
  }

  /** A {@link Bare} with so many decimals. */
  static Argument number(double value, int decimals) {
    return new Bare(value, decimals);
  }

  /** A {@link Bare} with as many decimals as it has. */
  static Argument number(double value) {
    return new Bare(value, -1);
  }

  /** A {@link Count}. */
  static Argument count(long count) {
    return new Count(count, count);
  }

  /** A {@link Share}. */
  static Argument share(double fraction) {
    return new Share(fraction);
  }

  /** A place, {@link At}. */
  static Argument place(Place place) {
    return new At(place);
  }

  /** A sheet of the study by its file, such as {@code runs.csv}. */
  static Argument sheet(String file) {
    return new Sheet(file, Optional.empty());
  }

  /** A date without its time of day. */
  static Argument date(LocalDate date) {
    return new Moment(date, Optional.empty());
  }

  /** A date and time of day. */
  static Argument moment(LocalDateTime moment) {
    return new Moment(moment.toLocalDate(), Optional.of(moment));
  }

  /** The items joined as in {@code a, b and c}. */
  static Argument allOf(List<? extends Argument> items) {
    return new Listed(List.copyOf(items), Joining.AND);
  }

  /** The items joined as in {@code a, b or c}. */
  static Argument anyOf(List<? extends Argument> items) {
    return new Listed(List.copyOf(items), Joining.OR);
  }

  /** The items joined as in {@code a, b, c}. */
  static Argument list(List<? extends Argument> items) {
    return new Listed(List.copyOf(items), Joining.COMMA);
  }

  /** Names joined as in {@code a, b and c}. */
  static Argument names(List<String> names) {
    return allOf(names.stream().map(Name::new).toList());
  }

  /** Words of ours joined as in {@code a, b or c}. */
  static Argument words(List<String> words) {
    return anyOf(words.stream().map(Word::new).toList());
  }

  /** A message within a message; {@link Message#NONE} says nothing. */
  static Argument clause(Message message) {
    return new Clause(message);
  }
}
