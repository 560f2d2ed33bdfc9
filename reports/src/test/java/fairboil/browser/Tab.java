package fairboil.browser;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;

/** The one tab of the browser, and what a reader does in it. */
final class Tab {

  private static final double INCH = 25.4;

  private static final Duration LONGEST = Duration.ofMinutes(1);

  private final ChromeDriver driver;

  Tab(ChromeDriver driver) {
    this.driver = driver;
    driver.manage().timeouts().scriptTimeout(LONGEST);
  }

  /** A width of screen, in CSS pixels. */
  enum Screen {
    /** A desk. */
    WIDE(1400, 900),
    /** A phone of today. */
    PHONE(390, 844),
    /** The narrowest that WCAG 2.2, 1.4.10, asks for. */
    NARROWEST(320, 640);

    private final int width;
    private final int height;

    Screen(int width, int height) {
      this.width = width;
      this.height = height;
    }

    int width() {
      return width;
    }
  }

  /** A size of paper, in millimetres. */
  enum Paper {
    A4(210, 297),
    LETTER(215.9, 279.4);

    private final double width;
    private final double height;

    Paper(double width, double height) {
      this.width = width;
      this.height = height;
    }
  }

  /** Opens a file afresh, on a wide screen and with nothing left over from before. */
  Tab open(Path page) {
    return open(page, Screen.WIDE);
  }

  Tab open(Path page, Screen screen) {
    show(screen);
    driver.get("about:blank");
    driver.manage().logs().get(LogType.BROWSER);
    driver.get(page.toUri().toString());
    return this;
  }

  void show(Screen screen) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of(
            "width",
            screen.width,
            "height",
            screen.height,
            "deviceScaleFactor",
            1,
            "mobile",
            screen != Screen.WIDE));
  }

  /** Opens a file as a browser without scripts does. */
  Tab openWithoutScripts(Path page) {
    driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      return open(page);
    } finally {
      driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }

  String title() {
    return driver.getTitle();
  }

  /** What the console says since the page was opened. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(LogEntry::getMessage)
        .toList();
  }

  /** What the page asked for besides itself. */
  List<?> asked() {
    return list("return performance.getEntriesByType('resource').map(it => it.name)");
  }

  WebElement find(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  List<WebElement> all(String selector) {
    return driver.findElements(By.cssSelector(selector));
  }

  void press(CharSequence... keys) {
    new Actions(driver).sendKeys(keys).perform();
  }

  void hover(WebElement over) {
    new Actions(driver).moveToElement(over).perform();
  }

  /** The element that has the focus. */
  WebElement focused() {
    return driver.switchTo().activeElement();
  }

  List<?> list(String script, Object... arguments) {
    return (List<?>) driver.executeScript(script, arguments);
  }

  boolean holds(String condition, Object... arguments) {
    return (Boolean) driver.executeScript("return " + condition, arguments);
  }

  String text(String expression) {
    return (String) driver.executeScript("return " + expression);
  }

  long number(String script, Object... arguments) {
    return ((Number) driver.executeScript("return " + script, arguments)).longValue();
  }

  /** The number that a script gives. */
  long take(String script) {
    return ((Number) driver.executeScript(script)).longValue();
  }

  void run(String script, Object... arguments) {
    driver.executeScript(script, arguments);
  }

  /** What a script gives that tells when it is done. */
  Object runToEnd(String script) {
    return driver.executeAsyncScript(script);
  }

  /** The page as the browser prints it, with the margins that the page asks for. */
  byte[] printed(Paper paper) {
    Map<String, Object> pdf =
        driver.executeCdpCommand(
            "Page.printToPDF",
            Map.of(
                "paperWidth",
                paper.width / INCH,
                "paperHeight",
                paper.height / INCH,
                "printBackground",
                false));
    return Base64.getDecoder().decode((String) pdf.get("data"));
  }
}
