/**
 * Everything that is said to people: numbers, units, names, sentences, captions, cautions.
 *
 * <p>{@link fairboil.reports.words.Display} turns held values into shown ones, {@link
 * fairboil.reports.words.Slopes} does so for slopes. {@link fairboil.reports.words.Labels} names
 * what enums stand for; {@link fairboil.reports.words.Names} and {@link
 * fairboil.reports.words.Plural} help sentences.
 *
 * <p>The sentences: {@link fairboil.reports.words.AnswerWords} for the whole study, {@link
 * fairboil.reports.words.EffectWords} and {@link fairboil.reports.words.CheckWords} for hole
 * effects, {@link fairboil.reports.words.CompareWords}, {@link
 * fairboil.reports.words.FairnessWords} and {@link fairboil.reports.words.ScatterWords} for
 * comparisons, {@link fairboil.reports.words.ClaimWords} for claims, {@link
 * fairboil.reports.words.RunWords} for runs, {@link fairboil.reports.words.FindingGroup} for
 * findings, {@link fairboil.reports.words.Caption} for charts. {@link
 * fairboil.reports.words.Methods} tells how figures are worked out, {@link
 * fairboil.reports.words.SettingWords} with what settings, {@link fairboil.reports.words.Cautions}
 * what to beware of.
 */
package fairboil.reports.words;
