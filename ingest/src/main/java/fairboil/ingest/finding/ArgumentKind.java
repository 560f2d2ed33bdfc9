package fairboil.ingest.finding;

import java.util.Locale;

/** The kinds of argument that a template may have places for. */
public enum ArgumentKind {
  /** What the user calls a thing: a run, a build, a column, a file. Shown as it is. */
  NAME(Argument.Name.class),
  /** A cell as written, shown in quotation marks. */
  CELL(Argument.Cell.class),
  /** A word of ours: a label, the symbol of a unit, the name of a sheet's column. */
  WORD(Argument.Word.class),
  /** A value with its dimension, shown in the units of the study. */
  VALUE(Argument.Value.class),
  /** Two ends with their dimension, shown in the units of the study. */
  RANGE(Argument.Range.class),
  /** A value as one would type it into a cell. */
  TYPED(Argument.Typed.class),
  /** A bare number. */
  NUMBER(Argument.Bare.class),
  /** How many; may carry its noun. */
  COUNT(Argument.Count.class),
  /** A share, shown in per cent. */
  SHARE(Argument.Share.class),
  /** A file and where in it. */
  PLACE(Argument.At.class),
  /** A sheet of the study: a file, or a tab of its workbook. */
  SHEET(Argument.Sheet.class),
  /** A date, with a time of day where that is known. */
  DATE(Argument.Moment.class),
  /** Several arguments in a row. */
  LIST(Argument.Listed.class),
  /** A message within the message; may be empty. */
  CLAUSE(Argument.Clause.class);

  private final Class<? extends Argument> type;

  ArgumentKind(Class<? extends Argument> type) {
    this.type = type;
  }

  /** Whether the argument may stand in a place of this kind. */
  boolean fits(Argument argument) {
    return type.isInstance(argument);
  }

  /**
   * The kind that a template names.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  static ArgumentKind named(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }
}
