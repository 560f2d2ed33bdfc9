package fairboil.ingest.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fairboil.ingest.choice.Datum;
import fairboil.ingest.choice.Lid;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.DecimalMark;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Reading;
import fairboil.ingest.quantity.Unit;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RowTest {

  private static final Place LINE = Place.of("runs.csv", 4);

  private final Row row =
      Row.at(LINE)
          .put(RunsSheet.RUN, "K1-1")
          .put(RunsSheet.LID, Given.of(Lid.ON, "On", LINE.column("Lid?")))
          .extra("mood", Given.of("fine", "fine", LINE.column("mood")))
          .build();

  @Test
  void givesCellsWithTheirPlace() {
    assertThat(row.get(RunsSheet.RUN)).isEqualTo("K1-1");
    assertThat(row.cell(RunsSheet.LID).orElseThrow().written()).isEqualTo("On");
    assertThat(row.place(RunsSheet.LID)).hasToString("runs.csv, line 4, column Lid?");
    assertThat(row.place(RunsSheet.WATER)).hasToString("runs.csv, line 4, column water");
    assertThat(row.extras()).containsOnlyKeys("mood");
  }

  @Test
  void emptyCellHasNoValueUnlessItsColumnHasOne() {
    assertThat(row.value(RunsSheet.WATER)).isEmpty();
    assertThatThrownBy(() -> row.get(RunsSheet.WATER))
        .isInstanceOf(NoSuchElementException.class)
        .hasMessageContaining("no water at runs.csv, line 4");
    Row settings = Row.at(Place.of("study.csv")).build();
    assertThat(settings.get(Settings.PEAK_HOLD).in(Unit.SECOND)).isEqualTo(10);
    assertThat(settings.cell(Settings.PEAK_HOLD)).isEmpty();
  }

  /** What holds for an empty cell does not hold for one that somebody filled in. */
  @Test
  void aCellThatCouldNotBeReadIsNotAnEmptyOne() {
    Place cell = Place.of("rings.csv", 2, "datum");
    Unread unread = new Unread("top rmi", Finding.error(cell, "no such answer", "type top rim"));
    Row.Builder ring = Row.at(Place.of("rings.csv", 2)).put(RingsSheet.RING, "upper");
    assertThat(ring.build().get(RingsSheet.DATUM)).isEqualTo(Datum.TOP_RIM);
    Row misspelt = ring.unread(RingsSheet.DATUM, unread).build();
    for (Row row : List.of(misspelt, misspelt.copy().build())) {
      assertThat(row.cell(RingsSheet.DATUM)).isEmpty();
      assertThat(row.value(RingsSheet.DATUM)).isEmpty();
      assertThat(row.unread(RingsSheet.DATUM)).contains(unread);
      assertThat(row.illegible()).containsExactly(unread);
    }
    assertThat(misspelt.in("north").illegible().get(0).finding().place())
        .hasToString("north/rings.csv, line 2, column datum");
  }

  @Test
  void aCellThatARowCanDoWithoutLeavesItUsable() {
    Place cell = Place.of("rings.csv", 2, "air");
    Unread unread = new Unread("hot", Finding.error(cell, "no such answer", "type primary"));
    Row row = Row.at(Place.of("rings.csv", 2)).unread(RingsSheet.AIR, unread).build();
    assertThat(row.illegible()).isEmpty();
    assertThat(row.unread(RingsSheet.AIR)).isPresent();
  }

  /** Findings name the usual value of a setting by its example. */
  @Test
  void theExampleOfASettingIsItsUsualValue() {
    for (Column<?> setting : Settings.SCHEMA.columns()) {
      if (setting.fallback().isPresent()) {
        Reading<?> example =
            setting.read(setting.example(), new CellContext(Optional.empty(), DecimalMark.UNKNOWN));
        Object read = ((Reading.Read<?>) example).value();
        if (read instanceof Quantity quantity) {
          Quantity usual = (Quantity) setting.fallback().get();
          assertThat(quantity.value()).as(setting.name()).isEqualTo(usual.value(), within(1e-12));
        } else {
          assertThat(read).as(setting.name()).isEqualTo(setting.fallback().get());
        }
      }
    }
  }

  @Test
  void keysOfTwoStudiesDifferThoughNamesAgree() {
    assertThat(new Key("north", "A")).isNotEqualTo(new Key("south", "A")).hasToString("A");
    assertThat(new Key("north", "B")).isLessThan(new Key("south", "A"));
    assertThatThrownBy(() -> new Key("north", " ")).isInstanceOf(IllegalArgumentException.class);
  }
}
