/**
 * What a group agreed ({@code protocol.csv}) and whether runs kept to it: {@link
 * fairboil.analysis.protocol.Protocols} gives each run its {@link
 * fairboil.analysis.protocol.RunProtocol}; {@link fairboil.analysis.protocol.Without} holds the
 * results without the runs that did not.
 */
package fairboil.analysis.protocol;
