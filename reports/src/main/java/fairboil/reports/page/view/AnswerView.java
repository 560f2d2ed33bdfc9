package fairboil.reports.page.view;

import java.util.List;
import java.util.Optional;

/**
 * The question and its answer.
 *
 * @param question the question
 * @param sentences the answer
 * @param origin what may be concluded, a sentence; empty where there is no hole effect
 * @param facts the study in a few numbers
 * @param chart the one chart that shows it
 */
public record AnswerView(
    String question,
    List<String> sentences,
    String origin,
    List<FactView> facts,
    Optional<FigureView> chart) {}
