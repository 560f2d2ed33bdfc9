package fairboil.ingest.log;

import fairboil.ingest.finding.Template;

/** How is told what became of odd lines of a log. */
final class RowsSay {

  static final Template TOO_LONG =
      Template.of("this log has more than 5 million readings, the most that are read");
  static final Template SPLIT = Template.of("split it, or have the logger write less often");

  static final Template TOO_MANY_CELLS =
      Template.of("this row has more than 1,000 cells, the most that are read");
  static final Template LEAVE_OUT = Template.of("leave some out");
  static final Template CELL_TOO_LONG =
      Template.of("a cell of this row is longer than 64 KiB, the most that is read");
  static final Template SHORTEN = Template.of("shorten it");

  static final Template CUT_OFF = Template.of("the last line is cut off and was dropped");

  static final Template UNCLOSED =
      Template.of(
          "a quotation mark is opened on this line and never closed, so the line was set aside");
  static final Template CLOSE = Template.of("close it, or take it away");

  static final Template FOOTER = Template.of("{count|line} after the table taken as text: {cell}");

  static final Template NO_TIME =
      Template.of("the time on this line could not be read, so the line was set aside: {cell}");
  static final Template CORRECT_TIME =
      Template.of("correct it, or put # before it if it is a comment");
  static final Template TIMES_LOST =
      Template.of(
          "the time could not be read on {count} of {count|line}: too many to trust the rest, so the"
              + " log was not read");
  static final Template LOOK_AT_FIRST = Template.of("look at the first of them");

  static final Template DAMAGED =
      Template.of("{count|line was|lines were} dropped for damaged bytes");

  static final Template TOO_MANY =
      Template.of(
          "{count} of {count|line} have too few or too many cells (the first of them here, with"
              + " {count} for {count|column}): too many to trust the rest, so the log was not read");
  static final Template LOOK_FOR_PROBE =
      Template.of(
          "look for a probe that fails to write its cell, or for decimal commas between commas");

  static final Template RAGGED =
      Template.of(
          "this line has {count|cell}, the table {count|column}, so the line was skipped{clause}");
  static final Template IN_ALL = Template.of(" ({count|such line} in all)");
  static final Template LEAVE_SHORT =
      Template.of("do not fill it up: nothing shows which cell is missing");
  static final Template LOOK_FOR_COMMA = Template.of("look for a comma within a number or text");

  private RowsSay() {}
}
