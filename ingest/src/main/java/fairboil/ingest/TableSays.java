package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;

/** What is said of names that sheets repeat or do not have. */
final class TableSays {

  static final Template SAME_BUILD =
      Template.of("there is a build {cell} on line {number} already, so this row was set aside");
  static final Message NAME_BUILDS = Template.of("give each build its own name").with();
  static final Template SAME_RUN =
      Template.of("there is a run {cell} on line {number} already, so this row was set aside");
  static final Message NAME_RUNS = Template.of("give each run of a build its own name").with();
  static final Template SAME_POT =
      Template.of("there is a pot {cell} on line {number} already, so this row was set aside");
  static final Message NAME_POTS = Template.of("give each pot its own name").with();
  static final Template SAME_CLAIM =
      Template.of("there is a claim {cell} on line {number} already, so this row was set aside");
  static final Message NAME_CLAIMS = Template.of("give each claim its own name").with();

  static final Template UNLISTED_BUILD =
      Template.of("build {name} is not in {sheet}{clause}, so it was read as one more build");
  static final Template ADD_BUILD = Template.of("add it to {sheet}");

  static final Template UNKNOWN_POT =
      Template.of("{cell} is neither a pot of {sheet} nor a mass with its unit{clause}");
  static final Template ADD_POT =
      Template.of("add a row for it to {sheet}, or type its empty mass such as 240 g");

  static final Template WHICH_RUN = Template.of("it is not clear which run {name} is meant");
  static final Template NO_RUN = Template.of("there is no run {name}");
  static final Template NO_RUN_OF_BUILD = Template.of("there is no run {name} of build {name}");
  static final Template ADD_BUILD_COLUMN =
      Template.of("builds {list} each have a run of that name: add a column build");
  static final Template IS_OF_BUILD = Template.of("that run is of build {list}");
  static final Template ADD_RUN =
      Template.of("check how it is spelt, or add a row for it to {sheet}");

  static final Template NO_RUN_READ =
      Template.of("there is no run that could be read, so the marks were set aside");
  static final Template CORRECT_SHEET = Template.of("correct {sheet} first");
  static final Template RUN = Template.of("{name}");
  static final Template RUN_OF_BUILD = Template.of("{name} of build {name}");
  static final Template RUN_ASIDE =
      Template.of("the row of run {clause} was set aside, and its marks with it{clause}");
  static final Template CORRECT_ROW = Template.of("correct that row: {place}");
  static final Template MARKS_ASIDE =
      Template.of("{clause}{clause}, so these marks were set aside");
  static final Template UNKNOWN_EVENT =
      Template.of("I don't know the event {cell}{clause}; it is kept as it is");

  static final Template NO_RUNS = Template.of("there are no burns in {sheet} yet");
  static final Message FILL_RUNS =
      Template.of("fill in one row for each burn, with at least the names of run and build").with();

  static final Template NO_COLUMN = Template.of("{sheet} has no column {name}");
  static final Template NO_SUCH_COLUMN =
      Template.of("{word}: neither {sheet} nor {sheet} has a column {name}");
  static final Message CHECK_HEADER = Template.of("check how the column is headed").with();
  static final Template NO_HOLE_RING = Template.of("hole ring: there is no ring {name}");
  static final Template NO_UNIT_OF_LOGS = Template.of("{cell} is not a unit that logs are read in");
  static final Message UNITS_OF_LOGS =
      Template.of("type °C, °F, K, V, mV or µV, or for times s, ms, µs, min, h, h:mm or m:ss")
          .with();

  static final Template IN_FAHRENHEIT =
      Template.of("temperatures are given in °F, and results are shown in metric units");
  static final Template SHOW_US =
      Template.of("to read results in °F, type US for the setting show units in {sheet}");

  private TableSays() {}

  /** The number of a line. */
  static Argument line(Place place) {
    return Argument.number(place.line().orElse(0), 0);
  }
}
