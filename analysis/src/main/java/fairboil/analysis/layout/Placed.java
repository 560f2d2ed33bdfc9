package fairboil.analysis.layout;

/**
 * A measured hole at its place in the plan.
 *
 * @param spot the hole as measured
 * @param slot its place in the plan, from 0
 * @param error how far it is off
 */
record Placed(Spot spot, int slot, HoleError error) {}
