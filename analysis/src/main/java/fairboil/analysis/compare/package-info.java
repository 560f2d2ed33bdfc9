/**
 * Differences between builds, designs and conditions, each with the right unit: the stove itself,
 * stoves of a design, or differences within stoves.
 *
 * <p>Start at {@link fairboil.analysis.compare.Comparisons}, which gives a {@link
 * fairboil.analysis.compare.Comparison} a pair and measure, and a {@link
 * fairboil.analysis.compare.RankComparison} where some runs did not boil. {@link
 * fairboil.analysis.compare.Fairness} says whether a comparison is a fair one.
 */
package fairboil.analysis.compare;
