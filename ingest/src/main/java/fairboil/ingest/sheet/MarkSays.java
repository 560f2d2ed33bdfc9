package fairboil.ingest.sheet;

import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;

/** What is said of marks on a stopwatch. */
final class MarkSays {

  static final Message NO_RUNS =
      Template.of("there is no column run, so the marks were set aside").with();
  static final Message ADD_RUNS =
      Template.of("add a column headed run with the name of each run").with();
  static final Message NO_EVENT =
      Template.of("this column is no event and holds no times, so it was left out").with();
  static final Message EVENTS =
      Template.of("events are lit, gas lit, pot on, boil, pot off, flame out, glow out and so on")
          .with();
  static final Message NO_RUN = Template.of("this row has no run, so it was set aside").with();
  static final Message FILL_RUN = Template.of("fill in the name of the run").with();

  static final Message LAPS_COMPARED =
      Template.of("these laps were only compared with the times").with();
  static final Message ONLY_LAPS =
      Template.of(
              "this column holds laps, which count from mark to mark, but marks are read as the"
                  + " time since the stopwatch was started")
          .with();
  static final Message ADD_UP_COLUMN = Template.of("add them up into a column headed time").with();
  static final Template LAPS_DIFFER =
      Template.of("the laps add up to {typed} here, but the time beside them is {typed}");
  static final Message WHICH_IS_RIGHT =
      Template.of("see which of the two is right; the times were used").with();
  static final Template MARK_AT = Template.of("{word} {typed}");

  static final Template LATE_LIGHTING =
      Template.of("{cell} was read as minutes and seconds on a stopwatch, late for lighting");
  static final Template AS_TIME_OF_DAY =
      Template.of("if it is a time of day, type it as {name}:00, and so for every mark of the run");
  static final Template LAPS_ASIDE =
      Template.of(
          "{name} at {name} is earlier than {name} at {name}, so the marks of this run were set"
              + " aside");
  static final Template CORRECT_OR_ADD_UP =
      Template.of(
          "correct the mark that is wrong, or, if these are laps, type the time since the"
              + " stopwatch was started: {list}");
  static final Template MARK_ASIDE =
      Template.of("{name} at {name} is earlier than {name} at {name}, so the mark was set aside");
  static final Message ADD_UP =
      Template.of(
              "if these are laps, add them up: each mark is the time since the stopwatch was"
                  + " started")
          .with();
  static final Template MARKED_TWICE =
      Template.of("{word} was marked before in this run, at {cell}");
  static final Message OF_ANOTHER_RUN =
      Template.of("see whether this mark belongs to another run, or take one of the two out")
          .with();

  static final Template DAY_LEFT_OUT =
      Template.of(
          "{cell} was read as {name}, but a spreadsheet that leaves days out shows {name} the same"
              + " way, and no mark of this run has seconds");
  static final Template TYPE_EITHER = Template.of("type {name} or {name}, whichever it was");
  static final Template HOUR_AWAY =
      Template.of("{cell} is more than an hour from {name} at {cell}, so the mark was set aside");
  static final Template HOURS_AWAY =
      Template.of("{cell} is more than 3 hours from {name} at {cell}, so the mark was set aside");
  static final Template HALF_OR_TURNED =
      Template.of(
          "{cell} could be a time of day, or minutes and seconds that a spreadsheet turned into"
              + " one, so the mark was set aside");
  static final Template HOURS_OR_TURNED =
      Template.of(
          "{cell} could be hours and minutes, or minutes and seconds that a spreadsheet turned"
              + " into them, so the mark was set aside");
  static final Template TYPE_TIME =
      Template.of("type {list}, or the time of day with its date, such as 2026-03-14 14:05:00");
  static final Template FOR_MINUTES = Template.of("{name} for minutes and seconds");
  static final Template FOR_NEXT_DAY = Template.of("{name} if a day was left out");
  static final Template FOR_HOURS = Template.of("{name} for hours and minutes");
  static final Template FOR_HOURS_AND_SECONDS =
      Template.of("{name} and the seconds for hours and minutes");
  static final Message SINCE_START = Template.of("the time since the stopwatch was started").with();
  static final Template TURNED_INTO_DATE =
      Template.of(
          "{cell} is a time that a spreadsheet turned into a date, so the mark was set aside");
  static final Message TYPE_MINUTES_OR_DATED =
      Template.of(
              "type minutes and seconds, such as 24m30s, or the time of day with its date, such as"
                  + " 2026-03-14 14:05:00")
          .with();

  private MarkSays() {}
}
