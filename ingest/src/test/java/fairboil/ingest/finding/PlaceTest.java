package fairboil.ingest.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PlaceTest {

  @Test
  void saysOnlyWhatIsKnown() {
    assertThat(Place.of("logs/a.csv")).hasToString("logs/a.csv");
    assertThat(Place.of("logs/a.csv", 3)).hasToString("logs/a.csv, line 3");
    assertThat(Place.of("study.xlsx!runs", 3).column("D")).hasToString("study.xlsx!runs, cell D3");
  }

  @Test
  void refusesNoFileAndLineNought() {
    assertThatThrownBy(() -> Place.of("")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Place.of("a.csv", 0)).hasMessageContaining("count from 1");
  }
}
