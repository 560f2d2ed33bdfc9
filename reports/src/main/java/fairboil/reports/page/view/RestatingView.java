package fairboil.reports.page.view;

import java.util.List;
import java.util.Optional;

/**
 * How boil times were restated.
 *
 * @param sentences the method, and how far it can be relied on; unmodifiable
 * @param losses heat lost by each pot, where coolings were logged
 * @param chain one run from its readings to its result
 * @param figures that run over its heat balance, all runs, and what makes its results uncertain;
 *     unmodifiable
 */
public record RestatingView(
    List<String> sentences,
    Optional<TableView> losses,
    Optional<TableView> chain,
    List<FigureView> figures) {

  /** Copies the lists. */
  public RestatingView {
    sentences = List.copyOf(sentences);
    figures = List.copyOf(figures);
  }
}
