package fairboil.reports.print;

import fairboil.ingest.finding.Template;

/** What is said of rings that cannot be drawn, or not as their rows have them. */
final class PrintSays {

  static final Template NO_RINGS =
      Template.of("no ring of holes is described, so there is no strip to print");

  static final Template ADD_RINGS =
      Template.of("give each ring a row there to have strips and discs printed");

  static final Template TOO_MANY_DIVISIONS =
      Template.of(
          "ring {name} has {count|division}, more than can be drawn, so nothing is printed for it");

  static final Template AT_MOST = Template.of("type at most {count}");

  static final Template HOLES_DISAGREE =
      Template.of(
          "ring {name} has {count|hole}, but {count|division} less {count} skipped do not leave that"
              + " many, so nothing is printed for it");

  static final Template MAKE_AGREE =
      Template.of("correct the columns holes, divisions and skipped so that they agree");

  static final Template NO_CIRCLE =
      Template.of(
          "ring {name} on the base has no circle that can be drawn, so it is left out of the disc");

  static final Template TYPE_RADIUS =
      Template.of(
          "type the radius in the column circle, such as {typed}, or 0 for a hole in the centre");

  static final Template BEYOND_RIM =
      Template.of("the holes of ring {name} reach beyond the rim that its wrap makes");

  static final Template CORRECT_CIRCLE =
      Template.of("correct circle, diameter or wrap; the disc is drawn as the sheet has it");

  static final Template NO_DATUM =
      Template.of("ring {name} has a height but no datum, so it was drawn from the top rim");

  static final Template TYPE_DATUM =
      Template.of(
          "in the column datum, type top rim or bottom rim; until then the strip says that it is"
              + " assumed");

  static final Template NO_WRAP =
      Template.of("ring {name} has no wrap, so its strip cannot be drawn");

  static final Template MEASURE_WRAP =
      Template.of(
          "put a strip of paper once round the can and type its length in the column wrap, such as"
              + " {typed} (a diameter will not do: cans are not round)");

  static final Template ODD_WRAP =
      Template.of("ring {name} has {count|division} on a wrap of {value}, which cannot be drawn");

  static final Template CORRECT_WRAP =
      Template.of(
          "correct the wrap or its unit, or the divisions: a wrap is at most {value}, and divisions"
              + " are at least {value} apart");

  static final Template NOT_DRAWN =
      Template.of("ring {name} is not drawn, because this cell could not be read");

  static final Template PRINT_AGAIN =
      Template.of("correct it and print again; until then its paper says so");

  private PrintSays() {}
}
