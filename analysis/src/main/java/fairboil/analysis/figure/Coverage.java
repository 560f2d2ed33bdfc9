package fairboil.analysis.figure;

/**
 * An interval worked out from the whole distribution of a result, where ± a multiple of its
 * standard uncertainty would not do.
 *
 * @param confidence the share of the distribution that it holds, between 0 and 1
 * @param interval the interval
 */
public record Coverage(double confidence, Interval interval) {}
