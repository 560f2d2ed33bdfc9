package fairboil.browser;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.browser.Tab.Screen;
import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The page of a study of a thousand runs. */
@ExtendWith(Browser.class)
class LargeReportIT {

  private static final long MOST_BYTES = 10_000_000;

  private final Tab tab;

  LargeReportIT(Tab tab) {
    this.tab = tab;
  }

  @Test
  void staysSmallAndLeadsToAPageForEachRun() throws IOException {
    assertThat(Files.size(Reports.Large.REPORT)).isLessThan(MOST_BYTES);
    tab.open(Reports.Large.REPORT);
    assertThat(tab.complaints()).isEmpty();
    assertThat(tab.asked()).isEmpty();
    assertThat(tab.number("document.querySelectorAll('#runs-table tbody tr').length"))
        .isEqualTo(LargeStudy.RUNS);
    assertThat(tab.number("document.querySelectorAll('#runs figure.chart').length"))
        .as("small traces of sixty runs each")
        .isEqualTo(17);
    for (Object file :
        tab.list(
            "return [...document.querySelectorAll('#runs-table tbody th a')]"
                + ".map(it => it.getAttribute('href'))")) {
      assertThat(Reports.Large.REPORT.resolveSibling(file.toString())).isRegularFile();
    }
    tab.find("#runs-table tbody tr:nth-child(1000) th a").click();
    assertThat(tab.find("h1").getText()).isEqualTo("Run R1000");
    assertThat(tab.all("figure.chart img")).hasSize(1);
    assertThat(Axe.faults(tab)).isEmpty();
  }

  @Test
  void doesNotScrollSidewaysOnAPhone() {
    tab.open(Reports.Large.REPORT, Screen.PHONE);
    assertThat(Widths.beyond(tab, Screen.PHONE)).isEmpty();
  }
}
