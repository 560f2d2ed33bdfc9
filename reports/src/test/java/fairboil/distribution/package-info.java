/** Tests of what the build hands over: the jar and the launcher beside it. */
package fairboil.distribution;
