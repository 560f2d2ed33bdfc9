package fairboil.ingest;

import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;

/** What is said of rings and holes that do not fit. */
final class RingSays {

  static final Message NO_HOLES =
      Template.of("a ring needs at least one hole, so the row was set aside").with();
  static final Message FILL_HOLES = Template.of("fill in how many holes it has").with();
  static final Template DESCRIBED_BEFORE =
      Template.of("ring {name} was described before, so this row was set aside");
  static final Message KEEP_ONE_RING =
      Template.of("keep one of the rows, or say in each which design or build it is for").with();
  static final Template PLACES_DIFFER =
      Template.of("{count|division} without those skipped leave {count|place} for {count|hole}");
  static final Message EQUAL_HOLES =
      Template.of(
              "correct divisions, skipped or holes: the divisions that are not skipped are the"
                  + " holes")
          .with();
  static final Template NO_BUILD =
      Template.of("no build is called {name}, so this ring belongs to nothing");
  static final Template NO_DESIGN =
      Template.of("no design is called {name}, so this ring belongs to nothing");
  static final Template CHECK_SPELLING = Template.of("check how it is spelt in {sheet}");
  static final Template OF_OTHERS =
      Template.of("{sheet} has it for another design or build: add a row for this one");
  static final Template ADD_RING = Template.of("add a row for it to {sheet}");

  static final Template NO_RINGS =
      Template.of("no ring is described, so the holes cannot be compared with what was intended");
  static final Template DESCRIBE_RINGS =
      Template.of("describe each ring in {sheet}: how many holes it has, and the wrap of the can");
  static final Template NO_RING =
      Template.of("there is no ring {name} of build {name}{clause}, so these holes were set aside");
  static final Template NOT_ON_RING =
      Template.of(
          "there is no hole {number}: ring {name} has holes 1 to {number}, so this row was set"
              + " aside");
  static final Template FROM_ONE =
      Template.of(
          "there is no hole {number}: holes are numbered from 1, so this row was set aside");
  static final Template NUMBER_HOLES =
      Template.of(
          "number the holes in order round the ring, or correct the row of the ring in {sheet}");
  static final Template SAME_HOLE =
      Template.of("this hole stands on line {number} already, so this row was set aside");
  static final Message READING_TWO = Template.of("number a second measurement as reading 2").with();

  private RingSays() {}
}
