package fairboil.analysis.run;

import fairboil.ingest.finding.Template;

/** What is said of the water of a run. */
final class WaterSays {

  static final Template NO_WATER = Template.of("how much water was put on is not given");

  static final Template NO_POT =
      Template.of("pot and water were weighed together, and the pot's mass is not given");

  static final Template WOULD_MAKE = Template.of("{cell} would make {value} of water");

  static final Template CHECK =
      Template.of("check the number and its unit, and the mass of the pot");

  static final Template MASS_GIVEN = Template.of("the mass of water given is not possible");

  static final Template COARSE =
      Template.of("{cell} is written so roughly that the water could be off by {share}");

  static final Template TYPE_FINER =
      Template.of(
          "if you measured it more finely, type it as measured, such as 1000 g or 1.000 kg");

  static final Template NONE_LEFT = Template.of("no water was left");

  static final Template LEFT_NOT_WEIGHED = Template.of("the water left was not weighed");

  static final Template LEFT_GIVEN = Template.of("the mass of water left is not possible");

  static final Template CHECK_NUMBER = Template.of("check the number");

  static final Template MORE_LEFT =
      Template.of("more was left than was put on: {value} of {value}");

  static final Template CHECK_BOTH = Template.of("check both weighings and their units");

  static final Template START_GIVEN =
      Template.of("the temperature of the water at the start is not possible");

  static final Template ICE = Template.of("water cannot start at {cell}: it would be ice");

  static final Template BOILED = Template.of("water cannot start at {cell}: it would have boiled");

  static final Template NO_START =
      Template.of("the temperature of the water at the start is not given");

  static final Template NO_START_IN_LOG =
      Template.of("the temperature of the water at the start is not given, nor in the log");

  static final Template TOO_HOT =
      Template.of("water of {value} while it boils at {value} is not possible");

  static final Template CHECK_PROBE =
      Template.of(
          "check the probe, its unit, and the altitude or air pressure; if the probe was taken out of the"
              + " water, also time “pot off”");

  static final Template ABOVE_BOILING = Template.of("the water column is above the boiling point");

  static final Template LEFT_UNKNOWN = Template.of("how much water was left is not known");

  private WaterSays() {}
}
