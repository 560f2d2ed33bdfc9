package fairboil.ingest.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairboil.ingest.choice.Lid;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Unit;
import java.util.NoSuchElementException;
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

  @Test
  void keysOfTwoStudiesDifferThoughNamesAgree() {
    assertThat(new Key("north", "A")).isNotEqualTo(new Key("south", "A")).hasToString("A");
    assertThat(new Key("north", "B")).isLessThan(new Key("south", "A"));
    assertThatThrownBy(() -> new Key("north", " ")).isInstanceOf(IllegalArgumentException.class);
  }
}
