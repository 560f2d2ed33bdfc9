package fairboil.analysis.run;

import fairboil.ingest.finding.Template;

/** What is said of the air of a run. */
final class AirSays {

  static final Template NOT_TAKEN = Template.of("the air temperature was not measured");

  static final Template NO_READINGS =
      Template.of("the air column has no readings while the fire burnt");

  static final Template NOT_POSSIBLE = Template.of("an air temperature of {cell} is not possible");

  static final Template TEMPERATURE_GIVEN =
      Template.of("the air temperature given is not possible");

  static final Template NO_PRESSURE =
      Template.of("neither an air pressure nor the altitude is given");

  static final Template NO_ALTITUDE = Template.of("an altitude of {cell} is not possible here");

  static final Template ALTITUDE_GIVEN = Template.of("the altitude given is not possible");

  static final Template STATION = Template.of("a station pressure of {cell} is not possible");

  static final Template SEA_LEVEL = Template.of("a sea-level pressure of {cell} is not possible");

  static final Template PRESSURE_GIVEN = Template.of("the air pressure given is not possible");

  static final Template DOES_NOT_FIT =
      Template.of(
          "a station pressure of {cell} does not fit an altitude of {cell}, where about {value} is"
              + " usual");

  static final Template MOVE =
      Template.of(
          "if it was reduced to sea level, as weather reports give it, type it in the column {word} of"
              + " {sheet} instead");

  static final Template NO_BOILING_POINT =
      Template.of("the boiling point is not known, as {clause}");

  private AirSays() {}
}
