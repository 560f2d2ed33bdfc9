package fairboil.analysis.run;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.trace.Curve;
import fairboil.analysis.trace.Thinning;
import fairboil.ingest.Study;
import fairboil.ingest.finding.Ledger;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.log.Log;
import fairboil.ingest.log.LogOpener;
import fairboil.ingest.log.OpenedLog;
import fairboil.ingest.log.RowFate;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Works out one run: (run, log) in, {@link RunResult} out. Pure: the same run and log give the same
 * result. Safe to use from several threads at once.
 */
public final class RunAnalysis {

  private final Study study;
  private final References references;
  private final Feeds feeds;

  /** Works out runs of a study against reference conditions. */
  public RunAnalysis(Study study, References references) {
    this.study = Objects.requireNonNull(study, "study");
    this.references = Objects.requireNonNull(references, "references");
    this.feeds = Feeds.of(study);
  }

  /**
   * Works out a run.
   *
   * @param run a run of the study
   * @param logs opens its log, which is read once and dropped
   */
  public RunResult analyse(Run run, LogOpener logs) {
    RunContext context = new RunContext(study, references, run, new Findings());
    return analyse(context, Prepared.of(logs, context));
  }

  /**
   * The log of a run made ready.
   *
   * @param source the file, if there is one
   * @param rows what became of its lines, if it could be read
   */
  private record Prepared(
      PreparedLog log, Optional<SourceFile> source, Optional<Ledger<RowFate>> rows) {

    /** Opens the log; it is out of reach when this returns, so that its memory can be had again. */
    static Prepared of(LogOpener logs, RunContext context) {
      OpenedLog opened = logs.open(context.run());
      context.findings().addAll(opened.findings());
      return new Prepared(
          opened.log().map(read -> PreparedLog.of(read, context)).orElse(without(opened)),
          opened.source(),
          opened.log().map(Log::rows));
    }
  }

  private static PreparedLog without(OpenedLog opened) {
    boolean failed =
        opened.findings().stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    return failed ? PreparedLog.UNREAD : PreparedLog.NONE;
  }

  private RunResult analyse(RunContext context, Prepared prepared) {
    PreparedLog log = prepared.log();
    PlausibleBoil plausible = new PlausibleBoil(context, log);
    EventTimes events = plausible.marks(TimelineBuilder.build(context, log));
    AirFinder air = new AirFinder(context);
    PotFinder pots = new PotFinder(context);
    WaterFinder waters = new WaterFinder(context, pots);
    Figure ambient = air.ambient(log, events.timeline());
    Figure pressure = air.pressure();
    Figure boilingPoint = AirFinder.boilingPoint(pressure);
    Figure mass = waters.mass();
    Figure start = waters.start(log, events.timeline(), boilingPoint);
    WaterShown shown =
        plausible.shown(events, WaterShown.of(context, log, events.timeline(), boilingPoint));
    BoilResult boil = new BoilAnalysis(context, log, events, shown, boilingPoint).result();
    EnergyAnalysis energy = new EnergyAnalysis(context, pots, mass, start, boilingPoint);
    Conditions conditions =
        new Conditions(ambient, pressure, boilingPoint, mass, start, energy.heatCapacity());
    EnergyResult heated = energy.result(boil.boilTime());
    HeatRecord heat =
        new HeatRecorder(context, log, events, shown)
            .record(energy.potHeat(), mass, heated.netPower());
    FlameResult flame = new FlameAnalysis(context, log, events.timeline(), ambient).result();
    Inclusion inclusion = inclusion(context);
    BoilState state =
        new BoilStateFinder(context, log, events, shown, boilingPoint).find(inclusion);
    return new RunResult(
        context.run(),
        build(study, context.run()),
        inclusion,
        state,
        conditions,
        events.timeline(),
        flame,
        boil,
        heated,
        new FuelAnalysis(context, events, boil, conditions, waters.left(mass)).result(),
        sketch(context, log, shown),
        prepared.source(),
        prepared.rows(),
        ledgers(log),
        context.findings().sorted(),
        heat);
  }

  /** The build that was burnt, with nothing said of it where its sheet lacks it. */
  static Build build(Study study, Run run) {
    return study
        .build(run.build())
        .orElseGet(() -> new Build(run.build(), Row.at(run.row().place()).build()));
  }

  private Inclusion inclusion(RunContext context) {
    return new Inclusion(
        context.value(RunsSheet.EXCLUDE).map(Inclusion::asWritten).or(() -> feeds.apart(context)),
        context.value(RunsSheet.EXCLUDE_PEAK).map(Inclusion::asWritten),
        context.value(RunsSheet.EXCLUDE_BOIL).map(Inclusion::asWritten));
  }

  private static RunSketch sketch(RunContext context, PreparedLog log, WaterShown shown) {
    List<Curve> curves =
        log.channels().stream()
            .map(each -> Thinning.thin(each.name(), each.role(), each.trace()))
            .toList();
    return new RunSketch(curves, context.held(Settings.PEAK_HOLD), shown.sketch());
  }

  private static List<ChannelLedger> ledgers(PreparedLog log) {
    return log.channels().stream()
        .map(each -> new ChannelLedger(each.name(), each.role(), each.samples()))
        .toList();
  }
}
