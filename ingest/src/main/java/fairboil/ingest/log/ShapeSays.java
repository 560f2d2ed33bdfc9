package fairboil.ingest.log;

import fairboil.ingest.finding.Template;

/** Why a table is refused. */
final class ShapeSays {

  static final Template COMMAS =
      Template.of(
          "the header has {count|name}, the rows {count|cell} without any decimal point, so a comma"
              + " may part cells or decimals");
  static final Template SEMICOLONS =
      Template.of("export the log again with semicolons between the cells, or with decimal points");

  static final Template LISTS =
      Template.of("the rows are lists of labels and values, not a table with a header");
  static final Template ONE_COLUMN_EACH =
      Template.of("export the log with one column for each probe and its name in the first line");

  static final Template TIMES =
      Template.of(
          "the column {cell} holds times, such as {cell}, so the names do not stand over their own"
              + " cells, and the log was not read");

  static final Template WIDTH =
      Template.of(
          "this line has {clause}{clause}, but most rows have {count|cell} (split at {word}); it is"
              + " not clear which name belongs to which cell, so the log was not read");
  static final Template PARTED_OTHERWISE =
      Template.of(
          "the names on this line are not parted as the cells of the rows are (by {word}): which"
              + " name belongs to which cell cannot be told, so the log was not read");

  static final Template NAMES = Template.of("{count|name}");
  static final Template CELLS = Template.of("{count|cell}");
  static final Template NOT_PARTED = Template.of(", which {word} do not part");

  static final Template NAME_EACH =
      Template.of(
          "write one name over each column, or type in {sheet} what each column holds, by its"
              + " number, such as #2");

  static final Template UNITS =
      Template.of(
          "this line has {count|unit}, the header above it {count|name}; it is not clear which unit"
              + " belongs to which name, so the log was not read");
  static final Template UNIT_EACH =
      Template.of("write a unit, or nothing between two separators, under each name");

  private ShapeSays() {}
}
