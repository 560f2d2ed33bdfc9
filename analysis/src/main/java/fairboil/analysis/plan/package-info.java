/**
 * How many stoves and burns the next tests need, and in which order to burn them.
 *
 * <p>{@link fairboil.analysis.plan.Plans} makes a {@link fairboil.analysis.plan.Plan} of what is
 * {@link fairboil.analysis.plan.Asked}: for each {@link fairboil.analysis.plan.Wish} an {@link
 * fairboil.analysis.plan.Answer}, reckoned with {@link fairboil.analysis.plan.Spreads} at their
 * estimates and at their upper limits; and a {@link fairboil.analysis.plan.RunningOrder}. {@code
 * Odds} is where power is worked out.
 */
package fairboil.analysis.plan;
