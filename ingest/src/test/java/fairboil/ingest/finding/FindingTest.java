package fairboil.ingest.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingTest {

  private static final Place WATER = Place.of("runs.csv", 7, "water");

  @Test
  void readsAsOneSentenceAndWhatToDo() {
    Finding finding = Finding.error(WATER, "there is no unit", "write 1000 g instead of 1000");
    assertThat(finding)
        .hasToString(
            "runs.csv, line 7, column water: error: there is no unit. Write 1000 g instead of"
                + " 1000.");
  }

  @Test
  void needsSomethingToSay() {
    assertThatThrownBy(() -> Finding.note(WATER, Message.NONE, Message.NONE))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void worstComesFirstThenPlace() {
    Finding note = Finding.note(Place.of("a.csv"), "x", "");
    Finding late = Finding.error(Place.of("runs.csv", 12), "x", "");
    Finding early = Finding.error(Place.of("runs.csv", 3), "x", "");
    Finding whole = Finding.error(Place.of("runs.csv"), "x", "");
    List<Finding> findings = new ArrayList<>(List.of(note, late, early, whole));
    Collections.sort(findings);
    assertThat(findings).containsExactly(whole, early, late, note);
  }
}
