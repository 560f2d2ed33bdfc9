/** Printing at true scale. */
package fairboil.reports.print;
