package fairboil.browser;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.browser.Tab.Paper;
import fairboil.browser.Tab.Screen;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.LongAdder;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The page of the demonstration, as a reader meets it. */
@ExtendWith(Browser.class)
class ReportIT {

  private static final String RUNS = "#runs-table";
  private static final String BOIL_TIME = RUNS + " thead th:nth-child(7) button";
  private static final String BOIL_TIMES =
      "return [...document.querySelectorAll('#runs-table tbody td:nth-child(7)')]"
          + ".map(cell => cell.dataset.sort === undefined ? null : Number(cell.dataset.sort))";

  /** All runs, and all rows of a table, are made by one template; axe-core takes its time. */
  private static final String FEW_OF_EACH_KIND =
      "document.querySelectorAll('article.run:nth-of-type(n + 5), tbody tr:nth-child(n + 5)')"
          + ".forEach(it => it.remove())";

  private static final String UNFOLD =
      "document.querySelectorAll('details').forEach(it => it.open = true)";

  private final Tab tab;

  ReportIT(Tab tab) {
    this.tab = tab;
  }

  @Test
  void opensFromAFileWithoutAskingForAnything() {
    tab.open(Reports.DEMO);
    assertThat(tab.title()).isNotBlank();
    assertThat(tab.complaints()).isEmpty();
    assertThat(tab.asked()).isEmpty();
    assertThat(tab.number("document.querySelectorAll('img').length")).isGreaterThan(50);
    assertThat(tab.list("return [...document.images].filter(it => !it.naturalWidth)")).isEmpty();
  }

  /** What does not come with the page neither runs nor loads nor styles. */
  @Test
  void keepsWhatIsForeignOut() {
    tab.open(Reports.DEMO);
    tab.run(
        """
        const script = document.createElement("script");
        script.textContent = "window.foreign = 1";
        const picture = document.createElement("img");
        picture.src = "https://example.invalid/x.png";
        const style = document.createElement("style");
        style.textContent = "h1 { color: rgb(1, 2, 3) }";
        document.body.append(script, picture, style);
        document.body.setAttribute("onclick", "window.foreign = 2");
        document.body.click();
        """);
    assertThat(tab.holds("window.foreign === undefined")).isTrue();
    assertThat(tab.text("getComputedStyle(document.querySelector('h1')).color"))
        .isNotEqualTo("rgb(1, 2, 3)");
    assertThat(tab.complaints())
        .allMatch(said -> said.contains("Content Security Policy"))
        .hasSizeGreaterThanOrEqualTo(4);
  }

  @Test
  void sortsByTheMouse() {
    tab.open(Reports.DEMO);
    tab.find(BOIL_TIME).click();
    assertThat(sortedTimes()).isSorted();
    assertThat(head().getAttribute("aria-sort")).isEqualTo("ascending");
    tab.find(BOIL_TIME).click();
    assertThat(sortedTimes()).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    assertThat(head().getAttribute("aria-sort")).isEqualTo("descending");
  }

  @Test
  void sortsByTheKeyboard() {
    tab.open(Reports.DEMO);
    tab.run("arguments[0].focus()", tab.find(RUNS + " thead th:nth-child(6) button"));
    tab.press(Keys.TAB, Keys.ENTER);
    assertThat(sortedTimes()).isSorted();
    tab.press(Keys.SPACE);
    assertThat(sortedTimes()).isSortedAccordingTo((a, b) -> Double.compare(b, a));
  }

  /** The times as they stand, after checking that those not known come last, and some are. */
  private List<Double> sortedTimes() {
    List<Double> known = new ArrayList<>();
    boolean unknown = false;
    for (Object time : tab.list(BOIL_TIMES)) {
      if (time == null) {
        unknown = true;
      } else {
        assertThat(unknown).as("an unknown time stands before a known one").isFalse();
        known.add(((Number) time).doubleValue());
      }
    }
    assertThat(unknown).isTrue();
    assertThat(known).hasSizeGreaterThan(40);
    return known;
  }

  private WebElement head() {
    return tab.find(RUNS + " thead th:nth-child(7)");
  }

  @Test
  void filtersRows() {
    tab.open(Reports.DEMO);
    WebElement input = tab.find("#runs .filter input");
    input.sendKeys("M4");
    assertThat(tab.all(RUNS + " tbody tr").stream().filter(WebElement::isDisplayed))
        .isNotEmpty()
        .allMatch(row -> row.getText().contains("M4"));
    assertThat(tab.find("#runs .filter [role=status]").getText()).isEqualTo("4 of 47 rows");
    input.sendKeys(Keys.BACK_SPACE, Keys.BACK_SPACE);
    assertThat(tab.number("document.querySelectorAll('#runs-table tr[hidden]').length")).isZero();
  }

  @Test
  void theSkipLinkComesFirstAndSkips() {
    tab.open(Reports.DEMO);
    tab.press(Keys.TAB);
    assertThat(tab.focused().getText()).isEqualTo("Skip to the report");
    assertThat(tab.holds("document.activeElement.getBoundingClientRect().left >= 0")).isTrue();
    tab.press(Keys.ENTER);
    assertThat(tab.focused().getAttribute("id")).isEqualTo("main");
  }

  /** WCAG 2.2, 2.4.3, 2.4.7 and 2.4.11: in the order of the page, marked, and in sight. */
  @Test
  void theFocusGoesThroughThePageInItsOrder() {
    tab.open(Reports.DEMO);
    tab.run("window.before = document.body.firstElementChild");
    for (int i = 0; i < 60; i++) {
      tab.press(Keys.TAB);
      assertThat(
              tab.holds(
                  """
                  (() => {
                    const at = document.activeElement;
                    const box = at.getBoundingClientRect();
                    const later = window.before === at ||
                        window.before.compareDocumentPosition(at) & Node.DOCUMENT_POSITION_FOLLOWING;
                    window.before = at;
                    const look = getComputedStyle(at);
                    return Boolean(later) &&
                        (look.outlineStyle !== "none" || look.stroke !== "none") &&
                        box.bottom > 0 && box.top < innerHeight;
                  })()
                  """))
          .as("focus %d, on %s", i + 1, tab.focused().getTagName())
          .isTrue();
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Screen.class,
      names = {"PHONE", "NARROWEST"})
  void doesNotScrollSideways(Screen screen) {
    tab.open(Reports.DEMO, screen);
    assertThat(Widths.beyond(tab, screen)).isEmpty();
  }

  /** The smallest letters of a chart are 12.5 pixels high; they must not fall under 9. */
  @Test
  void chartsAreReadOnAPhone() {
    tab.open(Reports.DEMO, Screen.PHONE);
    assertThat(
            tab.list(
                """
                return [...document.querySelectorAll("figure.chart img")]
                    .filter(it => 12.5 * it.clientWidth / it.getAttribute("width") < 9)
                    .map(it => it.closest("figure").id)
                """))
        .isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void printsWithoutCuttingAChart(Paper paper) throws IOException {
    tab.open(Reports.DEMO);
    byte[] pdf = tab.printed(paper);
    Files.write(Reports.DEMO.resolveSibling("../demo-" + paper + ".pdf"), pdf);
    List<PrintedPage> pages = PrintedPage.of(pdf);
    assertThat(pages).as("four runs on a page").hasSizeLessThanOrEqualTo(30);
    assertThat(pages).allMatch(PrintedPage::isWhole);
    assertThat(pages.stream().mapToLong(page -> page.pictures().size()).sum())
        .as("a chart that is cut is there twice")
        .isEqualTo(tab.number("document.images.length"));
  }

  @ParameterizedTest
  @EnumSource(
      value = Screen.class,
      names = {"WIDE", "PHONE"})
  void meetsTheRulesOfAccessibility(Screen screen) {
    tab.open(Reports.DEMO, screen);
    tab.run(FEW_OF_EACH_KIND);
    assertThat(Axe.faults(tab)).as("as it opens").isEmpty();
    tab.run(UNFOLD);
    assertThat(Axe.faults(tab)).as("unfolded").isEmpty();
  }

  /** The same of the whole page. */
  @Test
  void meetsTheRulesOfAccessibilityEverywhereOnAPhone() {
    meetsTheRulesEverywhere(Screen.PHONE);
  }

  @Test
  @Tag("long") // half a minute more for what the phone sees too
  void meetsTheRulesOfAccessibilityEverywhereOnADesk() {
    meetsTheRulesEverywhere(Screen.WIDE);
  }

  private void meetsTheRulesEverywhere(Screen screen) {
    tab.open(Reports.DEMO, screen);
    tab.run(UNFOLD);
    LongAdder elements = new LongAdder();
    assertThat(Axe.faultsByParts(tab, elements::add)).isEmpty();
    assertThat(elements.sum()).as("elements looked at").isGreaterThan(15_000);
  }

  @Test
  void isWholeWithoutScripts() {
    tab.openWithoutScripts(Reports.DEMO);
    assertThat(tab.all("th button")).isEmpty();
    assertThat(tab.all("nav.contents a")).hasSizeGreaterThanOrEqualTo(10);
    tab.find("nav.contents a[href='#runs']").click();
    assertThat(
            tab.holds("Math.abs(document.querySelector('#runs').getBoundingClientRect().top) < 40"))
        .isTrue();
    assertThat(tab.all(RUNS + " tbody tr")).hasSize(47);
    assertThat(tab.all("svg.tips[aria-hidden] circle > title")).hasSizeGreaterThan(100);
  }

  private static final String FIRST_CHART = "#answer figure.chart ";

  @Test
  void hoveringOverAPointTellsItsRun() {
    tab.open(Reports.DEMO);
    WebElement label = tab.find(FIRST_CHART + ".tip");
    assertThat(label.isDisplayed()).isFalse();
    tab.hover(tab.find(FIRST_CHART + "circle[aria-label^='Run L6-1:']"));
    assertThat(label.getText()).startsWith("Run L6-1: ").contains("°C", "build L6", "mm RMS");
    tab.press(Keys.ESCAPE);
    assertThat(label.isDisplayed()).isFalse();
  }

  @Test
  void theKeyboardGoesFromPointToPoint() {
    tab.open(Reports.DEMO);
    tab.run("arguments[0].focus()", tab.find(FIRST_CHART + "circle[tabindex='0']"));
    String first = told();
    tab.press(Keys.ARROW_RIGHT);
    assertThat(told()).isNotEqualTo(first);
    tab.press(Keys.ARROW_LEFT);
    assertThat(told()).isEqualTo(first);
    assertThat(tab.all(FIRST_CHART + "circle[tabindex='0']")).hasSize(1);
    tab.press(Keys.TAB);
    assertThat(tab.find(FIRST_CHART + ".tip").isDisplayed()).isFalse();
  }

  private String told() {
    WebElement label = tab.find(FIRST_CHART + ".tip");
    assertThat(label.isDisplayed()).isTrue();
    assertThat(label.getText()).isEqualTo(tab.focused().getAttribute("aria-label"));
    return label.getText();
  }

  /** Where a point is said to be there is the colour of a mark, not paper, line or letter. */
  @Test
  void pointsLieWhereTheyAreDrawn() {
    tab.open(Reports.DEMO);
    assertThat(
            tab.list(
                """
                const figure = document.querySelector("#answer figure.chart");
                const image = figure.querySelector("img");
                const canvas = document.createElement("canvas");
                canvas.width = image.naturalWidth;
                canvas.height = image.naturalHeight;
                const paper = canvas.getContext("2d");
                paper.drawImage(image, 0, 0);
                const sharpness = image.naturalWidth / Number(image.getAttribute("width"));
                return [...figure.querySelectorAll("circle")].filter(point => {
                  const [x, y] = [point.cx, point.cy].map(it => it.baseVal.value * sharpness);
                  const pixels = paper.getImageData(x - 4, y - 4, 9, 9).data;
                  for (let i = 0; i < pixels.length; i += 4) {
                    const colours = pixels.slice(i, i + 3);
                    if (Math.max(...colours) - Math.min(...colours) > 20) {
                      return false;
                    }
                  }
                  return true;
                }).map(point => point.getAttribute("aria-label"));
                """))
        .isEmpty();
    assertThat(tab.all(FIRST_CHART + "circle")).hasSizeGreaterThan(50);
  }
}
