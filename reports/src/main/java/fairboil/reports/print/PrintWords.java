package fairboil.reports.print;

import java.util.List;

/** What is said on every printed scale. */
final class PrintWords {

  static final String ASIDE = "print at 100 %";

  static final String BAR =
      "Print at 100 % (“actual size”, never “fit to page”) and check with a steel rule. If a bar"
          + " is not right, print again; if it cannot be cured, do not mark holes with this sheet,"
          + " and type the bar as measured beside each hole read with it, under bar in holes.csv.";

  static final List<String> PRINTER =
      List.of(
          "Print at 100 %, also called “actual size” or “no scaling”. “Fit to page” and “shrink"
              + " to printable area” spoil the scale.",
          "Lay a steel rule along the bar marked 100 mm and read it to 0.1 mm or so. Printed paper"
              + " is often 0.2 % short or long, and dries and swells: 99.8 to 100.2 mm is as good"
              + " as it gets.",
          "If the bar is longer or shorter than that, look through the printer’s settings and"
              + " print again. Do not mark holes with a sheet whose bar is wrong.",
          "A sheet with a wrong bar may still be read from: type the bar as measured under bar in"
              + " holes.csv, beside each hole read with the sheet, and along, gap, height, x, y and"
              + " radius are corrected by it: true length = length read × bar ÷ 100 mm. With a bar of"
              + " 98.5 mm, a reading of 150.0 counts as 147.8 mm. Read diameters with callipers or a"
              + " drill: they are taken as typed.");

  static final String FACTOR =
      "If the check bar of the strip or disc does not measure 100 mm, type its length as measured"
          + " under bar in holes.csv beside each hole read with it: places are then corrected. Leave"
          + " bar empty if it is right, or where places were read with a steel rule. Diameters are"
          + " read with callipers or a drill.";

  static final String BOTH_WAYS =
      "Measure the upright bar too: a printer may stretch the paper in one direction only.";

  static final String NO_RIM =
      "Type the wrap of the base into its row of rings.csv to have the disc drawn to the rim, which"
          + " makes it easy to centre.";

  static final List<String> LAYING =
      List.of(
          "Cut out the pieces along the thin lines, tabs included. Glue each tab under the next"
              + " piece so that its edge meets the dashed line and both long edges run straight.",
          "Wrap the strip round the can, numbers outwards. The beginning must meet the last dashed"
              + " line. If it does not, either the bar is wrong or the wrap in rings.csv is:"
              + " measure the can again with a strip of the same paper, type that, and print again."
              + " Places follow from the measured wrap; a diameter will not do, because cans are not"
              + " round and paper lies outside them.");

  static final List<String> CROSSES =
      List.of(
          "Lay the edge that says so along the rim, fix the strip with tape, and prick each cross"
              + " through the paper with a scriber or a nail. Broken lines are divisions that stay"
              + " without a hole.");

  static final List<String> TICKS =
      List.of(
          "Draw the line of the holes round the can first, at the height told above. Lay the edge"
              + " that says so along it, fix the strip with tape, and mark the line at each"
              + " division. Broken lines are divisions that stay without a hole.");

  static final List<String> READING_WALL =
      List.of(
          "Wrap a strip round the can so that the millimetre edge runs along the middle of the"
              + " holes and its 0 lies at hole 1. For inches, cut the strip along the line that the"
              + " inches stand on.",
          "Read the left and the right edge of each hole; halfway between them is along. A middle"
              + " that lies before 0 is typed with a minus sign. Type the readings into holes.csv"
              + " with their unit, and the height of each middle from the rim.",
          "Take the strip off, lay it on anew and read once more (reading 2): the difference shows"
              + " how well the holes can be read. If gaps are measured instead, measure the last"
              + " one too, back to hole 1: what their sum lacks to the wrap is the reading error.");

  static final String DISC_IN_PIECES =
      "Cut out the pieces, tabs included. Glue each tab under the next piece so that the edge of"
          + " that piece meets the dashed line. The tabs carry the drawing on: a hole on a join is"
          + " whole on the piece with the tab, and its two halves must meet.";

  static final List<String> DISC =
      List.of(
          "Cut the disc out along its rim, or if none is drawn, leave room round the outer circle."
              + " Turn the can upside down and lay the disc on its base, print upwards: it shows the"
              + " base as seen from outside.",
          "Bring the centre cross over the middle of the base: the fine circles must lie evenly"
              + " within the rim all round. Fix it with tape and prick each cross through the"
              + " paper. Broken lines are divisions that stay without a hole.",
          "Angles count from the arrow marked 0°, against the clock. Put a mark on the wall where"
              + " the arrow points, to find the same place again.");

  static final List<String> READING_BASE =
      List.of(
          "After drilling, lay a fresh disc of the same print on the base, rub a soft pencil over"
              + " the holes, and take it off: each hole shows as a ring. Read the middle of each:"
              + " radius on the fine circles (5 mm apart) and angle on the edge; or x to the right"
              + " and y upwards with a rule from the centre cross.",
          "Do it again with another disc (reading 2): the difference shows how well the holes can"
              + " be read.");

  private PrintWords() {}
}
