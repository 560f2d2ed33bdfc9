/**
 * The writer's kit: what those who quote a study need, in a folder of its own.
 *
 * <p>{@link fairboil.reports.quote.QuoteKit} is the entry point. It puts charts for print with
 * their captions ({@code CaptionText}), the claims ({@code ClaimSentences}), what a critic may ask
 * ({@code CriticAnswers}) and the data with the command that makes the report anew ({@code
 * DataArchive}) into the output folder. {@code Markdown} keeps what people wrote from being taken
 * for markup.
 */
package fairboil.reports.quote;
