package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.RepeatedFindings;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.grid.Grid;
import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.grid.UnreadableException;
import fairboil.ingest.log.LogOpener;
import fairboil.ingest.log.LogReader;
import fairboil.ingest.sheet.BuildsSheet;
import fairboil.ingest.sheet.Claim;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.PotsSheet;
import fairboil.ingest.sheet.ProtocolSheet;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Sensor;
import fairboil.ingest.sheet.SensorsSheet;
import fairboil.ingest.sheet.Settings;
import fairboil.ingest.sheet.SettingsReader;
import fairboil.ingest.sheet.SheetReader;
import fairboil.ingest.sheet.SheetRows;
import fairboil.ingest.sheet.SheetSchema;
import fairboil.ingest.sheet.StopwatchReader;
import fairboil.ingest.sheet.StopwatchSheet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Opens a study folder: reads its sheets and joins them by name. What is wrong with a sheet, row or
 * cell is a finding of the study; everything else is read all the same. For one thread.
 */
public final class StudyReader {

  /** Every sheet that a study may have. */
  public static final List<SheetSchema> SHEETS =
      List.of(
          Settings.SCHEMA,
          BuildsSheet.SCHEMA,
          RingsSheet.SCHEMA,
          HolesSheet.SCHEMA,
          PotsSheet.SCHEMA,
          RunsSheet.SCHEMA,
          StopwatchSheet.SCHEMA,
          SensorsSheet.SCHEMA,
          ClaimsSheet.SCHEMA,
          ProtocolSheet.SCHEMA);

  private final StudyFolder folder;
  private final String study;
  private final SheetFiles files;
  private final List<Finding> findings = new ArrayList<>();

  private StudyReader(StudyFolder folder, String name, SheetFiles files) {
    this.folder = folder;
    this.study = name;
    this.files = files;
  }

  /**
   * Opens a study.
   *
   * @param folder the study folder
   * @throws StudyException if there is no such folder, or no {@code runs.csv} in it that can be
   *     read
   */
  public static OpenedStudy open(Path folder) throws StudyException {
    return open(folder, Optional.empty());
  }

  /** Opens a study under a name that is not that of its folder. */
  static OpenedStudy open(Path folder, String name) throws StudyException {
    return open(folder, Optional.of(name));
  }

  private static OpenedStudy open(Path folder, Optional<String> name) throws StudyException {
    try {
      StudyFolder inside = StudyFolder.at(folder);
      String study = name.orElseGet(inside::name);
      try (SheetFiles files = new SheetFiles(inside)) {
        Study sheets = new StudyReader(inside, study, files).read();
        LogOpener logs =
            TabNames.of(sheets.sources())
                .in(new LogReader(inside, sheets.name(), sheets.sensors()));
        return new OpenedStudy(sheets, logs, inside::reopen);
      }
    } catch (UnreadableException e) {
      throw new StudyException(e.finding(), e);
    }
  }

  private Study read() throws StudyException, UnreadableException {
    SheetRows runsSheet = runsSheet();
    findings.addAll(runsSheet.findings());
    Row settings = settings();
    RunTable runs = RunTable.of(study, runsSheet);
    BuildTable builds = BuildTable.of(study, rows(BuildsSheet.SCHEMA));
    runs.runs().forEach(run -> builds.named(run.build().name(), run.row().place(RunsSheet.BUILD)));
    RingTable rings = RingTable.of(study, rings(), builds);
    HoleTable holes = HoleTable.of(rows(HolesSheet.SCHEMA), builds, rings);
    PotTable pots = PotTable.of(study, rows(PotsSheet.SCHEMA));
    pots.check(runs.runs(), settings);
    MarkTable marks = MarkTable.of(rows(StopwatchSheet.SCHEMA, StopwatchReader::read), runs);
    List<Row> sensors = rows(SensorsSheet.SCHEMA);
    List<Row> protocol = rows(ProtocolSheet.SCHEMA);
    List<Claim> claims = claims(rows(ClaimsSheet.SCHEMA));
    ReferenceCheck references = new ReferenceCheck(runs.runs(), builds.builds());
    references.settings(settings, rings);
    references.protocol(protocol);
    references.sensors(sensors);
    note(runs.findings(), builds.findings(), rings.findings(), holes.findings());
    note(pots.findings(), marks.findings(), references.findings(), files.findings());
    note(ShownUnits.note(settings, runs.runs()));
    if (runs.runs().isEmpty() && findings.stream().noneMatch(isErrorOf(runsSheet.place()))) {
      findings.add(
          Finding.error(
              runsSheet.place(),
              TableSays.NO_RUNS.with(Argument.sheet(RunsSheet.SCHEMA.file())),
              TableSays.FILL_RUNS));
    }
    note(UnreadFiles.find(folder, SHEETS.stream().map(SheetSchema::file).toList(), runs.runs()));
    return new Study(
        study,
        settings,
        builds.builds(),
        rings.rings(),
        holes.holes(),
        pots.pots(),
        runs.runs(),
        marks.marks(),
        sensors.stream().map(row -> new Sensor(study, row)).toList(),
        claims,
        protocol,
        files.sources(),
        TabNames.of(files.sources()).in(shortened()));
  }

  private List<Finding> shortened() {
    return RepeatedFindings.shortened(findings.stream().sorted().toList()).stream()
        .sorted()
        .toList();
  }

  @SafeVarargs
  private void note(List<Finding>... more) {
    for (List<Finding> some : more) {
      findings.addAll(some);
    }
  }

  private static Predicate<Finding> isErrorOf(Place sheet) {
    return finding ->
        finding.severity() == Severity.ERROR && finding.place().file().equals(sheet.file());
  }

  private SheetRows runsSheet() throws StudyException, UnreadableException {
    Grid grid = files.read(RunsSheet.SCHEMA).orElseThrow(() -> NoRuns.in(folder, files));
    return SheetReader.read(RunsSheet.SCHEMA, grid);
  }

  private Row settings() {
    List<Row> rows = rows(Settings.SCHEMA, SettingsReader::read);
    return rows.isEmpty() ? SettingsReader.none() : rows.get(0);
  }

  private List<Row> rows(SheetSchema schema) {
    return rows(schema, grid -> SheetReader.read(schema, grid));
  }

  private List<Row> rows(SheetSchema schema, Function<Grid, SheetRows> reader) {
    Optional<SheetRows> sheet = files.grid(schema).map(reader);
    return sheet.map(this::rows).orElse(List.of());
  }

  private Optional<SheetRows> rings() {
    Optional<SheetRows> sheet =
        files.grid(RingsSheet.SCHEMA).map(grid -> SheetReader.read(RingsSheet.SCHEMA, grid));
    sheet.ifPresent(this::rows);
    return sheet;
  }

  private List<Row> rows(SheetRows sheet) {
    findings.addAll(sheet.findings());
    return sheet.rows();
  }

  private List<Claim> claims(List<Row> rows) {
    Map<String, Place> taken = new HashMap<>();
    List<Claim> claims = new ArrayList<>();
    for (Row row : rows) {
      String name = row.get(ClaimsSheet.CLAIM);
      Place before = taken.putIfAbsent(name, row.place());
      if (before == null) {
        claims.add(new Claim(new Key(study, name), row));
      } else {
        findings.add(
            Finding.error(
                row.place(ClaimsSheet.CLAIM),
                TableSays.SAME_CLAIM.with(Argument.cell(name), TableSays.line(before)),
                TableSays.NAME_CLAIMS));
      }
    }
    return claims;
  }
}
