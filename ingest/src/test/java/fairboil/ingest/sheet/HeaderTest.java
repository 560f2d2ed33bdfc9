package fairboil.ingest.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.choice.Choice;
import fairboil.ingest.choice.Event;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.ColumnNames;
import fairboil.ingest.grid.GridRow;
import fairboil.ingest.quantity.DecimalMark;
import fairboil.ingest.quantity.Reading;
import fairboil.ingest.quantity.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class HeaderTest {

  private static final List<SheetSchema> SCHEMAS =
      List.of(
          RunsSheet.SCHEMA,
          BuildsSheet.SCHEMA,
          RingsSheet.SCHEMA,
          HolesSheet.SCHEMA,
          PotsSheet.SCHEMA,
          StopwatchSheet.SCHEMA,
          SensorsSheet.SCHEMA,
          ClaimsSheet.SCHEMA,
          ProtocolSheet.SCHEMA,
          Settings.SCHEMA);

  private static Header header(SheetSchema schema, String... cells) {
    return Header.of(
        Place.of(schema.file()), schema, new GridRow(1, List.of(cells)), ColumnNames.HEADERS);
  }

  static Stream<SheetSchema> caseAndSeparatorsDoNotMatter() {
    return SCHEMAS.stream();
  }

  @ParameterizedTest
  @MethodSource
  void caseAndSeparatorsDoNotMatter(SheetSchema schema) {
    for (Column<?> column : schema.columns()) {
      String name = column.name();
      for (String dressed :
          List.of(
              name,
              name.toUpperCase(Locale.ROOT),
              name.replace(' ', '_'),
              name.replace(' ', '-'),
              name.replace(" ", "").replace("-", ""),
              "  " + name.replace(" ", "\u00A0 "),
              name + ":")) {
        assertThat(header(schema, dressed).known().keySet()).as(dressed).containsExactly(column);
      }
    }
  }

  /** Two headers that are told apart by blanks alone could not be told apart. */
  @ParameterizedTest
  @MethodSource("caseAndSeparatorsDoNotMatter")
  void noTwoColumnsOfASheetHaveTheSameKey(SheetSchema schema) {
    assertThat(schema.columns().stream().map(column -> Words.key(column.name())))
        .doesNotHaveDuplicates();
  }

  /** What a new sheet shows as an example must be read without a word. */
  @ParameterizedTest
  @MethodSource("caseAndSeparatorsDoNotMatter")
  void everyExampleIsReadWithoutRemark(SheetSchema schema) {
    CellContext context = new CellContext(Optional.empty(), DecimalMark.UNKNOWN);
    for (Column<?> column : schema.columns()) {
      assertThat(remark(column, context)).as(schema.file() + " " + column.name()).isEmpty();
    }
  }

  private static <T> Optional<String> remark(Column<T> column, CellContext context) {
    Reading<T> reading = column.read(column.example(), context);
    return reading instanceof Reading.Read<T> read
        ? read.remark().map(Message::toString)
        : Optional.of("refused");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "water (g)|GRAM",
        "water [g]|GRAM",
        "water_g|GRAM",
        "water g|GRAM",
        "water, g|GRAM",
        "Water / g|GRAM",
        "WATER (fl. oz.)|US_FLUID_OUNCE",
        "water_fl_oz|US_FLUID_OUNCE",
        "water fl oz|US_FLUID_OUNCE",
        "water in kg|KILOGRAM",
        "water(ml)|MILLILITRE",
        "water (oz wt)|OUNCE",
        "water {L}|LITRE"
      })
  void takesTheUnitFromTheHeader(String written, Unit unit) {
    HeaderCell cell = header(RunsSheet.SCHEMA, written).known().get(RunsSheet.WATER);
    assertThat(cell.unit()).hasValue(unit);
  }

  @ParameterizedTest
  @CsvSource({"ambient_F, FAHRENHEIT", "ambient c, CELSIUS", "ambient (K), KELVIN"})
  void readsTemperaturesByOneLetter(String written, Unit unit) {
    assertThat(header(RunsSheet.SCHEMA, written).known().get(RunsSheet.AMBIENT).unit())
        .hasValue(unit);
  }

  @Test
  void theLongerNameWins() {
    Header header =
        header(RunsSheet.SCHEMA, "pot", "pot gap mm", "pot with water after g", "pot material");
    assertThat(header.known().keySet())
        .containsExactly(
            RunsSheet.POT,
            RunsSheet.POT_GAP,
            RunsSheet.POT_WITH_WATER_AFTER,
            RunsSheet.POT_MATERIAL);
  }

  @Test
  void wordsThatAreNoUnitMakeAnotherColumn() {
    assertThat(header(RunsSheet.SCHEMA, "water used", "lid m", "fuel cost").known()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "stove, build", "temp, ambient", "name, run", "water temp, water start", "ambeint, ambient",
    "lidd, lid", "comments, notes", "kettle, pot", "charcoal, char left", "watre, water"
  })
  void knowsWhatWasLikelyMeant(String written, String column) {
    assertThat(Likely.name(RunsSheet.SCHEMA, written)).hasValue(column);
  }

  @ParameterizedTest
  @EnumSource
  void sendsEventsToTheStopwatch(Event event) {
    boolean isColumn =
        RunsSheet.SCHEMA.columns().stream()
            .anyMatch(column -> Words.key(column.name()).equals(Words.key(event.label())));
    if (!isColumn) {
      assertThat(Likely.column(RunsSheet.SCHEMA, Set.of(), event.label()).map(Message::toString))
          .hasValue("times of events go into stopwatch.csv, there as event " + event.label());
    }
  }

  @ParameterizedTest
  @CsvSource({"feul, fuel", "K01, K01", "k 01, K01", "abcdef, "})
  void nearestNameIsFound(String written, String name) {
    assertThat(Nearest.to(written, List.of("fuel", "K01", "K2")))
        .isEqualTo(Optional.ofNullable(name));
  }

  @Test
  void anotherNumberIsAnotherThing() {
    assertThat(Nearest.to("K3", List.of("K1", "K2"))).isEmpty();
  }

  @Test
  void everyOtherWordForAnAnswerIsRead() {
    assertThat(new ChoiceText<>(Event.class).read("Ignition"))
        .isEqualTo(Reading.Read.of(Event.LIT));
    assertThat(new ChoiceText<>(Event.class).read("POT_ON"))
        .isEqualTo(Reading.Read.of(Event.POT_ON));
    assertThat(List.of(Event.values()).stream().map(Choice::label).map(StopwatchReader::event))
        .doesNotContain(Optional.empty());
  }

  @Test
  void aSecondColumnOfOneNameIsAnError() {
    Header header = header(RunsSheet.SCHEMA, "water (g)", "Water [kg]");
    assertThat(header.findings())
        .extracting(Finding::toString)
        .containsExactly(
            "runs.csv, line 1, column Water [kg]: error: a second column is headed water, so it"
                + " was left out. Keep one of them, or rename this one.");
  }
}
