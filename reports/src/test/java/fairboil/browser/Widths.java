package fairboil.browser;

import fairboil.browser.Tab.Screen;
import java.util.List;

/** Whether a page fits on a screen without being moved sideways. */
final class Widths {

  private static final String BEYOND =
      """
      const width = arguments[0];
      const own = element => element.closest(".scroll, .skip, .unseen") !== null;
      const wide = [...document.querySelectorAll("body *")]
          .filter(it => !own(it) && it.getBoundingClientRect().right > width + 0.5)
          .map(it => it.tagName + "." + it.className);
      const page = document.scrollingElement.scrollWidth;
      return page > width ? ["the page is " + page + " wide", ...wide] : wide;
      """;

  private Widths() {}

  /** What stands out to the right; tables scroll in frames of their own. */
  static List<?> beyond(Tab tab, Screen screen) {
    return tab.list(BEYOND, screen.width());
  }
}
