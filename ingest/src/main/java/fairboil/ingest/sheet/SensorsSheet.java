package fairboil.ingest.sheet;

import fairboil.ingest.choice.Role;
import fairboil.ingest.choice.YesNo;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.quantity.Quantity;
import java.util.List;

/** The columns of {@code sensors.csv}: answers to what a log leaves unsaid. */
public final class SensorsSheet {

  /** Header of the column, or # and its number. */
  public static final Column<String> COLUMN =
      Column.text("column", "header of the column, or # and its number", "T1").required();

  /** What the column holds. */
  public static final Column<Role> ROLE =
      Column.choice("role", "what the column holds", "flame", Role.class).required();

  /** Log file, or a pattern with *, that it is about (blank: all). */
  public static final Column<String> LOG =
      Column.text(
          "log", "log file, or a pattern with *, that it is about (blank: all)", "logs/K*.csv");

  /** A name for the probe: the same name is the same probe. */
  public static final Column<String> SENSOR =
      Column.text(
          "sensor", "a name for the probe: the same name is the same probe", "flame K no. 2");

  /** Thermocouple type, or PT100. */
  public static final Column<String> TYPE = Column.text("type", "thermocouple type, or PT100", "K");

  /** Tolerance class. */
  public static final Column<String> CLASS = Column.text("class", "tolerance class", "class 2");

  /** Unit of the column. */
  public static final Column<String> UNIT = Column.text("unit", "unit of the column", "°F");

  /** Factor that its numbers are to be multiplied with. */
  public static final Column<Quantity> SCALE =
      Column.factor("scale", "factor that its numbers are to be multiplied with", "0.1");

  /** Smallest step of the logger. */
  public static final Column<Quantity> RESOLUTION =
      Column.quantity(
          "resolution", "smallest step of the logger", "0.25 °C", Dimension.TEMPERATURE_DIFFERENCE);

  /** To be added to its readings, from a calibration. */
  public static final Column<Quantity> CORRECTION =
      Column.quantity(
          "correction",
          "to be added to its readings, from a calibration",
          "-0.4 °C",
          Dimension.TEMPERATURE_DIFFERENCE);

  /** Column with the cold junction temperature. */
  public static final Column<String> COLD_JUNCTION =
      Column.text("cold junction", "column with the cold junction temperature", "Tint");

  /** Time to follow a step to 63 %. */
  public static final Column<Quantity> TIME_CONSTANT =
      Column.quantity("time constant", "time to follow a step to 63 %", "4 s", Dimension.DURATION);

  /** Whether its lag is to be undone in the peak of a flame. */
  public static final Column<YesNo> UNDO_LAG =
      Column.choice(
          "undo lag",
          "whether its lag is to be undone: by its time constant, else by a step in the trace",
          "no",
          YesNo.class);

  /** Where the probe was. */
  public static final Column<String> POSITION =
      Column.text("position", "where the probe was", "12 mm above the upper ring");

  /** Temperature that the probe is rated to. */
  public static final Column<Quantity> RATED_TO =
      Column.quantity(
          "rated to", "temperature that the probe is rated to", "1100 °C", Dimension.TEMPERATURE);

  /** Whether its dates are written day first. */
  public static final Column<YesNo> DAY_FIRST =
      Column.choice("day first", "whether its dates are written day first", "yes", YesNo.class);

  /** The sheet. */
  public static final SheetSchema SCHEMA =
      new SheetSchema(
          "sensors.csv",
          "a column of logs",
          List.of(
              COLUMN,
              ROLE,
              LOG,
              SENSOR,
              TYPE,
              CLASS,
              UNIT,
              SCALE,
              RESOLUTION,
              CORRECTION,
              COLD_JUNCTION,
              TIME_CONSTANT,
              UNDO_LAG,
              POSITION,
              RATED_TO,
              DAY_FIRST));

  private SensorsSheet() {}
}
