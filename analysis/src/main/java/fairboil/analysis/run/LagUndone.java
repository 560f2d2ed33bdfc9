package fairboil.analysis.run;

import fairboil.analysis.figure.Figure;

/**
 * What undoing the lag of a flame probe did to the peak.
 *
 * @param timeConstant of the probe, from its row in sensors.csv or a step in its trace, s
 * @param asRead the held peak of the trace as read, °C
 * @param added held peak with the lag undone, less that as read, K
 */
public record LagUndone(Figure timeConstant, Figure asRead, Figure added) {}
