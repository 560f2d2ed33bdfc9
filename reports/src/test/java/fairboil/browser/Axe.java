package fairboil.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * axe-core: what stands against the rules of WCAG 2.2, levels A and AA, that a machine can check.
 */
final class Axe {

  private static final String SCRIPT = script();

  private static final String RUN =
      """
      const done = arguments[arguments.length - 1];
      axe.run(document, {
        runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa"],
        resultTypes: ["violations"]
      }).then(
        found => done(found.violations.flatMap(fault =>
          fault.nodes.map(node => fault.id + ": " + node.target + ": " + node.failureSummary))),
        error => done(["axe-core failed: " + error]));
      """;

  private Axe() {}

  /** The faults of the page as it stands, one text each. */
  static List<?> faults(Tab tab) {
    tab.run(SCRIPT);
    return (List<?>) tab.runToEnd(RUN);
  }

  private static String script() {
    try (InputStream in = Axe.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
