package fairboil.analysis.layout;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Template;

/** What is said of the holes measured on a wall. */
final class WallSays {

  /** Lengths are told to 0.1 mm. */
  private static final double TENTH = 0.2e-3;

  static final Template NO_HEIGHTS = Template.of("ring {name} of build {name} has no heights");

  static final Template MEASURE_HEIGHTS =
      Template.of(
          "measure each hole's height from the rim that {sheet} names as datum, and type it in the"
              + " column height; until then position errors are those along the wrap alone");

  static final Template NO_INTENDED_HEIGHT =
      Template.of("ring {name} has no intended height, so heights are judged by their own mean");

  static final Template TYPE_INTENDED_HEIGHT =
      Template.of("if it was to be at some height, type that in the column height");

  static final Template HOLE_WITHOUT_HEIGHT =
      Template.of("hole {number} of ring {name} has no height, so it is left out");

  static final Template TYPE_HEIGHT = Template.of("type its height in the column height");

  static final Template OFF_IN_HEIGHT =
      Template.of("hole {number} of ring {name} is {value} off in height, so it is left out");

  static final Template CORRECT_HEIGHT =
      Template.of("correct its height or the unit of it, or the datum of the ring in {sheet}");

  static final Template OFF_ALONG =
      Template.of(
          "hole {number} of ring {name} of build {name} is {value} from its place along the wrap,"
              + " more than half the way to the next hole");

  static final Template LOOK_AGAIN =
      Template.of("look at the hole and its cell again; it counts as typed");

  static final Template NO_WRAP =
      Template.of("ring {name} has no wrap, so places along it cannot be judged");

  static final Template MEASURE_WRAP =
      Template.of(
          "put a strip of paper once round the can and type its length in the column wrap, such as"
              + " {typed} (a diameter will not do: cans are not round)");

  static final Template OFF_THE_WRAP =
      Template.of(
          "hole {number} of ring {name} is at {value} on a wrap of {value}, so it is left out");

  static final Template CORRECT_PLACE = Template.of("correct the cell or its unit");

  static final Template NO_PLACE =
      Template.of("hole {number} of ring {name} has no place along the wrap, so it is left out");

  static final Template TYPE_PLACE =
      Template.of(
          "in the column along, type where it is on the strip; or in the column gap, for each hole"
              + " of the ring, how far it is to the next");

  static final Template GAPS_LONGER =
      Template.of("the gaps of ring {name} of build {name} add up to {value} more than the wrap");

  static final Template GAPS_SHORTER =
      Template.of("the gaps of ring {name} of build {name} add up to {value} less than the wrap");

  static final Template SPREAD =
      Template.of("you need do nothing: the difference was spread over the gaps");

  static final Template MEASURE_GAPS =
      Template.of("measure gaps and wrap again; the difference was spread over the gaps");

  private WallSays() {}

  /** A length to the tenth of a millimetre. */
  static Argument length(double metres) {
    return Argument.value(metres, TENTH, Dimension.LENGTH);
  }

  /** The number of a hole. */
  static Argument number(int hole) {
    return Argument.number(hole, 0);
  }
}
