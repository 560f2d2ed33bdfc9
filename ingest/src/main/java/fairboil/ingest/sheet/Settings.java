package fairboil.ingest.sheet;

import fairboil.ingest.choice.BoilMeans;
import fairboil.ingest.choice.BoilTimeSource;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.choice.HoleErrorOrigin;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.choice.PeakWindow;
import fairboil.ingest.choice.StopwatchStart;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import java.util.List;

/** The settings of {@code study.csv}: there one row each, here one column each of a single row. */
public final class Settings {

  /** What the page is headed with. */
  public static final Column<String> TITLE =
      Column.text("title", "what the page is headed with", "How true must the holes be?");

  /** The question that the study asks. */
  public static final Column<String> QUESTION =
      Column.text(
          "question",
          "the question that the study asks",
          "Does hole position matter for flame temperature?");

  /** Columns of runs or builds to compare by. */
  public static final Column<List<String>> COMPARE_BY =
      Column.texts("compare by", "columns of runs or builds to compare by", "lid, fuel");

  /** The ring whose hole error the hole effect is about. */
  public static final Column<String> HOLE_RING =
      Column.text("hole ring", "the ring whose hole error the hole effect is about", "upper");

  /** Columns with numbers to allow for. */
  public static final Column<List<String>> COVARIATES =
      Column.texts("covariates", "columns with numbers to allow for", "ambient");

  /** Height of the place above sea level. */
  public static final Column<Quantity> ALTITUDE =
      Column.quantity("altitude", "height of the place above sea level", "340 m", Dimension.LENGTH);

  /** Water that boil times are restated for (default: the median of the study to 0.1 kg). */
  public static final Column<Quantity> REFERENCE_WATER =
      Column.quantity(
          "reference water",
          "water that boil times are restated for (default: the median of the study to 0.1 kg)",
          "1.0 kg",
          Dimension.MASS,
          Dimension.VOLUME);

  /** Water temperature that boil times are restated for. */
  public static final Column<Quantity> REFERENCE_START =
      Column.quantity(
              "reference start",
              "water temperature that boil times are restated for",
              "20 °C",
              Dimension.TEMPERATURE)
          .orElse(Quantity.of(20, Unit.CELSIUS));

  /** Air temperature that results are restated for. */
  public static final Column<Quantity> REFERENCE_AMBIENT =
      Column.quantity(
              "reference ambient",
              "air temperature that results are restated for",
              "20 °C",
              Dimension.TEMPERATURE)
          .orElse(Quantity.of(20, Unit.CELSIUS));

  /** Altitude that boil times are restated for. */
  public static final Column<Quantity> REFERENCE_ALTITUDE =
      Column.quantity(
              "reference altitude",
              "altitude that boil times are restated for",
              "0 m",
              Dimension.LENGTH)
          .orElse(Quantity.of(0, Unit.METRE));

  /** Pot that boil times are restated for (default: the own pot of each run). */
  public static final Column<String> REFERENCE_POT =
      Column.text(
          "reference pot",
          "pot that boil times are restated for (default: the own pot of each run)",
          "billy");

  /** How boil times are restated. */
  public static final Column<NormaliseBy> NORMALISE_BY =
      Column.choice("normalise by", "how boil times are restated", "auto", NormaliseBy.class)
          .orElse(NormaliseBy.AUTO);

  /** Heat that the pot loses per second and degree. */
  public static final Column<Quantity> LOSS_COEFFICIENT =
      Column.quantity(
          "loss coefficient",
          "heat that the pot loses per second and degree",
          "1.6 W/K",
          Dimension.CONDUCTANCE);

  /** Lower heating value of the dry fuel, where a run gives none. */
  public static final Column<Quantity> HEATING_VALUE =
      Column.quantity(
          "heating value",
          "lower heating value of the dry fuel, where a run gives none",
          "18.6 MJ/kg",
          Dimension.SPECIFIC_ENERGY);

  /** Confidence of the intervals. */
  public static final Column<Quantity> CONFIDENCE =
      Column.quantity("confidence", "confidence of the intervals", "95 %", Dimension.RATIO)
          .orElse(Quantity.of(95, Unit.PERCENT));

  /** How long a flame temperature must hold to count as the peak. */
  public static final Column<Quantity> PEAK_HOLD =
      Column.quantity(
              "peak hold",
              "how long a flame temperature must hold to count as the peak",
              "10 s",
              Dimension.DURATION)
          .orElse(Quantity.of(10, Unit.SECOND));

  /** Part of the run in which the peak is sought. */
  public static final Column<PeakWindow> PEAK_WINDOW =
      Column.choice(
              "peak window",
              "part of the run in which the peak is sought",
              "pot on to flame out",
              PeakWindow.class)
          .orElse(PeakWindow.POT_ON_TO_FLAME_OUT);

  /** Observation of the boil that the results stand on. */
  public static final Column<BoilTimeSource> BOIL_TIME_FROM =
      Column.choice(
              "boil time from",
              "observation of the boil that the results stand on",
              "log",
              BoilTimeSource.class)
          .orElse(BoilTimeSource.LOG);

  /** What the testers agreed to call boiling. */
  public static final Column<BoilMeans> BOIL_MEANS =
      Column.choice(
          "boil means", "what the testers agreed to call boiling", "rolling", BoilMeans.class);

  /** Event at which the stopwatch was started. */
  public static final Column<StopwatchStart> STOPWATCH_STARTED_AT =
      Column.choice(
              "stopwatch started at",
              "event at which the stopwatch was started",
              "lit",
              StopwatchStart.class)
          .orElse(StopwatchStart.LIT);

  /** How the hole errors came about. */
  public static final Column<HoleErrorOrigin> HOLE_ERROR_WAS =
      Column.choice(
              "hole error was",
              "how the hole errors came about",
              "as it came",
              HoleErrorOrigin.class)
          .orElse(HoleErrorOrigin.AS_IT_CAME);

  /** Standard uncertainty of the scale. */
  public static final Column<Quantity> SCALE_UNCERTAINTY =
      Column.quantity(
              "scale uncertainty", "standard uncertainty of the scale", "2 g", Dimension.MASS)
          .orElse(Quantity.of(2, Unit.GRAM));

  /** Standard uncertainty of a stopwatch mark. */
  public static final Column<Quantity> STOPWATCH_UNCERTAINTY =
      Column.quantity(
              "stopwatch uncertainty",
              "standard uncertainty of a stopwatch mark",
              "1 s",
              Dimension.DURATION)
          .orElse(Quantity.of(1, Unit.SECOND));

  /** Standard uncertainty of one reading of a hole position. */
  public static final Column<Quantity> HOLE_READING_UNCERTAINTY =
      Column.quantity(
              "hole reading uncertainty",
              "standard uncertainty of one reading of a hole position",
              "0.3 mm",
              Dimension.LENGTH)
          .orElse(Quantity.of(0.3, Unit.MILLIMETRE));

  /** Units in which people read the results. */
  public static final Column<DisplayUnits> SHOW_UNITS =
      Column.choice(
              "show units", "units in which people read the results", "metric", DisplayUnits.class)
          .orElse(DisplayUnits.METRIC);

  /** Start of the random numbers. */
  public static final Column<Integer> SEED =
      Column.whole("seed", "start of the random numbers", "1").orElse(1);

  /** The sheet. */
  public static final SheetSchema SCHEMA =
      new SheetSchema(
          "study.csv",
          "a setting",
          List.of(
              TITLE,
              QUESTION,
              COMPARE_BY,
              HOLE_RING,
              COVARIATES,
              ALTITUDE,
              REFERENCE_WATER,
              REFERENCE_START,
              REFERENCE_AMBIENT,
              REFERENCE_ALTITUDE,
              REFERENCE_POT,
              NORMALISE_BY,
              LOSS_COEFFICIENT,
              HEATING_VALUE,
              CONFIDENCE,
              PEAK_HOLD,
              PEAK_WINDOW,
              BOIL_TIME_FROM,
              BOIL_MEANS,
              STOPWATCH_STARTED_AT,
              HOLE_ERROR_WAS,
              SCALE_UNCERTAINTY,
              STOPWATCH_UNCERTAINTY,
              HOLE_READING_UNCERTAINTY,
              SHOW_UNITS,
              SEED));

  private Settings() {}
}
