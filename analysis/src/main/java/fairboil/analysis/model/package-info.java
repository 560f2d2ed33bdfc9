/**
 * Statistical models and distributions, knowing nothing of stoves.
 *
 * <p>{@link fairboil.analysis.model.LinearFit} regresses a response on {@link
 * fairboil.analysis.model.Regressors}.
 */
package fairboil.analysis.model;
