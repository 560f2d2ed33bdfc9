/**
 * Runs taken together: {@link fairboil.analysis.group.RunGroup} is a set of runs that count, {@link
 * fairboil.analysis.group.BuildSummaries} makes a {@link fairboil.analysis.group.BuildResult} of
 * each build: counts of outcomes, means and their intervals.
 */
package fairboil.analysis.group;
