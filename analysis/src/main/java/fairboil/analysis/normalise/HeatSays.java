package fairboil.analysis.normalise;

import fairboil.ingest.finding.Template;

/** What is said of the heat balance of a study. */
final class HeatSays {

  static final Template NO_BALANCE = Template.of("there is no heat balance, as {clause}");

  static final Template FAILED = Template.of("this program failed at it");

  static final Template NO_HEATING = Template.of("there is no log of the heating of run {name}");

  static final Template POOR_LOSS = Template.of("how fast its pot loses heat is known too roughly");

  static final Template OF_RUN = Template.of("run {name}, {clause}");

  static final Template ONE_LACKS = Template.of("there is no heat balance for {clause}{clause}");

  static final Template SOME_LACK =
      Template.of("there is no heat balance for {count|run}, the first of them {clause}{clause}");

  static final Template NOT_FOR_AIR =
      Template.of(
          "; so all boil times are corrected for water and boiling point, but not for air temperature");

  static final Template TYPE_ALTITUDE =
      Template.of("type the altitude in {sheet}, or an air pressure in {sheet}");

  static final Template LOG_COOLING =
      Template.of(
          "log the pot for 25 minutes as it cools beside the fire, lid as it was, once for each pot, lid"
              + " and wind; or type how fast the pot loses heat in the column loss coefficient of {sheet}");

  static final Template TYPE_IT =
      Template.of("type it in {sheet}, or in {sheet} if it is about the pot");

  private HeatSays() {}
}
