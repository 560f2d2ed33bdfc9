package fairboil.analysis.run;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.PotsSheet;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.SensorsSheet;
import fairboil.ingest.sheet.Settings;
import fairboil.ingest.sheet.StopwatchSheet;

/** What more than one class of this package says, and the sheets that they name. */
final class RunSays {

  static final Argument RUNS = Argument.sheet(RunsSheet.SCHEMA.file());
  static final Argument STOPWATCH = Argument.sheet(StopwatchSheet.SCHEMA.file());
  static final Argument STUDY = Argument.sheet(Settings.SCHEMA.file());
  static final Argument SENSORS = Argument.sheet(SensorsSheet.SCHEMA.file());
  static final Argument POTS = Argument.sheet(PotsSheet.SCHEMA.file());

  static final Template CHECK_NUMBER = Template.of("check the number and its unit");
  static final Template BELOW_ZERO = Template.of("a mass cannot be below zero: {cell}");
  static final Template AND = Template.of("{clause}, and {clause}");
  static final Template NO_LOG = Template.of("the run has no log");
  static final Template IN_DOUBT = Template.of("the time marked for {word} is in doubt");
  static final Template NO_LIGHTING = Template.of("lighting was neither marked nor seen");
  static final Template NO_BOIL_TIME = Template.of("when the water boiled is not known");
  static final Template BOIL_TOO_EARLY = Template.of("the boil is marked before {word}");
  static final Template REFERENCE_TOO_WARM =
      Template.of("the reference start is at or above the reference boiling point");

  private RunSays() {}
}
