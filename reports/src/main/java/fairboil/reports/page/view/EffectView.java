package fairboil.reports.page.view;

import java.util.List;
import java.util.Optional;

/**
 * One hole effect.
 *
 * @param title the response and the ring
 * @param sentence the effect in a sentence
 * @param naive what not to claim; empty for nothing
 * @param checks what was found by asking in other ways, sentences
 * @param figure its chart, unless the page shows it elsewhere
 * @param residuals how far builds and burns lie from its line, if it has one
 * @param shownAt the id of the chart where it is shown already; empty for none
 */
public record EffectView(
    String title,
    String sentence,
    String naive,
    List<String> checks,
    Optional<FigureView> figure,
    Optional<FigureView> residuals,
    String shownAt) {}
