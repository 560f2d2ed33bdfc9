package fairboil.ingest.log;

import fairboil.ingest.finding.Template;

/** How is asked what a log leaves unsaid of its time. */
final class TimeSays {

  static final Template SIDE_BY_SIDE =
      Template.of("several runs stand side by side, with times in the columns {list}");
  static final Template NUMBER_AND_NAME = Template.of("{word} ({name})");
  static final Template SAY_COLUMNS =
      Template.of(
          "in {sheet}, type which columns are those of this run: a row with the role time, one with"
              + " flame and one with water, each with the name of the run in the column log");

  static final Template UNIT_UNSAID =
      Template.of("the unit of the time is not said; it goes from {clause}{clause}{clause}");
  static final Template LOOKS_LIKE = Template.of(", which looks like {word}");
  static final Template SAY_UNIT =
      Template.of(
          "type s, min or ms in brackets in the header, or as the unit of this column in {sheet}");

  static final Template NO_HEADER =
      Template.of(
          "the table has no header, so it does not say which column is time and which is"
              + " temperature{clause}");
  static final Template NO_TIME = Template.of("no column of this log tells the time{clause}");
  static final Template RISES = Template.of("; column {word} rises from {clause}{clause}");
  static final Template COUNTS =
      Template.of("; column {word} counts from {clause} and starts again{clause}");
  static final Template ADD_TIME =
      Template.of("add a column with the time of each reading, such as time (s)");
  static final Template GIVE_ROLES =
      Template.of(
          "if that column is the time, type so with its unit in {sheet}, and what the other columns"
              + " hold");

  private TimeSays() {}
}
