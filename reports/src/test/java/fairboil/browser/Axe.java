package fairboil.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongConsumer;

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

  /** How many elements are shown: what a run of axe-core looks at. */
  private static final String SHOWN =
      "[...document.querySelectorAll('body *')].filter(it => it.checkVisibility()).length";

  /**
   * Parts that are small enough: each section without its runs, and runs by the dozen. All are
   * taken off the page, to be put back one by one.
   */
  private static final String TAKE_APART =
      """
      const runs = [...document.querySelectorAll("article.run")];
      const sections = [...document.querySelectorAll("main > section")];
      window.parts = sections.map(section => [section, []]);
      for (let i = 0; i < runs.length; i += 12) {
        window.parts.push([runs[i].parentElement.cloneNode(false), runs.slice(i, i + 12)]);
      }
      [...runs, ...sections].forEach(it => it.remove());
      return window.parts.length;
      """;

  private static final String SHOW_ONLY =
      """
      const main = document.querySelector("main");
      main.querySelectorAll(":scope > section").forEach(it => it.remove());
      const [section, runs] = window.parts[arguments[0]];
      section.append(...runs);
      main.append(section);
      """;

  private Axe() {}

  /** The faults of the page as it stands, one text each. */
  static List<?> faults(Tab tab) {
    tab.run(SCRIPT);
    return (List<?>) tab.runToEnd(RUN);
  }

  /**
   * The faults of a page part by part: what axe-core does with a whole long page takes it minutes.
   *
   * @param seen takes how many elements of each part were shown
   */
  static List<?> faultsByParts(Tab tab, LongConsumer seen) {
    tab.run(SCRIPT);
    List<Object> faults = new ArrayList<>();
    long parts = tab.take(TAKE_APART);
    for (long part = 0; part < parts; part++) {
      tab.run(SHOW_ONLY, part);
      seen.accept(tab.number(SHOWN));
      faults.addAll((List<?>) tab.runToEnd(RUN));
    }
    return faults;
  }

  private static String script() {
    try (InputStream in = Axe.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
