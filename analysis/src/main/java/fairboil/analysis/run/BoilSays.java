package fairboil.analysis.run;

import fairboil.ingest.finding.Template;

/** What is said of the boil of a run, and of whether it boiled. */
final class BoilSays {

  static final Template NOT_MARKED = Template.of("nobody marked the boil");

  static final Template LOG_TOO_EARLY =
      Template.of("the log shows the boil before the fire was lit");

  static final Template MARKED_LATER =
      Template.of("the boil was marked {value} later than the log shows it");

  static final Template MARKED_EARLIER =
      Template.of("the boil was marked {value} earlier than the log shows it");

  static final Template CHECK_START =
      Template.of(
          "check that the stopwatch was started together with the log, and at what sight you call it"
              + " boiling");

  static final Template ENDED = Template.of("the run {word}");

  static final Template NO_FLAME_OUT =
      Template.of("the flame going out was neither marked nor seen");

  static final Template SHEET_SAYS = Template.of("{sheet} says {cell}");

  static final Template STOPPED = Template.of("the run was stopped");

  static final Template STOPPED_UNSEEN = Template.of("the run was stopped; {clause}");

  static final Template FIRE_ENDED = Template.of("the fire ended with the water at {value}");

  static final Template LEVELLED = Template.of("the water levelled off at {value}");

  static final Template NO_BOIL_IN_LOG = Template.of("the log shows no boil");

  static final Template UNREAD_MARK = Template.of("no boil mark could be read");

  static final Template UNSEEN = Template.of("whether the water boiled was not seen: {clause}");

  static final Template TYPE_OUTCOME =
      Template.of(
          "if you know it, type “boiled” or “did not boil” in the column outcome of {sheet}; until then"
              + " this run counts neither as boiled nor as failed");

  static final Template NOTHING_SEEN =
      Template.of("nothing was seen of this run: it has no log and no mark that could be read");

  static final Template GIVE_LOG =
      Template.of(
          "save its log in the folder logs as {name}.csv, or type the name of the log's file in the"
              + " column log of {sheet}, or its marks in {sheet}");

  static final Template SAID_BOILED =
      Template.of("{sheet} says that the run boiled, but {clause}, and {clause}");

  static final Template NO_MARK = Template.of("no boil was marked");

  static final Template MARK_IT =
      Template.of("type the time of the boil in {sheet}, or change the outcome");

  static final Template SAID_OTHERWISE = Template.of("{sheet} says {cell}, but {clause}");

  static final Template WAS_MARKED = Template.of("the boil was marked");

  static final Template LOG_SHOWS_IT = Template.of("the log shows the water boiling");

  static final Template TYPE_BOILED =
      Template.of("if it boiled before it ended, type “boiled” in the column outcome");

  private BoilSays() {}
}
