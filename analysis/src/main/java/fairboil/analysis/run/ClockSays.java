package fairboil.analysis.run;

import fairboil.ingest.finding.Template;

/** What is said of how the clocks of stopwatch and log fit together. */
final class ClockSays {

  static final Template BEGAN_TOGETHER =
      Template.of(
          "no event appears in both the stopwatch and the log, so they are assumed to have started"
              + " together");

  static final Template SAME_TIME =
      Template.of(
          "no event appears in both the marks and the log, so their clocks are assumed to have shown the"
              + " same time");

  static final Template TIME_THREE =
      Template.of("to check it, also time “lit”, “pot on” and “flame out”");

  static final Template ONE_EVENT =
      Template.of(
          "only {cell} appears in both the stopwatch and the log, so how their clocks fit together"
              + " cannot be checked{clause}");

  static final Template MOVED_LATER = Template.of(", and the marks were moved {value} later");

  static final Template MOVED_EARLIER = Template.of(", and the marks were moved {value} earlier");

  static final Template FAR_BY_ONE =
      Template.of(
          "run {name}: {clause} ({clause}); only {cell} shows it, so marks and log are not used"
              + " together");

  static final Template FAR =
      Template.of(
          "run {name}: {clause} ({clause}); {list} show it, to within {value}, and the marks were moved"
              + " by as much");

  static final Template IF_FAR =
      Template.of(
          "check that log and marks are of this run; if they are, type in the column log from of {sheet}"
              + " where in the log this run was lit, or keep both by the time of day and type that of"
              + " lighting in the column lit at");

  static final Template OFF = Template.of("{clause}: {list} show it, to within {value}{clause}");

  static final Template BUT_NOT_BY =
      Template.of("by {list} the stopwatch and the log fit together, but not by {list}");

  static final Template CHECK_MARKS = Template.of("check these marks");

  static final Template CHECK_BOTH =
      Template.of("check these marks, and that {clause} is the log of this run");

  static final Template DO_NOT_FIT =
      Template.of(
          "in run {name} the clocks of the stopwatch and the log do not fit together: {list}{clause}");

  static final Template BOTH_UNUSED = Template.of(", so no figure uses both");

  static final Template LATER = Template.of("{cell} ({value} later in the log)");

  static final Template EARLIER = Template.of("{cell} ({value} earlier in the log)");

  static final Template STARTED_AFTER =
      Template.of("the stopwatch was started {value} after its log begins");

  static final Template STARTED_BEFORE =
      Template.of("the stopwatch was started {value} before its log begins");

  static final Template BEHIND =
      Template.of("the clock of the stopwatch marks is {value} behind that of the log");

  static final Template AHEAD =
      Template.of("the clock of the stopwatch marks is {value} ahead of that of the log");

  static final Template FILE = Template.of("{name}");

  static final Template ITS_LOG = Template.of("its log");

  private ClockSays() {}
}
