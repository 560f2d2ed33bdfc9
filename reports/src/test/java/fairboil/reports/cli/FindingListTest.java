package fairboil.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Findings as a terminal shows them. */
class FindingListTest {

  @Test
  void fiveHundredEqualFindingsAreOneLineWithACount() {
    List<Finding> findings =
        IntStream.rangeClosed(1, 500)
            .mapToObj(
                run ->
                    Finding.warning(
                        Place.of("logs/" + run + ".csv", 1), "it has no unit", "write one"))
            .toList();
    assertThat(printed(findings))
        .isEqualTo(
            "logs/1.csv, line 1; logs/2.csv, line 1; logs/3.csv, line 1 and 497 more places:"
                + " warning: it has no unit. Write one.\n");
    assertThat(new FindingList(findings, DisplayUnits.METRIC).summary()).contains("500 warnings");
  }

  @Test
  void oneFindingIsAsItIs() {
    Finding finding = Finding.error(Place.of("runs.csv", 2, "water"), "“1000” has no unit", "");
    assertThat(printed(List.of(finding))).isEqualTo(finding + "\n");
  }

  private static String printed(List<Finding> findings) {
    StringWriter text = new StringWriter();
    new FindingList(findings, DisplayUnits.METRIC).printAll(new PrintWriter(text, true));
    return text.toString().replace(System.lineSeparator(), "\n");
  }
}
