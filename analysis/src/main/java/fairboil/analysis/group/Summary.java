package fairboil.analysis.group;

import fairboil.analysis.figure.Interval;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The mean of a measure over runs, with its interval.
 *
 * @param n how many runs it stands on, at least 1
 * @param mean their mean
 * @param sd their standard deviation (n − 1), in the unit of a difference; empty for one run
 * @param interval the interval of the mean at the study's confidence (Student's t, n − 1 degrees of
 *     freedom); empty for one run
 */
public record Summary(int n, double mean, OptionalDouble sd, Optional<Interval> interval) {}
