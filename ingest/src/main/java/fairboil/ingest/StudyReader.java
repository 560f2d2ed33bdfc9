package fairboil.ingest;

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
import fairboil.ingest.sheet.Nearest;
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

  private StudyReader(StudyFolder folder) {
    this.folder = folder;
    this.study = folder.name();
    this.files = new SheetFiles(folder);
  }

  /**
   * Opens a study.
   *
   * @param folder the study folder
   * @throws StudyException if there is no such folder, or no {@code runs.csv} in it that can be
   *     read
   */
  public static OpenedStudy open(Path folder) throws StudyException {
    try {
      StudyReader reader = new StudyReader(StudyFolder.at(folder));
      Study study = reader.read();
      LogOpener logs = new LogReader(reader.folder, study.name(), study.sensors());
      return new OpenedStudy(study, logs, reader.folder::reopen);
    } catch (UnreadableException e) {
      throw new StudyException(e.getMessage(), e);
    }
  }

  private Study read() throws StudyException, UnreadableException {
    List<Row> runRows = rows(runsGrid());
    Row settings = settings();
    RunTable runs = RunTable.of(study, runRows);
    BuildTable builds = BuildTable.of(study, rows(BuildsSheet.SCHEMA));
    runs.runs().forEach(run -> builds.named(run.build().name(), run.row().place(RunsSheet.BUILD)));
    RingTable rings = RingTable.of(study, rows(RingsSheet.SCHEMA), builds);
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
    if (runs.runs().isEmpty() && findings.stream().noneMatch(StudyReader::isErrorOfRuns)) {
      findings.add(
          Finding.error(
              Place.of(RunsSheet.SCHEMA.file()),
              "it holds no run",
              "fill in one row for each burn, with at least the names of run and build"));
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
        RepeatedFindings.shortened(findings.stream().sorted().toList()).stream().sorted().toList());
  }

  @SafeVarargs
  private void note(List<Finding>... more) {
    for (List<Finding> some : more) {
      findings.addAll(some);
    }
  }

  private static boolean isErrorOfRuns(Finding finding) {
    return finding.severity() == Severity.ERROR
        && finding.place().file().equals(RunsSheet.SCHEMA.file());
  }

  private SheetRows runsGrid() throws StudyException, UnreadableException {
    Grid grid = files.read(RunsSheet.SCHEMA).orElseThrow(this::noRuns);
    return SheetReader.read(RunsSheet.SCHEMA, grid);
  }

  private StudyException noRuns() {
    List<String> names = files.names();
    String holds =
        names.isEmpty()
            ? "it holds no files"
            : "it holds "
                + String.join(", ", names.subList(0, Math.min(20, names.size())))
                + (names.size() > 20 ? " and others" : "");
    String remedy =
        names.stream().anyMatch(name -> name.toLowerCase(java.util.Locale.ROOT).endsWith(".xlsx"))
            ? "save the sheet of runs in the workbook as runs.csv"
            : Nearest.to("runs.csv", names)
                .map(likely -> "rename " + likely + " to runs.csv if that is the sheet of runs")
                .orElse("make one with the columns run and build, or give the right folder");
    return new StudyException(
        "There is no runs.csv in " + folder.name() + " (" + holds + "): " + remedy + ".");
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
                "there is a claim “"
                    + name
                    + "” on line "
                    + before.line().orElse(0)
                    + " already, so this row was set aside",
                "give each claim its own name"));
      }
    }
    return claims;
  }
}
