package fairboil.reports.print;

import fairboil.ingest.choice.Choice;
import fairboil.ingest.choice.Feed;
import fairboil.ingest.choice.FlameProbe;
import fairboil.ingest.choice.FuelForm;
import fairboil.ingest.choice.Lid;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.choice.StoveStart;
import fairboil.ingest.choice.WeighedAt;
import fairboil.ingest.choice.YesNo;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.RunsSheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The fields of the run sheet, in the order in which they are filled in. */
final class RunFields {

  /**
   * Fields that are filled in together.
   *
   * @param title when
   * @param columns the fields; unmodifiable
   */
  record Group(String title, List<Column<?>> columns) {

    /** Copies the columns. */
    Group {
      columns = List.copyOf(columns);
    }
  }

  private static final List<Group> ORDERED =
      List.of(
          new Group(
              "Before lighting: the run",
              List.of(
                  RunsSheet.RUN,
                  RunsSheet.BUILD,
                  RunsSheet.DATE,
                  RunsSheet.ORDER,
                  RunsSheet.TESTER,
                  RunsSheet.SITE)),
          new Group(
              "Before lighting: the weather",
              List.of(
                  RunsSheet.AMBIENT,
                  RunsSheet.WIND,
                  RunsSheet.STATION_PRESSURE,
                  RunsSheet.SEA_LEVEL_PRESSURE,
                  RunsSheet.ALTITUDE,
                  RunsSheet.SCREEN,
                  RunsSheet.WEATHER)),
          new Group(
              "Before lighting: stove and fuel",
              List.of(
                  RunsSheet.BURN_NUMBER,
                  RunsSheet.STOVE_START,
                  RunsSheet.FLAME_PROBE,
                  RunsSheet.STARTER,
                  RunsSheet.FUEL,
                  RunsSheet.FUEL_FORM,
                  RunsSheet.FUEL_BATCH,
                  RunsSheet.FEED,
                  RunsSheet.FUEL_LOADED,
                  RunsSheet.HEATING_VALUE,
                  RunsSheet.MOISTURE_WET_BASIS,
                  RunsSheet.MOISTURE_DRY_BASIS)),
          new Group(
              "Before lighting: pot and water",
              List.of(
                  RunsSheet.POT,
                  RunsSheet.POT_MATERIAL,
                  RunsSheet.SOOT,
                  RunsSheet.LID,
                  RunsSheet.POT_GAP,
                  RunsSheet.WATER,
                  RunsSheet.POT_WITH_WATER,
                  RunsSheet.WATER_START)),
          new Group(
              "Logger and clock",
              List.of(RunsSheet.LIT_AT, RunsSheet.LOG, RunsSheet.LOG_FROM, RunsSheet.LOG_TO)),
          new Group(
              "Afterwards: weigh cold",
              List.of(
                  RunsSheet.OUTCOME,
                  RunsSheet.WATER_LEFT,
                  RunsSheet.POT_WITH_WATER_AFTER,
                  RunsSheet.REFUELLED,
                  RunsSheet.FUEL_LEFT,
                  RunsSheet.CHAR_LEFT,
                  RunsSheet.WEIGHED_AT,
                  RunsSheet.NOTES)),
          new Group(
              "Only if the test itself went wrong",
              List.of(RunsSheet.EXCLUDE, RunsSheet.EXCLUDE_PEAK, RunsSheet.EXCLUDE_BOIL)));

  private static final Map<Column<?>, List<String>> CHOICES = choices();

  private RunFields() {}

  /** Every column of {@code runs.csv}, once; those that have no group yet come last. */
  static List<Group> groups() {
    List<Column<?>> rest = new ArrayList<>(RunsSheet.SCHEMA.columns());
    ORDERED.forEach(group -> rest.removeAll(group.columns()));
    List<Group> groups = new ArrayList<>(ORDERED);
    if (!rest.isEmpty()) {
      groups.add(new Group("Besides", rest));
    }
    return groups;
  }

  /** The answers to tick; empty for a field to write in. */
  static List<String> choices(Column<?> column) {
    return CHOICES.getOrDefault(column, List.of());
  }

  private static Map<Column<?>, List<String>> choices() {
    Map<Column<?>, List<String>> choices = new HashMap<>();
    put(choices, RunsSheet.OUTCOME, Outcome.values());
    put(choices, RunsSheet.SCREEN, YesNo.values());
    put(choices, RunsSheet.LID, Lid.values());
    put(choices, RunsSheet.FUEL_FORM, FuelForm.values());
    put(choices, RunsSheet.FEED, Feed.values());
    put(choices, RunsSheet.WEIGHED_AT, WeighedAt.values());
    put(choices, RunsSheet.STOVE_START, StoveStart.values());
    put(choices, RunsSheet.FLAME_PROBE, FlameProbe.values());
    return choices;
  }

  private static <E extends Enum<E> & Choice> void put(
      Map<Column<?>, List<String>> choices, Column<E> column, E[] answers) {
    choices.put(column, Stream.of(answers).map(Choice::label).toList());
  }
}
