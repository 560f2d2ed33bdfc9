package fairboil.ingest;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.Claim;
import fairboil.ingest.sheet.Hole;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Mark;
import fairboil.ingest.sheet.Pot;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.Sensor;
import java.util.List;
import java.util.Optional;

/**
 * The sheets of a study folder, read: everything but the logs. Immutable.
 *
 * @param name the name of the study: that of its folder
 * @param settings the settings, one cell each, of {@link fairboil.ingest.sheet.Settings}
 * @param builds the builds in the order of {@code builds.csv}, then those that only runs or holes
 *     name, in the order in which they do
 * @param rings the rings as intended
 * @param holes the holes as measured
 * @param pots the pots
 * @param runs the runs, in the order of {@code runs.csv}
 * @param marks the stopwatch marks, in the order of {@code stopwatch.csv}
 * @param sensors the columns of logs that were described
 * @param claims the claims
 * @param protocol what a group agreed: rows of {@link fairboil.ingest.sheet.ProtocolSheet}
 * @param sources the sheets that were read, with their fingerprints
 * @param findings what a reader should know of the sheets, sorted
 */
public record Study(
    String name,
    Row settings,
    List<Build> builds,
    List<Ring> rings,
    List<Hole> holes,
    List<Pot> pots,
    List<Run> runs,
    List<Mark> marks,
    List<Sensor> sensors,
    List<Claim> claims,
    List<Row> protocol,
    List<SourceFile> sources,
    List<Finding> findings) {

  /** Copies the lists. */
  public Study {
    builds = List.copyOf(builds);
    rings = List.copyOf(rings);
    holes = List.copyOf(holes);
    pots = List.copyOf(pots);
    runs = List.copyOf(runs);
    marks = List.copyOf(marks);
    sensors = List.copyOf(sensors);
    claims = List.copyOf(claims);
    protocol = List.copyOf(protocol);
    sources = List.copyOf(sources);
    findings = List.copyOf(findings);
  }

  /** The build of that key, if the study has it. */
  public Optional<Build> build(Key key) {
    return builds.stream().filter(build -> build.key().equals(key)).findFirst();
  }

  /** The pot of that key, if the study has it. */
  public Optional<Pot> pot(Key key) {
    return pots.stream().filter(pot -> pot.key().equals(key)).findFirst();
  }

  /** The marks of a run, in the order of the sheet. */
  public List<Mark> marksOf(Key run) {
    return marks.stream().filter(mark -> mark.run().equals(run)).toList();
  }
}
