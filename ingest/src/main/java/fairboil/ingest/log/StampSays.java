package fairboil.ingest.log;

import fairboil.ingest.finding.Template;

/** How is told or asked what written moments mean. */
final class StampSays {

  static final Template COLON =
      Template.of("a colon stands before the decimals of the seconds: read as a point");

  static final Template ORDER_UNKNOWN =
      Template.of("in {cell} day or month may come first, and the two give different times");
  static final Template SAY_ORDER =
      Template.of("type yes or no in the column day first of {sheet}");

  static final Template ORDER_UNNEEDED =
      Template.of(
          "in {cell} day or month may come first; all dates are the same, so the date was not used");
  static final Template FOR_THE_DATE =
      Template.of("to use the date, type yes or no in the column day first of {sheet}");

  static final Template ORDER_FOUND =
      Template.of(
          "the dates were read with the {word} first: otherwise the log would break off for weeks");

  static final Template UNSET =
      Template.of(
          "the logger's clock looks unset (it shows the year {number}), so date and time of day"
              + " were not used");

  static final Template UTC =
      Template.of("the times are in UTC, so they do not show the local time of day");
  static final Template JOIN_BY_ELAPSED =
      Template.of("if the run has stopwatch times, type them as elapsed times");

  static final Template HOURS_OR_MINUTES =
      Template.of("{cell} may be hours and minutes or minutes and seconds");
  static final Template SAY_WHICH =
      Template.of("type h:mm or m:ss as the unit of this column in {sheet}");

  static final Template MILLISECONDS =
      Template.of("the last part of {cell} may be milliseconds or something else");
  static final Template SAY_MILLISECONDS =
      Template.of("if it is milliseconds, type m:ss:mmm as the unit of this column in {sheet}");
  static final Template READ_AS_MILLISECONDS =
      Template.of("times such as {cell} were read as m:ss:mmm");

  static final Template MIDNIGHT =
      Template.of("{cell} may be elapsed time or just after midnight; it was read as elapsed time");
  static final Template SAY_CLOCK =
      Template.of(
          "if it is just after midnight, type time of day as the unit of this column in {sheet}");

  private StampSays() {}
}
