package fairboil.ingest.log;

import fairboil.ingest.finding.Template;

/** How is told what was made of a log's table. */
final class ParserSays {

  static final Template BY_NUMBER =
      Template.of(
          "these names do not fit the cells of the rows, so they were not used: the columns go by"
              + " the numbers given in {sheet}");
  static final Template NAMES_IN_COMMENT =
      Template.of("the names of the columns were taken from this comment");
  static final Template NAMES_PARTED_OTHERWISE =
      Template.of(
          "the names on this line are not parted by {word} as the rows are; there is one for each"
              + " column, so they were used");

  static final Template UNNAMED =
      Template.of(
          "the header names no column after {word}, but the rows have {count|cell}: the cells"
              + " without a name were not used");
  static final Template NAME_BY_NUMBER =
      Template.of("to use such a column, add a row for it to {sheet} by its number, as {word}");

  static final Template DATE_UNUSED =
      Template.of(
          "the lines above the readings hold a date, which was not used: times are elapsed times");

  static final Template NOTHING_READ =
      Template.of("no line of this log could be read as a time with readings");
  static final Template LOOK_AT_FIRST =
      Template.of("look at the first line under the header: it shows how the others are read");

  private ParserSays() {}
}
