package fairboil.analysis.layout;

import fairboil.ingest.finding.Template;

/** What is said of the rings of builds. */
final class LayoutSays {

  static final Template HOLES = Template.of("the holes of build {name}");

  static final Template RING = Template.of("ring {name} of build {name}");

  static final Template BASE = Template.of("the holes in the base of build {name}");

  static final Template NO_RING =
      Template.of("build {name} has no ring {name} in {sheet}, so its holes are left out");

  static final Template ADD_RING =
      Template.of("give the ring a row there, or correct its name here");

  static final Template NOT_JUDGED =
      Template.of(
          "the holes measured in ring {name} are not judged, because its row could not be read");

  static final Template CORRECT_CELL =
      Template.of("correct this cell: holes are never judged by a ring that was only guessed");

  static final Template RING_TWICE =
      Template.of("ring {name} is already in {place}, so this row is left out");

  static final Template OWN_NAME =
      Template.of(
          "give each ring its own name, or name its build or design in the column of that name");

  static final Template HOLE_MISSING =
      Template.of(
          "hole {number} of ring {name} of build {name} was not measured, or was left out, so the"
              + " ring is judged by the others");

  static final Template HOLES_MISSING =
      Template.of(
          "holes {list} of ring {name} of build {name} were not measured, or were left out, so the"
              + " ring is judged by the others");

  static final Template ADD_HOLE = Template.of("add it, or correct its row");

  static final Template ADD_HOLES = Template.of("add them, or correct their rows");

  private LayoutSays() {}
}
