/**
 * One run: (run, log) in, {@link fairboil.analysis.run.RunResult} out.
 *
 * <p>The parts of a result are records of {@link fairboil.analysis.figure.Figure}s: {@link
 * fairboil.analysis.run.Conditions}, {@link fairboil.analysis.run.FlameResult}, {@link
 * fairboil.analysis.run.BoilResult}, {@link fairboil.analysis.run.EnergyResult}, {@link
 * fairboil.analysis.run.FuelResult}; {@link fairboil.analysis.run.RunSketch} is what a chart needs.
 * {@link fairboil.analysis.run.SameLogs} looks over all runs for one burn that counts twice.
 */
package fairboil.analysis.run;
