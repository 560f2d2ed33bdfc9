package fairboil.ingest.quantity;

import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;

/** What is said of numbers, dates and times that cannot be read, or not without a remark. */
final class ReadingSays {

  static final Template TOO_LONG = Template.of("{cell} is too long to be a value");
  static final Message INTO_NOTES = Template.of("put words into a column of notes").with();

  static final Template NO_NUMBER = Template.of("{cell} is not a number");
  static final Message ONE_MARK =
      Template.of("write it with one decimal mark, such as 20.5").with();
  static final Template BY_ZERO = Template.of("{cell} divides by zero");
  static final Message NUMBER_MEANT = Template.of("type the number that you mean").with();
  static final Template TOO_LARGE = Template.of("{cell} is too large");
  static final Message CHECK_NUMBER = Template.of("check the number").with();
  static final Template EITHER_NUMBER = Template.of("{cell} could be {name} or {name}");
  static final Template TYPE_EITHER = Template.of("type {name} or {name}");

  static final Template NO_QUANTITY = Template.of("{cell} is not a number with a unit");
  static final Message NUMBER_AND_UNIT =
      Template.of("type a number and its unit, and put words into a column of notes").with();
  static final Template RANGE = Template.of("{cell} is a range, not a value");
  static final Message ONE_VALUE =
      Template.of("type the one value that you measured, or leave the cell empty").with();
  static final Template NO_UNIT_AFTER = Template.of("{cell} has no unit after {name}");
  static final Message UNIT_EACH = Template.of("write a unit after each number").with();
  static final Template WRONG_ORDER =
      Template.of("{cell} does not go from larger units to smaller ones");
  static final Template TYPE_ONE = Template.of("type one value, such as {clause}");
  static final Template ABOUT = Template.of("taken as {name}, though it says about");
  static final Template BOUND = Template.of("taken as {name}, though it is only a bound");
  static final Message BRACKETS = Template.of("the words in brackets were left out").with();

  static final Template MADE_A_DATE =
      Template.of("{cell} is a date, which spreadsheets make of entries such as 5-6 or 1/2");
  static final Message TYPE_AS_TEXT =
      Template.of("format the cell as text and type the value again, with its unit").with();
  static final Template BELOW_ZERO = Template.of("{cell} is below zero");
  static final Template BELOW_ABSOLUTE_ZERO = Template.of("{cell} is below absolute zero");
  static final Message CHECK_VALUE = Template.of("check the value").with();
  static final Template NO_UNIT = Template.of("{cell} has no unit");
  static final Template US_MEASURE = Template.of("read as US {word}, not imperial");

  static final Template NO_DATE = Template.of("{cell} is not a date");
  static final Message AS_DATE = Template.of("type year, month and day, such as 2026-03-14").with();
  static final Template EITHER_DATE = Template.of("{cell} could be {date} or {date}");
  static final Template TYPE_EITHER_DATE = Template.of("type {date} or {date}");

  static final Template PART_OF_A_DAY =
      Template.of("{cell} looks like a time that a spreadsheet shows as a part of a day");
  static final Message COLUMN_AS_TEXT =
      Template.of("format the column as text and type the time again, such as 5:43").with();
  static final Template BEFORE_START = Template.of("{cell} is before the stopwatch was started");
  static final Message SINCE_START =
      Template.of("type the time since the start, or leave the cell empty").with();
  static final Message ZONE =
      Template.of("the time zone was left out: only differences are used").with();
  static final Template NO_TIME_OF_DAY = Template.of("{cell} is not a time of day");
  static final Message AS_TIME_OF_DAY = Template.of("type it as 14:05 or 2:05 pm").with();

  static final Template START_OR_NEVER =
      Template.of("{cell} could mean at the start or not at all");
  static final Message ZERO_OR_EMPTY =
      Template.of(
              "type 0:00 if it happened at the start, or leave the cell empty if it did not happen")
          .with();
  static final Template NO_TIME = Template.of("{cell} is not a time");
  static final Message AS_TIME =
      Template.of("type minutes and seconds as 5:43, or hours, minutes and seconds as 0:05:43")
          .with();
  static final Template THOUSANDTHS_OR_SECONDS =
      Template.of("{cell} could end in thousandths of a second or in seconds");
  static final Template AS_THOUSANDTHS =
      Template.of("type {name}:{name}.{name} if it ends in thousandths");
  static final Message THOUSANDTHS =
      Template.of("the last part was read as thousandths of a second").with();
  static final Template SIXTY_OR_MORE =
      Template.of("{cell} has 60 or more in a place that goes up to 59");
  static final Message CHECK_TIME = Template.of("check the time").with();

  private ReadingSays() {}
}
