/** Claims: a verdict and numbers for each, read off an interval; no wording. */
package fairboil.analysis.claim;
