/**
 * Logs as loggers write them.
 *
 * <p>A {@link fairboil.ingest.log.LogOpener} gives an {@link fairboil.ingest.log.OpenedLog}: a
 * {@link fairboil.ingest.log.Log} with its {@link fairboil.ingest.log.TimeAxis} and {@link
 * fairboil.ingest.log.Channel}s, or findings that say why there is none. {@link
 * fairboil.ingest.log.LogReader} is the opener for study folders. What needs neighbours of a
 * reading (lone spikes, lone zeros) is not decided here but in the analysis.
 *
 * <p>How a log is read, each step with the class to look at first; nothing is taken on a guess,
 * what a log leaves unsaid is answered by {@code sensors.csv} or asked for with the row to paste:
 *
 * <ol>
 *   <li>{@code Replay} reads ahead, {@code ShapeFinder} finds separator, header and first row in
 *       the {@code Head}; {@code ShapeCheck} refuses what cannot be told apart.
 *   <li>{@code LogColumn} and {@code HeaderName} say what each column looks like and is called,
 *       {@code SensorAnswers} what {@code sensors.csv} says of it; {@code LongForm} finds tables
 *       with a line for each probe.
 *   <li>{@code TimePlanner} and {@code StampPlanner} choose a {@code TimeReader}, {@code
 *       ChannelPlanner} the roles and units.
 *   <li>{@code TableReader} reads the rows with {@code RowLines} and {@code ChannelReader}s and
 *       keeps the {@code Tally}; {@code RowCounter} and {@code StatedFigures} compare it with what
 *       the log says of itself; {@code Asking} and {@code TimeAsking} ask.
 *   <li>{@code Timeline} puts the times in order, {@code SeveralRuns} and {@code RunCut} find the
 *       run among them, {@code AxisMaker} and {@code ChannelMaker} make the log.
 * </ol>
 *
 * <p>To add a way of writing logs, add a case to the test resources first: a folder with an odd log
 * and what is to come of it.
 */
package fairboil.ingest.log;
