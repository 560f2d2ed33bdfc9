/**
 * Where holes are against where they were meant to be: best fit of measured holes onto a ring round
 * a wall or a pattern on a base.
 *
 * <p>Start at {@link fairboil.analysis.layout.HoleLayout}, which gives a {@link
 * fairboil.analysis.layout.LayoutResult}: one {@link fairboil.analysis.layout.RingResult} for each
 * ring of each build, with its {@link fairboil.analysis.layout.HoleError}s. {@link
 * fairboil.analysis.layout.IntendedRing} is a ring as it was meant to be, for whoever needs it.
 */
package fairboil.analysis.layout;
