package fairboil.analysis;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.run.BoilResult;
import fairboil.analysis.run.BoilState;
import fairboil.analysis.run.Conditions;
import fairboil.analysis.run.EnergyResult;
import fairboil.analysis.run.FlameResult;
import fairboil.analysis.run.FuelResult;
import fairboil.analysis.run.Inclusion;
import fairboil.analysis.run.RunResult;
import fairboil.analysis.run.RunSketch;
import fairboil.analysis.run.Timeline;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Message;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Run;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The result of an invented run: a peak, a boil time and an ambient, as far as they are given. */
public final class TestRun {

  private static final Figure NOT_GIVEN = Figure.unknown("it was not given");

  private final Study study;
  private final Run run;
  private Optional<String> excluded = Optional.empty();
  private BoilState state = BoilState.told(Outcome.BOILED);
  private OptionalDouble peak = OptionalDouble.empty();
  private OptionalDouble boilTime = OptionalDouble.empty();
  private OptionalDouble ambient = OptionalDouble.empty();
  private OptionalDouble fuel = OptionalDouble.empty();
  private OptionalDouble boilOnly = OptionalDouble.empty();
  private OptionalDouble others = OptionalDouble.empty();
  private double shared;
  private Key sensor = TestStudy.key("probe");

  private TestRun(Study study, Run run) {
    this.study = study;
    this.run = run;
  }

  /** The run of that name. */
  public static TestRun of(Study study, String name) {
    Run run =
        study.runs().stream()
            .filter(each -> each.key().name().equals(name))
            .findFirst()
            .orElseThrow();
    return new TestRun(study, run);
  }

  /** Leaves the run out. */
  public TestRun excluded(String reason) {
    excluded = Optional.of(reason);
    return this;
  }

  /** How it ended. */
  public TestRun outcome(Outcome value) {
    state = BoilState.told(value);
    return this;
  }

  /** Nobody saw how it ended. */
  public TestRun notSeen() {
    state = new BoilState.NotSeen(Optional.empty(), Message.plain("the run has no log"));
    return this;
  }

  /** Peak, normalised peak and steady flame, °C. */
  public TestRun peak(double value) {
    peak = OptionalDouble.of(value);
    return this;
  }

  /** Boil time and normalised boil time, s. */
  public TestRun boilTime(double value) {
    boilTime = OptionalDouble.of(value);
    return this;
  }

  /** Dry fuel for one boil, kg. */
  public TestRun fuel(double value) {
    fuel = OptionalDouble.of(value);
    return this;
  }

  /** Every measure of a run, in the units that are held. */
  public TestRun everything(double value) {
    boilOnly = OptionalDouble.of(value);
    boilTime = boilOnly;
    return everythingButABoil(value);
  }

  /** Every measure of a run that needs no boil, in the units that are held. */
  public TestRun everythingButABoil(double value) {
    others = OptionalDouble.of(value);
    return peak(value);
  }

  /** Air temperature, °C. */
  public TestRun ambient(double value) {
    ambient = OptionalDouble.of(value);
    return this;
  }

  /** What the readings of one flame sensor share, K. */
  public TestRun shared(double value) {
    shared = value;
    return this;
  }

  /** The flame sensor, if it is not the one that all other runs have. */
  public TestRun sensor(String name) {
    return sensor(TestStudy.key(name));
  }

  /** The flame sensor, which may be of another study. */
  public TestRun sensor(Key key) {
    sensor = key;
    return this;
  }

  /** The result. */
  public RunResult result() {
    Figure flame = flame();
    Figure boil = known(boilTime, Dimension.DURATION);
    return new RunResult(
        run,
        study.build(run.build()).orElseThrow(),
        new Inclusion(excluded.map(Inclusion::asWritten), Optional.empty(), Optional.empty()),
        state,
        new Conditions(
            known(ambient, Dimension.TEMPERATURE),
            NOT_GIVEN,
            NOT_GIVEN,
            NOT_GIVEN,
            NOT_GIVEN,
            NOT_GIVEN),
        new Timeline(List.of()),
        new FlameResult(flame, NOT_GIVEN, NOT_GIVEN, NOT_GIVEN, flame, flame),
        new BoilResult(
            boil,
            Optional.empty(),
            NOT_GIVEN,
            NOT_GIVEN,
            NOT_GIVEN,
            NOT_GIVEN,
            NOT_GIVEN,
            known(boilOnly, Dimension.DURATION),
            known(others, Dimension.DURATION)),
        new EnergyResult(
            known(boilOnly, Dimension.POWER),
            NOT_GIVEN,
            NOT_GIVEN,
            boil,
            NOT_GIVEN,
            boil,
            Optional.empty()),
        new FuelResult(
            NOT_GIVEN,
            NOT_GIVEN,
            known(others, Dimension.POWER),
            known(others, Dimension.RATIO),
            NOT_GIVEN,
            NOT_GIVEN,
            fuel.isPresent() ? known(fuel, Dimension.MASS) : known(boilOnly, Dimension.MASS)),
        new RunSketch(List.of(), 10, Optional.empty()),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of());
  }

  private Figure flame() {
    if (peak.isEmpty()) {
      return NOT_GIVEN;
    }
    Budget budget =
        Budget.of(
            BudgetLine.independent(Influence.NOISE, 2),
            BudgetLine.shared(Influence.SENSOR_TOLERANCE, shared, sensor));
    return budget.around(peak.getAsDouble(), Dimension.TEMPERATURE);
  }

  private static Figure known(OptionalDouble value, Dimension dimension) {
    return value.isPresent()
        ? Figure.known(Measured.of(value.getAsDouble(), 0, dimension))
        : NOT_GIVEN;
  }
}
