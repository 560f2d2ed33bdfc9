package fairboil.analysis.run;

import fairboil.ingest.finding.Template;

/** What is said of the log of a run and its columns. */
final class LogSays {

  static final Template UNREAD = Template.of("its log could not be read");

  static final Template NO_FLAME = Template.of("the log has no flame column");

  static final Template NO_WATER = Template.of("the log has no water column");

  static final Template MORE_THAN_ONE = Template.of("there is more than one {word} column");

  static final Template OTHER_ROLE =
      Template.of("the first is used; in {sheet}, give the others the role “other”");

  static final Template ZEROS =
      Template.of(
          "{count|reading of exactly 0 amid warm ones was|readings of exactly 0 amid warm ones were}"
              + " set aside as faults");

  static final Template IF_MANY = Template.of("look for a loose plug if there are many");

  static final Template MANY_SPIKES = Template.of("{count} of {count} readings are lone spikes");

  static final Template LOOSE_WIRE =
      Template.of("the probe is unsteady: look for a loose wire before trusting its figures");

  static final Template SPIKES = Template.of("{count|lone spike was|lone spikes were} set aside");

  static final Template NONE_USED = Template.of("none of its {count|reading} can be used");

  static final Template CHECK_UNIT = Template.of("check the probe and the column's unit");

  static final Template TOO_HOT =
      Template.of("{count|reading is|readings are} above the {value} that the probe is rated to");

  static final Template BURNT =
      Template.of(
          "its insulation may have burnt, so its readings may be false: check it in boiling water");

  static final Template FAULTS =
      Template.of("the probe is unsteady: {count} of {count} readings are faults");

  static final Template JUMPS =
      Template.of(
          "the probe is unsteady: {count} of {count} readings jump by more than {value} and back");

  static final Template LOOSE =
      Template.of("look for a loose plug or a broken wire before trusting its figures");

  static final Template NO_STEP =
      Template.of(
          "its lag is to be undone, but no time constant is given and its trace shows no step");

  static final Template GIVE_LAG =
      Template.of(
          "type it in the column time constant of {sheet}, or log the probe as it is put quickly from air"
              + " into hot water");

  static final Template LAG =
      Template.of(
          "its time constant is taken as {value}, from a step of {value} at {value} of its log");

  static final Template IF_NOT_MOVED =
      Template.of(
          "if the probe was not moved quickly there, type its time constant in the column time constant of"
              + " {sheet}");

  private LogSays() {}
}
