package fairboil.browser;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.browser.Tab.Screen;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The page of a study that is out to do harm. */
@ExtendWith(Browser.class)
class HostileReportIT {

  private final Tab tab;

  HostileReportIT(Tab tab) {
    this.tab = tab;
  }

  @BeforeEach
  void open() {
    tab.open(Reports.HOSTILE);
  }

  @Test
  void nothingRunsAndNothingIsAskedFor() {
    tab.hover(tab.find("#runs-table tbody tr:nth-child(5) th"));
    tab.run("document.querySelectorAll('details').forEach(it => it.open = true)");
    assertThat(tab.holds("window.harmed === undefined")).isTrue();
    assertThat(tab.complaints()).isEmpty();
    assertThat(tab.asked()).isEmpty();
    assertThat(tab.number("document.scripts.length")).isEqualTo(1);
    assertThat(tab.all("img:not([src^='data:image/png;base64,'])")).isEmpty();
  }

  @Test
  void whatWasWrittenIsShownAsItWasWritten() {
    assertThat(tab.title()).isEqualTo(HostileStudy.SCRIPT);
    assertThat(tab.find("h1").getText()).isEqualTo(HostileStudy.SCRIPT);
    assertThat(tab.find("#runs-table tbody tr:first-child th").getText())
        .isEqualTo(HostileStudy.SCRIPT + " 1");
  }

  @Test
  void doesNotScrollSidewaysOnAPhone() {
    tab.show(Screen.PHONE);
    assertThat(Widths.beyond(tab, Screen.PHONE)).isEmpty();
  }

  @Test
  void meetsTheRulesOfAccessibility() {
    assertThat(Axe.faults(tab)).isEmpty();
  }
}
