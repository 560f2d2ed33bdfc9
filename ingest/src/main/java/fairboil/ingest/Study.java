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
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The sheets of a study folder, read: everything but the logs. Immutable; all lists are
 * unmodifiable. Builds, pots and marks are found by key without a search.
 */
public final class Study {

  private final String name;
  private final Row settings;
  private final List<Build> builds;
  private final List<Ring> rings;
  private final List<Hole> holes;
  private final List<Pot> pots;
  private final List<Run> runs;
  private final List<Mark> marks;
  private final List<Sensor> sensors;
  private final List<Claim> claims;
  private final List<Row> protocol;
  private final List<SourceFile> sources;
  private final List<Finding> findings;
  private final Map<String, Row> ownSettings;
  private final Map<Key, Build> buildByKey;
  private final Map<Key, Pot> potByKey;
  private final Map<Key, List<Mark>> marksByRun = new HashMap<>();
  private final Map<Key, List<Mark>> askedByRun = new HashMap<>();

  /**
   * A study of what its sheets hold; see the method of each name for what it is. Lists are copied.
   */
  public Study(
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
    this(
        name, settings, Map.of(), builds, rings, holes, pots, runs, marks, sensors, claims,
        protocol, sources, findings);
  }

  /**
   * Several studies as one.
   *
   * @param ownSettings for each study, as keys name it, the settings that hold for it
   */
  Study(
      String name,
      Row settings,
      Map<String, Row> ownSettings,
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
    this.ownSettings = Map.copyOf(ownSettings);
    this.name = name;
    this.settings = settings;
    this.builds = List.copyOf(builds);
    this.rings = List.copyOf(rings);
    this.holes = List.copyOf(holes);
    this.pots = List.copyOf(pots);
    this.runs = List.copyOf(runs);
    this.marks = List.copyOf(marks);
    this.sensors = List.copyOf(sensors);
    this.claims = List.copyOf(claims);
    this.protocol = List.copyOf(protocol);
    this.sources = List.copyOf(sources);
    this.findings = List.copyOf(findings);
    this.buildByKey = firstByKey(builds, Build::key);
    this.potByKey = firstByKey(pots, Pot::key);
    for (Mark mark : marks) {
      (mark.isAsked() ? askedByRun : marksByRun)
          .computeIfAbsent(mark.run(), run -> new ArrayList<>())
          .add(mark);
    }
    marksByRun.replaceAll((run, some) -> List.copyOf(some));
    askedByRun.replaceAll((run, some) -> List.copyOf(some));
  }

  private static <T> Map<Key, T> firstByKey(List<T> things, Function<T, Key> key) {
    Map<Key, T> byKey = new HashMap<>();
    things.forEach(thing -> byKey.putIfAbsent(key.apply(thing), thing));
    return byKey;
  }

  /** The name of the study: that of its folder. */
  public String name() {
    return name;
  }

  /** The settings, one cell each, of {@link fairboil.ingest.sheet.Settings}. */
  public Row settings() {
    return settings;
  }

  /**
   * The settings that hold for a run or a build: where several studies were read as one, with what
   * its own folder tells of its place and instruments.
   */
  public Row settingsOf(Key key) {
    return ownSettings.getOrDefault(key.study(), settings);
  }

  /** The folders that were read as one, in order; empty if this is a single study. */
  public List<String> folders() {
    return ownSettings.keySet().stream().sorted().toList();
  }

  /**
   * The builds in the order of {@code builds.csv}, then those that only runs or holes name, in the
   * order in which they do.
   */
  public List<Build> builds() {
    return builds;
  }

  /** The rings as intended. */
  public List<Ring> rings() {
    return rings;
  }

  /** The holes as measured. */
  public List<Hole> holes() {
    return holes;
  }

  /** The pots. */
  public List<Pot> pots() {
    return pots;
  }

  /** The runs, in the order of {@code runs.csv}. */
  public List<Run> runs() {
    return runs;
  }

  /** The stopwatch marks, those asked about too, in the order of {@code stopwatch.csv}. */
  public List<Mark> marks() {
    return marks;
  }

  /** The columns of logs that were described. */
  public List<Sensor> sensors() {
    return sensors;
  }

  /** The claims. */
  public List<Claim> claims() {
    return claims;
  }

  /** What a group agreed: rows of {@link fairboil.ingest.sheet.ProtocolSheet}. */
  public List<Row> protocol() {
    return protocol;
  }

  /** The sheets that were read, with their fingerprints. */
  public List<SourceFile> sources() {
    return sources;
  }

  /** The same findings, as this study is told of them: a workbook has tabs instead of files. */
  public List<Finding> told(List<Finding> findings) {
    return TabNames.of(sources).in(findings);
  }

  /** What a reader should know of the sheets, sorted. */
  public List<Finding> findings() {
    return findings;
  }

  /** The build of that key, if the study has it. */
  public Optional<Build> build(Key key) {
    return Optional.ofNullable(buildByKey.get(key));
  }

  /** The pot of that key, if the study has it. */
  public Optional<Pot> pot(Key key) {
    return Optional.ofNullable(potByKey.get(key));
  }

  /** The marks of a run that may be used, in the order of the sheet. */
  public List<Mark> marksOf(Key run) {
    return marksByRun.getOrDefault(run, List.of());
  }

  /** The marks of a run whose times are asked about, in the order of the sheet. */
  public List<Mark> askedOf(Key run) {
    return askedByRun.getOrDefault(run, List.of());
  }

  @Override
  public String toString() {
    return "Study[" + name + ", " + runs.size() + " runs of " + builds.size() + " builds]";
  }
}
