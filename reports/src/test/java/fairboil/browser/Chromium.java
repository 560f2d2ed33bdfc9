package fairboil.browser;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** The browser and its driver that are installed here. Nothing is ever fetched. */
record Chromium(Path browser, Path driver) {

  /** They ask nobody anything: no updates, no first-run pages, no accounts. */
  private static final List<String> QUIETLY =
      List.of(
          "--headless=new",
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--disable-dev-shm-usage",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--disable-extensions",
          "--window-size=1400,900");

  /** Kept, because Java forgets the level of a logger that nobody holds. */
  private static final Logger LOGGER = Logger.getLogger("org.openqa.selenium");

  static {
    // It would warn that it knows no newer commands of a browser of this age: we use none.
    LOGGER.setLevel(Level.SEVERE);
  }

  /** Those on the PATH, if both are. */
  static Optional<Chromium> installed() {
    return onPath("chromium", "chromium-browser", "google-chrome")
        .flatMap(browser -> onPath("chromedriver").map(driver -> new Chromium(browser, driver)));
  }

  private static Optional<Path> onPath(String... names) {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return Arrays.stream(names)
        .flatMap(name -> Arrays.stream(path.split(File.pathSeparator)).map(at -> Path.of(at, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** Starts it; whoever does so quits it. */
  ChromeDriver start() {
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(browser.toFile());
    options.addArguments(QUIETLY);
    options.setCapability("goog:loggingPrefs", logs);
    options.setExperimentalOption("prefs", Map.of("intl.accept_languages", "en"));
    return new ChromeDriver(
        new ChromeDriverService.Builder().usingDriverExecutable(driver.toFile()).build(), options);
  }
}
