/** Runs taken together by build: counts of outcomes, means and their intervals. */
package fairboil.analysis.group;
