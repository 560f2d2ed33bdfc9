package fairboil.reports.words;

import fairboil.analysis.figure.Influence;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.TimedEvent.SeenBy;
import fairboil.analysis.trace.SampleFate;
import fairboil.ingest.log.RowFate;

/** What people call the things that enums stand for. */
public final class Labels {

  private Labels() {}

  /** What a line of an uncertainty budget is about. */
  public static String of(Influence influence) {
    return switch (influence) {
      case NOISE -> "scatter of the readings";
      case RESOLUTION -> "smallest step of the instrument";
      case SENSOR_TOLERANCE -> "tolerance of the probe";
      case PLACEMENT -> "place of the probe";
      case COLD_JUNCTION -> "cold junction";
      case LAG -> "lag of the probe";
      case LAG_NOISE -> "scatter that undoing the lag adds";
      case SCALE -> "scale";
      case STOPWATCH -> "stopwatch";
      case SAMPLING -> "time between readings";
      case CLOCK_JOINING -> "joining of the clocks";
      case FIT -> "line fitted to the trace";
      case PEAK_BIAS -> "noise that lifts a peak";
      case PRESSURE -> "air pressure";
      case ALTITUDE -> "altitude";
      case AMBIENT -> "air temperature";
      case WATER_MASS -> "mass of the water";
      case WATER_START -> "temperature of the water at the start";
      case POT -> "heat capacity of the pot";
      case BOILING_POINT -> "boiling point";
      case BOIL_TIME -> "boil time";
      case HEAT_LOSS -> "heat lost to the air";
      case LOSS_IN_FIRE -> "heat lost in the fire, as against beside it";
      case FIRE_GROWTH -> "growth of the fire";
      case HEATING_VALUE -> "heating value of the fuel";
      case MOISTURE -> "water in the fuel";
    };
  }

  /** Why lines of a log were set aside. */
  public static String of(RowFate fate) {
    return switch (fate) {
      case BLANK -> "blank";
      case COMMENT -> "comment";
      case PREAMBLE -> "before the table";
      case HEADER -> "header";
      case FOOTER -> "after the table";
      case RAGGED -> "wrong number of cells";
      case NO_TIME -> "no readable time";
      case REPEATED -> "repeated";
      case JOINED -> "joined to the line before";
      case CUT_OFF -> "cut off";
      case DAMAGED -> "damaged";
      case OUTSIDE_RUN -> "outside the run";
    };
  }

  /** Why readings were set aside. */
  public static String of(SampleFate fate) {
    return switch (fate) {
      case FAULT -> "fault";
      case SPIKE -> "spike";
      case GAP -> "gap";
    };
  }

  /** Who or what saw an event. */
  public static String of(SeenBy seenBy) {
    return switch (seenBy) {
      case STOPWATCH -> "stopwatch";
      case TRACE -> "log";
    };
  }

  /** More of a measure, as against less of it: {@code longer}, {@code higher}. */
  static String more(Measure measure) {
    return switch (measure) {
      case BOIL_TIME, NORMALISED_BOIL_TIME, LIT_TO_BOIL, BURN_TIME -> "longer";
      default -> "higher";
    };
  }

  /** Less of a measure, as against more of it: {@code shorter}, {@code lower}. */
  static String less(Measure measure) {
    return switch (measure) {
      case BOIL_TIME, NORMALISED_BOIL_TIME, LIT_TO_BOIL, BURN_TIME -> "shorter";
      default -> "lower";
    };
  }
}
