/**
 * Statistical models and distributions, knowing nothing of stoves.
 *
 * <p>{@link fairboil.analysis.model.LinearFit} regresses a response on {@link
 * fairboil.analysis.model.Regressors}; {@link fairboil.analysis.model.MandelPaule} regresses means
 * of groups that differ among themselves.
 */
package fairboil.analysis.model;
