package fairboil.reports;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.run.BoilResult;
import fairboil.analysis.run.BoilResult.BoilTimeFrom;
import fairboil.analysis.run.BoilState;
import fairboil.analysis.run.ChannelLedger;
import fairboil.analysis.run.Conditions;
import fairboil.analysis.run.EnergyResult;
import fairboil.analysis.run.FlameResult;
import fairboil.analysis.run.FuelResult;
import fairboil.analysis.run.Inclusion;
import fairboil.analysis.run.RunResult;
import fairboil.analysis.run.RunSketch;
import fairboil.analysis.trace.SampleFate;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Ledger;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.log.RowFate;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.reports.SampleTrace.Ending;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** One invented run of the sample study, worked out. Nothing here was measured. */
final class SampleRun {

  private static final double BOILING_POINT = 98.9;
  private static final Key FLAME_PROBE = new Key("sample", "flame probe");

  private final Build build;
  private final String name;
  private final int line;
  private final Kind kind;
  private final double ambient;
  private final double water;
  private final double start;
  private final double boilTime;
  private final double peak;
  private final SampleTrace trace;

  /** What is particular about a run. */
  enum Kind {
    ORDINARY,
    EXCLUDED,
    TOO_WEAK,
    WENT_OUT,
    STOPWATCH_ONLY
  }

  SampleRun(
      Build build,
      String name,
      int line,
      Kind kind,
      double normalisedPeak,
      double normalisedBoilTime,
      Random random) {
    this.build = build;
    this.name = name;
    this.line = line;
    this.kind = kind;
    ambient = -6 + 30 * random.nextDouble();
    water = 0.5 + 0.7 * random.nextDouble();
    start = Math.max(3, ambient * 0.6 + 6);
    boilTime = normalisedBoilTime * water * (BOILING_POINT - start) / 80;
    peak = normalisedPeak - 20 + ambient;
    Ending ending =
        kind == Kind.TOO_WEAK
            ? Ending.TOO_WEAK
            : kind == Kind.WENT_OUT ? Ending.GOES_OUT : Ending.BOILS;
    trace = new SampleTrace(start, ambient, boilTime, BOILING_POINT, peak, ending, random);
  }

  private boolean boiled() {
    return kind != Kind.TOO_WEAK && kind != Kind.WENT_OUT;
  }

  private boolean hasLog() {
    return kind != Kind.STOPWATCH_ONLY;
  }

  RunResult result() {
    return new RunResult(
        run(),
        build,
        inclusion(),
        BoilState.told(outcome()),
        conditions(),
        trace.timeline(),
        hasLog() ? flame() : FlameResult.unknown(Message.plain("the run has no log")),
        boil(),
        energy(),
        fuel(),
        hasLog() ? trace.sketch() : new RunSketch(List.of(), 10, Optional.empty()),
        hasLog()
            ? Optional.of(new SourceFile("logs/" + name + ".csv", 48_211, "ab".repeat(32)))
            : Optional.empty(),
        hasLog()
            ? Optional.of(
                new Ledger<RowFate>(1513, 1510, Map.of(RowFate.HEADER, 1L, RowFate.COMMENT, 2L)))
            : Optional.empty(),
        hasLog() ? samples() : List.of(),
        findings());
  }

  private Run run() {
    Row row =
        Row.at(Place.of("runs.csv", line))
            .put(RunsSheet.RUN, name)
            .put(RunsSheet.BUILD, build.key().name())
            .put(RunsSheet.AMBIENT, Quantity.of(ambient, Unit.CELSIUS))
            .put(RunsSheet.WATER, Quantity.of(water, Unit.KILOGRAM))
            .put(RunsSheet.OUTCOME, outcome())
            .put(RunsSheet.TESTER, line % 2 == 0 ? "Ida" : "Omar")
            .put(RunsSheet.FUEL, "spruce pellets")
            .build();
    return new Run(new Key(build.key().study(), name), build.key(), row);
  }

  private Outcome outcome() {
    return switch (kind) {
      case TOO_WEAK -> Outcome.DID_NOT_BOIL;
      case WENT_OUT -> Outcome.WENT_OUT;
      default -> Outcome.BOILED;
    };
  }

  private Inclusion inclusion() {
    return new Inclusion(
        kind == Kind.EXCLUDED
            ? Optional.of(Inclusion.asWritten("pot knocked over"))
            : Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private Conditions conditions() {
    return new Conditions(
        temperature(ambient, 0.5),
        Figure.known(Measured.of(97_400, 60, Dimension.PRESSURE)),
        temperature(BOILING_POINT, 0.02),
        Figure.known(Measured.of(water, 0.003, Dimension.MASS)),
        temperature(start, 0.4),
        Figure.known(Measured.of(water * 4186 + 220, 25, Dimension.ENERGY)));
  }

  private FlameResult flame() {
    Budget budget =
        Budget.of(
            BudgetLine.independent(Influence.NOISE, 2.6),
            BudgetLine.independent(Influence.PEAK_BIAS, 1.4),
            BudgetLine.shared(Influence.SENSOR_TOLERANCE, 3.4, FLAME_PROBE));
    return new FlameResult(
        budget.around(peak, Dimension.TEMPERATURE),
        Figure.known(Measured.of(trace.peakAt(), 3, Dimension.DURATION)),
        budget.around(peak - ambient, Dimension.TEMPERATURE_DIFFERENCE),
        Figure.known(Measured.of(6.2, 1.4, Dimension.TEMPERATURE_DIFFERENCE)),
        budget.around(peak + 20 - ambient, Dimension.TEMPERATURE),
        budget.around(peak - 31, Dimension.TEMPERATURE));
  }

  private BoilResult boil() {
    String reason = kind == Kind.WENT_OUT ? "the flame went out" : "the water did not boil";
    boolean log = boiled() && hasLog();
    return new BoilResult(
        boiled() ? duration(boilTime, 2.1) : Figure.unknown(reason),
        boiled()
            ? Optional.of(hasLog() ? BoilTimeFrom.LOG : BoilTimeFrom.STOPWATCH)
            : Optional.empty(),
        log ? duration(boilTime, 2.1) : Figure.unknown(hasLog() ? reason : "the run has no log"),
        boiled() ? duration(boilTime + 4, 1.4) : Figure.unknown(reason),
        hasLog() ? temperature(trace.hottestWater(), 0.6) : Figure.unknown("the run has no log"),
        log ? temperature(BOILING_POINT, 0.3) : Figure.unknown(reason),
        log
            ? Figure.known(Measured.of(0.1, 0.3, Dimension.TEMPERATURE_DIFFERENCE))
            : Figure.unknown(reason),
        boiled() ? duration(boilTime + 70, 2.3) : Figure.unknown(reason),
        duration(trace.flameOut() - 25, 3));
  }

  private EnergyResult energy() {
    if (!boiled()) {
      Figure unknown = Figure.unknown("the water did not boil");
      return new EnergyResult(
          unknown, unknown, unknown, unknown, unknown, unknown, Optional.empty());
    }
    double normalised = boilTime * 80 / (water * (BOILING_POINT - start));
    Figure scaled =
        Budget.of(
                BudgetLine.independent(Influence.BOIL_TIME, 2.4),
                BudgetLine.independent(Influence.WATER_START, 3.1),
                BudgetLine.shared(Influence.SCALE, 1.1, new Key("sample", "scale")))
            .around(normalised, Dimension.DURATION);
    double power = (water * 4186 + 220) * (BOILING_POINT - start) / boilTime;
    return new EnergyResult(
        Figure.known(Measured.of(power, 14, Dimension.POWER)),
        Figure.unknown("heat balance was not asked for"),
        Figure.unknown("the log holds no cooling"),
        scaled,
        Figure.unknown("heat balance was not asked for"),
        scaled,
        Optional.of(NormaliseBy.ENERGY_SCALING));
  }

  private static FuelResult fuel() {
    return FuelResult.unknown(Message.plain("the fuel was not weighed"));
  }

  private static List<ChannelLedger> samples() {
    return List.of(
        new ChannelLedger(
            "flame (°C)",
            Role.FLAME,
            new Ledger<SampleFate>(
                1510,
                1481,
                Map.of(SampleFate.GAP, 21L, SampleFate.SPIKE, 3L, SampleFate.FAULT, 5L))),
        new ChannelLedger("water (°C)", Role.WATER, new Ledger<SampleFate>(1510, 1510, Map.of())));
  }

  private List<Finding> findings() {
    return hasLog()
        ? List.of(
            Finding.note(
                Place.of("logs/" + name + ".csv", 297, "flame (°C)"),
                "21 readings in a row are empty",
                ""))
        : List.of(
            Finding.warning(
                Place.of("runs.csv", line, "log"),
                "run " + name + " has no log: only the stopwatch tells its boil time",
                "add the log, or leave it so"));
  }

  private static Figure temperature(double celsius, double u) {
    return Figure.known(Measured.of(celsius, u, Dimension.TEMPERATURE));
  }

  private static Figure duration(double seconds, double u) {
    return Figure.known(Measured.of(seconds, u, Dimension.DURATION));
  }
}
