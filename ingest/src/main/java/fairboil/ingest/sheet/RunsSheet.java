package fairboil.ingest.sheet;

import fairboil.ingest.choice.Feed;
import fairboil.ingest.choice.FlameProbe;
import fairboil.ingest.choice.FuelForm;
import fairboil.ingest.choice.Lid;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.choice.StoveStart;
import fairboil.ingest.choice.WeighedAt;
import fairboil.ingest.choice.YesNo;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Quantity;
import java.time.LocalDate;
import java.util.List;

/** The columns of {@code runs.csv}. */
public final class RunsSheet {

  /** Name of the run. */
  public static final Column<String> RUN = Column.text("run", "name of the run", "K1-1").required();

  /** Build that was burnt. */
  public static final Column<String> BUILD =
      Column.text("build", "build that was burnt", "K1").required();

  /** Day of the run. */
  public static final Column<LocalDate> DATE = Column.date("date", "day of the run", "2026-03-14");

  /** Time of day of lighting. */
  public static final Column<ClockTime> LIT_AT =
      Column.timeOfDay("lit at", "time of day of lighting", "14:05");

  /** Place in the running order. */
  public static final Column<Integer> ORDER =
      Column.whole("order", "place in the running order", "1");

  /** Who ran it. */
  public static final Column<String> TESTER = Column.text("tester", "who ran it", "Ida");

  /** Where it was run. */
  public static final Column<String> SITE = Column.text("site", "where it was run", "yard");

  /** Anything else. */
  public static final Column<String> NOTES =
      Column.text("notes", "anything else", "gusty at first");

  /** File of the log (default: logs/ and the name of the run). */
  public static final Column<String> LOG =
      Column.text(
          "log", "file of the log (default: logs/ and the name of the run)", "logs/K1-1.csv");

  /** Where the run starts in its log. */
  public static final Column<ClockTime> LOG_FROM =
      Column.moment("log from", "where the run starts in its log", "0:00");

  /** Where the run ends in its log. */
  public static final Column<ClockTime> LOG_TO =
      Column.moment("log to", "where the run ends in its log", "0:45:00");

  /** How it ended. */
  public static final Column<Outcome> OUTCOME =
      Column.choice("outcome", "how it ended", "boiled", Outcome.class);

  /** Fault of the test for which the run is left out (never a fault of the stove). */
  public static final Column<String> EXCLUDE =
      Column.reason(
          "exclude",
          "fault of the test for which the run is left out (never a fault of the stove)",
          "pot knocked over");

  /** Fault of the test for which its peak is left out. */
  public static final Column<String> EXCLUDE_PEAK =
      Column.reason(
          "exclude peak",
          "fault of the test for which its peak is left out",
          "flame probe slipped");

  /** Fault of the test for which its boil is left out. */
  public static final Column<String> EXCLUDE_BOIL =
      Column.reason(
          "exclude boil", "fault of the test for which its boil is left out", "lid forgotten");

  /** Air temperature. */
  public static final Column<Quantity> AMBIENT =
      Column.quantity("ambient", "air temperature", "8 °C", Dimension.TEMPERATURE);

  /** Air pressure at the place as a barometer there reads it. */
  public static final Column<Quantity> STATION_PRESSURE =
      Column.quantity(
          "station pressure",
          "air pressure at the place as a barometer there reads it",
          "97.2 kPa",
          Dimension.PRESSURE);

  /** Air pressure reduced to sea level, as forecasts give it. */
  public static final Column<Quantity> SEA_LEVEL_PRESSURE =
      Column.quantity(
          "sea-level pressure",
          "air pressure reduced to sea level, as forecasts give it",
          "1013 hPa",
          Dimension.PRESSURE);

  /** Height of the place above sea level. */
  public static final Column<Quantity> ALTITUDE =
      Column.quantity("altitude", "height of the place above sea level", "340 m", Dimension.LENGTH);

  /** Wind speed, or Beaufort B0 to B4. */
  public static final Column<Wind> WIND =
      Column.wind("wind", "wind speed, or Beaufort B0 to B4", "B1");

  /** Whether a wind screen was used. */
  public static final Column<YesNo> SCREEN =
      Column.choice("screen", "whether a wind screen was used", "yes", YesNo.class);

  /** Weather in words. */
  public static final Column<String> WEATHER =
      Column.text("weather", "weather in words", "overcast");

  /** Water put on. */
  public static final Column<Quantity> WATER =
      Column.quantity("water", "water put on", "1000 g", Dimension.MASS, Dimension.VOLUME);

  /** Pot and water weighed together before. */
  public static final Column<Quantity> POT_WITH_WATER =
      Column.quantity(
          "pot with water", "pot and water weighed together before", "1240 g", Dimension.MASS);

  /** Temperature of the water when put on. */
  public static final Column<Quantity> WATER_START =
      Column.quantity(
          "water start", "temperature of the water when put on", "12.0 °C", Dimension.TEMPERATURE);

  /** Water left after. */
  public static final Column<Quantity> WATER_LEFT =
      Column.quantity("water left", "water left after", "930 g", Dimension.MASS, Dimension.VOLUME);

  /** Pot and water weighed together after. */
  public static final Column<Quantity> POT_WITH_WATER_AFTER =
      Column.quantity(
          "pot with water after", "pot and water weighed together after", "1170 g", Dimension.MASS);

  /** Pot of pots.csv, or its empty mass. */
  public static final Column<PotGiven> POT =
      Column.pot("pot", "pot of pots.csv, or its empty mass", "billy");

  /** What the pot is made of. */
  public static final Column<String> POT_MATERIAL =
      Column.text("pot material", "what the pot is made of", "aluminium");

  /** Whether the pot was covered. */
  public static final Column<Lid> LID =
      Column.choice("lid", "whether the pot was covered", "on", Lid.class);

  /** Gap between stove and pot. */
  public static final Column<Quantity> POT_GAP =
      Column.quantity("pot gap", "gap between stove and pot", "15 mm", Dimension.LENGTH);

  /** Soot on the pot. */
  public static final Column<String> SOOT = Column.text("soot", "soot on the pot", "clean");

  /** What was burnt. */
  public static final Column<String> FUEL = Column.text("fuel", "what was burnt", "spruce pellets");

  /** Shape of the fuel. */
  public static final Column<FuelForm> FUEL_FORM =
      Column.choice("fuel form", "shape of the fuel", "pellets", FuelForm.class);

  /** Bag or batch of the fuel. */
  public static final Column<String> FUEL_BATCH =
      Column.text("fuel batch", "bag or batch of the fuel", "bag 2");

  /** How fuel was fed. */
  public static final Column<Feed> FEED =
      Column.choice("feed", "how fuel was fed", "batch", Feed.class);

  /** Fuel put in. */
  public static final Column<Quantity> FUEL_LOADED =
      Column.quantity("fuel loaded", "fuel put in", "300 g", Dimension.MASS);

  /** Fuel added later. */
  public static final Column<Quantity> REFUELLED =
      Column.quantity("refuelled", "fuel added later", "0 g", Dimension.MASS);

  /** Unburnt fuel left. */
  public static final Column<Quantity> FUEL_LEFT =
      Column.quantity("fuel left", "unburnt fuel left", "0 g", Dimension.MASS);

  /** Char left, cold. */
  public static final Column<Quantity> CHAR_LEFT =
      Column.quantity("char left", "char left, cold", "42 g", Dimension.MASS);

  /** When the rest of the fuel was weighed or smothered. */
  public static final Column<WeighedAt> WEIGHED_AT =
      Column.choice(
          "weighed at",
          "when the rest of the fuel was weighed or smothered",
          "burnt out",
          WeighedAt.class);

  /** Water in the fuel as a share of moist fuel. */
  public static final Column<Quantity> MOISTURE_WET_BASIS =
      Column.quantity(
          "moisture wet basis",
          "water in the fuel as a share of moist fuel",
          "8 %",
          Dimension.RATIO);

  /** Water in the fuel as a share of dry fuel. */
  public static final Column<Quantity> MOISTURE_DRY_BASIS =
      Column.quantity(
          "moisture dry basis",
          "water in the fuel as a share of dry fuel",
          "8.7 %",
          Dimension.RATIO);

  /** Lower heating value of the dry fuel. */
  public static final Column<Quantity> HEATING_VALUE =
      Column.quantity(
          "heating value",
          "lower heating value of the dry fuel",
          "18.6 MJ/kg",
          Dimension.SPECIFIC_ENERGY);

  /** What it was lit with. */
  public static final Column<String> STARTER =
      Column.text("starter", "what it was lit with", "birch bark");

  /** How many burns the stove has had, counted from new. */
  public static final Column<Integer> BURN_NUMBER =
      Column.whole("burn number", "how many burns the stove has had, counted from new", "4");

  /** State of the stove when lit. */
  public static final Column<StoveStart> STOVE_START =
      Column.choice("stove start", "state of the stove when lit", "cold", StoveStart.class);

  /** Whether the flame probe kept its place since the run before. */
  public static final Column<FlameProbe> FLAME_PROBE =
      Column.choice(
          "flame probe",
          "whether the flame probe kept its place since the run before",
          "stayed",
          FlameProbe.class);

  /** The sheet. */
  public static final SheetSchema SCHEMA =
      new SheetSchema(
          "runs.csv",
          "a burn",
          List.of(
              RUN,
              BUILD,
              DATE,
              LIT_AT,
              ORDER,
              TESTER,
              SITE,
              NOTES,
              LOG,
              LOG_FROM,
              LOG_TO,
              OUTCOME,
              EXCLUDE,
              EXCLUDE_PEAK,
              EXCLUDE_BOIL,
              AMBIENT,
              STATION_PRESSURE,
              SEA_LEVEL_PRESSURE,
              ALTITUDE,
              WIND,
              SCREEN,
              WEATHER,
              WATER,
              POT_WITH_WATER,
              WATER_START,
              WATER_LEFT,
              POT_WITH_WATER_AFTER,
              POT,
              POT_MATERIAL,
              LID,
              POT_GAP,
              SOOT,
              FUEL,
              FUEL_FORM,
              FUEL_BATCH,
              FEED,
              FUEL_LOADED,
              REFUELLED,
              FUEL_LEFT,
              CHAR_LEFT,
              WEIGHED_AT,
              MOISTURE_WET_BASIS,
              MOISTURE_DRY_BASIS,
              HEATING_VALUE,
              STARTER,
              BURN_NUMBER,
              STOVE_START,
              FLAME_PROBE));

  private RunsSheet() {}
}
