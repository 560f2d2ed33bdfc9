package fairboil.browser;

import java.util.Optional;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * Gives tests a {@link Tab} of the one browser that all of them share. Without a browser they are
 * skipped, with the reason; where one is {@code required}, they fail instead.
 */
final class Browser implements ExecutionCondition, ParameterResolver {

  private static final Namespace NAMESPACE = Namespace.create(Browser.class);
  private static final Optional<Chromium> INSTALLED = Chromium.installed();

  @Override
  public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
    if (INSTALLED.isPresent() || System.getProperty("fairboil.browser", "").equals("required")) {
      return ConditionEvaluationResult.enabled("there is a browser, or has to be");
    }
    return ConditionEvaluationResult.disabled(
        "chromium and chromedriver are not both on the PATH: sh .dev/setup tests installs them");
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == Tab.class;
  }

  @Override
  public Tab resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return context
        .getRoot()
        .getStore(NAMESPACE)
        .getOrComputeIfAbsent(Running.class, key -> new Running(), Running.class)
        .tab();
  }

  /** The browser, which ends with the last test. */
  private static final class Running implements AutoCloseable {

    private final ChromeDriver driver =
        INSTALLED
            .orElseThrow(
                () -> new AssertionError("no chromium with chromedriver on the PATH, yet required"))
            .start();

    Tab tab() {
      return new Tab(driver);
    }

    @Override
    public void close() {
      driver.quit();
    }
  }
}
