/**
 * Does hole position matter? Hole-position error belongs to the build: five burns of one stove are
 * not five stoves.
 *
 * <p>Start at {@link fairboil.analysis.effect.HoleEffects}. {@link
 * fairboil.analysis.effect.HoleEffect} is the answer for one response and one ring, with one {@link
 * fairboil.analysis.effect.EffectRow} a term and model and a {@link
 * fairboil.analysis.effect.BuildPoint} a build.
 */
package fairboil.analysis.effect;
