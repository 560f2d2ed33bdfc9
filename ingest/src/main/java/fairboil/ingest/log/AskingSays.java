package fairboil.ingest.log;

import fairboil.ingest.finding.Template;

/** How is asked what columns hold. */
final class AskingSays {

  static final Template UNIT_UNSAID =
      Template.of("this column does not say its unit; it holds {clause}");
  static final Template UNIT_UNSAID_UNUSED =
      Template.of("this column does not say its unit, so it was not used; it holds {clause}");
  static final Template SAY_UNIT =
      Template.of(
          "type its unit in the column unit of {sheet}, or in the header of the log, as in {name}"
              + " (°C)");

  static final Template NO_TEMPERATURES = Template.of("no column of this log holds temperatures");
  static final Template CHECK_LOG = Template.of("check that this is the log of the run");

  static final Template NONE_SEEMS =
      Template.of("no column of this log seems to hold temperatures: {list}");
  static final Template CHECK_OR_SAY =
      Template.of(
          "check that this is the log of the run; if one of these columns is the flame or the"
              + " water, add a row for it to {sheet}, with its unit and scale");

  static final Template NONE_CALLED = Template.of("no column is called flame or water: {list}");
  static final Template SAY_WHICH =
      Template.of("in {sheet}, type which column is the flame and which is the water, a row each");
  static final Template COLUMN_HOLDS = Template.of("{name} holds {clause}");

  static final Template HOLDS = Template.of("this column holds {clause}");
  static final Template UNUSED = Template.of("this column was not used; it holds {clause}");
  static final Template IF_ROLE = Template.of("if it is the {word}, add a row for it to {sheet}");

  private AskingSays() {}
}
