package fairboil.ingest;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.grid.InputOpener;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.log.LogOpener;
import fairboil.ingest.log.OpenedLog;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.Claim;
import fairboil.ingest.sheet.Hole;
import fairboil.ingest.sheet.Mark;
import fairboil.ingest.sheet.Pot;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.Sensor;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Reads the studies of several groups as one. Keys carry the folder; places name it; logs are
 * opened in it; a probe of one folder is never that of another. Names of runs, and of builds that
 * are not shared, carry their folder where two folders use the same. Folders are taken in the order
 * of their names, however they were given.
 */
public final class StudyPool {

  private final Map<String, Study> studies = new TreeMap<>();
  private final Map<String, LogOpener> logs = new TreeMap<>();
  private final Map<String, InputOpener> inputs = new TreeMap<>();
  private final List<Finding> findings = new ArrayList<>();

  private StudyPool() {}

  /**
   * Opens one study, or several as one.
   *
   * @param folders the study folders, at least one
   * @throws StudyException if one cannot be read or is given twice, or they set differently what
   *     must be the same
   */
  public static OpenedStudy open(List<Path> folders) throws StudyException {
    if (folders.size() == 1) {
      return StudyReader.open(folders.get(0));
    }
    StudyPool pool = new StudyPool();
    for (Map.Entry<String, Path> folder : PoolNames.of(folders).entrySet()) {
      pool.add(folder.getKey(), StudyReader.open(folder.getValue(), folder.getKey()));
    }
    return pool.joined();
  }

  private void add(String folder, OpenedStudy opened) {
    studies.put(folder, in(folder, opened.study()));
    logs.put(folder, opened.logs());
    inputs.put(folder, opened.inputs());
  }

  /** A study with its places told from outside its folder. */
  private static Study in(String folder, Study study) {
    return new Study(
        study.name(),
        study.settings().in(folder),
        study.builds().stream().map(it -> new Build(it.key(), it.row().in(folder))).toList(),
        study.rings().stream().map(it -> new Ring(it.study(), it.row().in(folder))).toList(),
        study.holes().stream()
            .map(it -> new Hole(it.build(), it.ring(), it.number(), it.row().in(folder)))
            .toList(),
        study.pots().stream().map(it -> new Pot(it.key(), it.row().in(folder))).toList(),
        study.runs().stream()
            .map(it -> new Run(it.key(), it.build(), it.row().in(folder)))
            .toList(),
        study.marks().stream()
            .map(it -> new Mark(it.run(), it.event(), it.text(), it.time().in(folder), it.by()))
            .toList(),
        study.sensors().stream().map(it -> new Sensor(it.study(), it.row().in(folder))).toList(),
        study.claims().stream().map(it -> new Claim(it.key(), it.row().in(folder))).toList(),
        study.protocol().stream().map(row -> row.in(folder)).toList(),
        study.sources().stream().map(file -> file.in(folder)).toList(),
        study.findings().stream().map(finding -> finding.in(folder)).toList());
  }

  private OpenedStudy joined() throws StudyException {
    Map<String, Row> rows = new LinkedHashMap<>();
    studies.forEach((folder, study) -> rows.put(folder, study.settings()));
    PooledSettings.Outcome settings = PooledSettings.of(rows);
    PooledBuilds builds = PooledBuilds.of(studies);
    PooledRuns runs = PooledRuns.of(studies, builds);
    PooledPots pots = PooledPots.of(studies, settings.all());
    PooledClaims claims = new PooledClaims(studies, builds);
    List<Ring> rings = builds.rings();
    List<Hole> holes = builds.holes();
    studies.values().forEach(study -> findings.addAll(study.findings()));
    findings.addAll(settings.findings());
    findings.addAll(builds.findings());
    findings.addAll(runs.findings());
    findings.addAll(pots.findings());
    Study study =
        new Study(
            String.join(", ", studies.keySet()),
            settings.all(),
            settings.own(),
            builds.builds(),
            rings,
            holes,
            pots.pots(),
            runs.runs(),
            runs.marks(),
            studies.values().stream().flatMap(it -> it.sensors().stream()).toList(),
            claims.claims(),
            claims.protocol(),
            studies.values().stream().flatMap(it -> it.sources().stream()).toList(),
            findings.stream().sorted().toList());
    return new OpenedStudy(study, opener(runs), this::input);
  }

  /** Names of files start with that of their folder, which may hold no slash. */
  private InputStream input(SourceFile file) throws IOException {
    int slash = file.name().indexOf('/');
    SourceFile inside =
        new SourceFile(file.name().substring(slash + 1), file.bytes(), file.sha256());
    return Objects.requireNonNull(inputs.get(file.name().substring(0, slash))).open(inside);
  }

  private LogOpener opener(PooledRuns runs) {
    return new LogOpener() {
      @Override
      public OpenedLog open(Run run) {
        return of(run).open(runs.original(run.key())).in(run.key().study());
      }

      @Override
      public long bytes(Run run) {
        return of(run).bytes(runs.original(run.key()));
      }

      private LogOpener of(Run run) {
        return Objects.requireNonNull(logs.get(run.key().study()));
      }
    };
  }
}
