/**
 * Claims: a verdict and numbers for each, read off an interval; no wording.
 *
 * <p>Start at {@link fairboil.analysis.claim.Claims}, which gives a {@link
 * fairboil.analysis.claim.ClaimResult} for each claim of a study.
 */
package fairboil.analysis.claim;
