package fairboil.ingest.sheet;

import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;

/** What is said of cells that cannot be read, or not without a remark. */
final class CellSays {

  static final Message REASON_MISSING = Template.of("the reason is missing: write it here").with();
  static final Template LISTS_TOO_MUCH = Template.of("this lists more than {count|thing}");
  static final Message LIST_LESS = Template.of("list those that matter").with();
  static final Template NOT_WHOLE = Template.of("{cell} is not a whole number");
  static final Message TYPE_WHOLE = Template.of("type a number such as 4").with();
  static final Message LIST_WHOLE =
      Template.of("list the numbers one by one, such as 4; 12").with();
  static final Template NOT_PLAIN = Template.of("{cell} is not a plain number");
  static final Message TYPE_FACTOR =
      Template.of("type a factor without a unit, such as 0.1").with();
  static final Template NO_CONDITION =
      Template.of("{cell} does not say which column must hold what");
  static final Message WRITE_CONDITION =
      Template.of("write it as lid=on, and put a semicolon between several: fuel=pellets; lid=on")
          .with();

  static final Template NO_ANSWER = Template.of("{cell} is not one of the answers here");
  static final Template TYPE_ANSWER = Template.of("type {list}");

  static final Template BEAUFORT = Template.of("{cell} was read as Beaufort B{number}");
  static final Template CALM_OR_UNKNOWN = Template.of("{cell} could mean no wind or not observed");
  static final Message CALM_OR_EMPTY =
      Template.of("type B0 if it was calm, or leave the cell empty").with();
  static final Template BEYOND_BEAUFORT = Template.of("{cell} is beyond the Beaufort scale");
  static final Message BEAUFORT_OR_SPEED = Template.of("type B0 to B4, or a speed").with();
  static final Message SPEED =
      Template.of("type a speed with its unit, such as 2 m/s or 5 mph, or B0 to B4").with();

  private CellSays() {}
}
