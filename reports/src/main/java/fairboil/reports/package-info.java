/** Turns results into a folder that a person can publish. */
package fairboil.reports;
