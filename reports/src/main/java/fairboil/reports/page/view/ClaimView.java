package fairboil.reports.page.view;

/**
 * A claim and its verdict.
 *
 * @param name its short name
 * @param text the sentence that was tested
 * @param verdict the verdict
 * @param wording the verdict with its numbers
 * @param written when it was written down, a sentence
 */
public record ClaimView(
    String name, String text, CellView verdict, String wording, String written) {}
