/**
 * Statistical models and distributions, knowing nothing of stoves.
 *
 * <p>{@link fairboil.analysis.model.LinearFit} regresses a response on {@link
 * fairboil.analysis.model.Regressors}; {@link fairboil.analysis.model.MandelPaule} regresses means
 * of groups that differ among themselves, {@link fairboil.analysis.model.RandomIntercept} single
 * values, by REML, {@link fairboil.analysis.model.Simex} takes errors of measurement out, and
 * {@link fairboil.analysis.model.VarianceComponents} takes scatter apart. {@link
 * fairboil.analysis.model.StudentizedRange} and {@link fairboil.analysis.model.Dunnett} are for
 * many comparisons at once, {@link fairboil.analysis.model.ToleranceFactor} and {@link
 * fairboil.analysis.model.RandomModelBounds} for most of a population. {@link
 * fairboil.analysis.model.Noncentral} and {@link fairboil.analysis.model.TwoSidedTests} tell how
 * often something that is there will be found. {@link fairboil.analysis.model.RankSum}, {@link
 * fairboil.analysis.model.SlopePermutation} and {@link fairboil.analysis.model.TheilSen} need no
 * normal distribution. Random numbers come from {@link fairboil.analysis.model.Chance}.
 */
package fairboil.analysis.model;
