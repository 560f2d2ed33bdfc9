package fairboil.reports.page.view;

import java.util.List;
import java.util.Optional;

/**
 * How boil times were restated.
 *
 * @param sentences the method, and how far it can be relied on; unmodifiable
 * @param losses heat lost by each pot, where coolings were logged
 * @param chain one run from its readings to its result
 * @param budget what makes that result uncertain, line by line
 */
public record RestatingView(
    List<String> sentences,
    Optional<TableView> losses,
    Optional<TableView> chain,
    Optional<TableView> budget) {

  /** Copies the list. */
  public RestatingView {
    sentences = List.copyOf(sentences);
  }
}
