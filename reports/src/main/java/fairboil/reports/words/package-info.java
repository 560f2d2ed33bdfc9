/**
 * Everything that is said to people: numbers, units, sentences, captions, cautions.
 *
 * <p>{@link fairboil.reports.words.Display} turns held values into shown ones.
 */
package fairboil.reports.words;
