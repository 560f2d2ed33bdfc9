package fairboil.analysis.run;

import fairboil.ingest.finding.Template;

/** What is said of the fuel of a run. */
final class FuelSays {

  static final Template NOT_WEIGHED = Template.of("the fuel was not weighed");

  static final Template NO_LOADED = Template.of("how much fuel was put in is not given");

  static final Template NO_ADDED = Template.of("how much fuel was added is not given");

  static final Template NO_LEFT = Template.of("what was left of the fuel was not weighed");

  static final Template NO_CHAR = Template.of("the char was not weighed");

  static final Template MORE_LEFT =
      Template.of("more was left of the fuel than was put in: {value} of {value}");

  static final Template CHECK_WEIGHINGS = Template.of("check the weighings and their units");

  static final Template MORE_THAN_PUT_IN = Template.of("more was left of the fuel than was put in");

  static final Template NONE_BURNT = Template.of("no fuel was burnt");

  static final Template CHECK = Template.of("check the number");

  static final Template MASS_GIVEN = Template.of("a mass of fuel given is not possible");

  static final Template TWO_MOISTURES =
      Template.of(
          "the moistures do not fit together: this makes {share} of the moist fuel, and {share} is"
              + " given");

  static final Template KEEP_ONE =
      Template.of("keep the one that was measured, and leave the other empty");

  static final Template MOISTURES_GIVEN = Template.of("the moistures given do not fit together");

  static final Template NO_MOISTURE = Template.of("the moisture of the fuel is not given");

  static final Template TOO_WET = Template.of("fuel with a moisture of {cell} does not burn");

  static final Template CHECK_BASIS =
      Template.of("check the number, and whether it is a share of the moist or of the dry fuel");

  static final Template MOISTURE_GIVEN = Template.of("the moisture given is not possible");

  static final Template NO_SUCH_HEAT = Template.of("no dry fuel has a heating value of {cell}");

  static final Template CHECK_HEAT =
      Template.of("check the number and its unit: dry wood has about {value}");

  static final Template HEAT_GIVEN = Template.of("the heating value given is not possible");

  static final Template NO_FUEL = Template.of("what was burnt is not given");

  static final Template UNKNOWN_FUEL = Template.of("the heating value of {cell} is not known here");

  static final Template TYPE_HEAT =
      Template.of(
          "type the lower heating value of the dry fuel in the column heating value of {sheet}");

  static final Template NO_HEAT = Template.of("the heating value of the fuel is not known");

  static final Template NO_WEIGHED_AT =
      Template.of("when the rest of the fuel was weighed is not given");

  static final Template WEIGHED_AT_BOIL =
      Template.of("the fuel was weighed at the boil, and the water did not boil");

  static final Template POT_OFF =
      Template.of("the pot came off before the fuel was burnt out and weighed");

  static final Template CHAR_TOO_HOT =
      Template.of("the char left holds more heat than the fuel burnt");

  static final Template CHECK_CHAR =
      Template.of("check the weighings of fuel and char, without their container");

  static final Template TOO_EFFICIENT =
      Template.of(
          "an efficiency of {share} is not possible: the water took more heat than this fuel gave");

  static final Template CHECK_MASSES =
      Template.of("check the masses of fuel, char and water, before and after, and their units");

  static final Template NOT_EFFICIENT = Template.of("the efficiency would not be possible");

  private FuelSays() {}
}
