/**
 * Where holes are against where they were meant to be: best fit of measured holes onto a ring round
 * a wall or a pattern on a base.
 *
 * <p>{@link fairboil.analysis.layout.RingResult} holds one ring of one build with its {@link
 * fairboil.analysis.layout.HoleError}s.
 */
package fairboil.analysis.layout;
