package fairboil.analysis.normalise;

import fairboil.analysis.TestStudy;
import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.heat.BlockMeans;
import fairboil.analysis.heat.CoolingFit;
import fairboil.analysis.run.BoilResult;
import fairboil.analysis.run.BoilState;
import fairboil.analysis.run.Conditions;
import fairboil.analysis.run.EnergyResult;
import fairboil.analysis.run.FlameResult;
import fairboil.analysis.run.FuelResult;
import fairboil.analysis.run.HeatRecord;
import fairboil.analysis.run.Inclusion;
import fairboil.analysis.run.RunResult;
import fairboil.analysis.run.RunSketch;
import fairboil.analysis.run.Timeline;
import fairboil.analysis.trace.Trace;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Lid;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Message;
import fairboil.ingest.sheet.PotGiven;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * What people tell and probes show of a simulated burn: each figure off by a draw from its stated
 * uncertainty.
 */
final class Told {

  static final double WATER = 0.002;
  static final double START = 0.5;
  static final double AIR = 0.5;
  static final double BOILING_POINT = 0.2;
  static final double BOIL_TIME = 2;
  static final double POT_SHARE = 0.05;

  private static final Figure NOT_GIVEN = Figure.unknown("it was not given");

  private final SimulatedBurn burn;
  private final SimulatedBurn.Course course;
  private final Trace trace;
  private final RandomGenerator random;
  private final double doubt;

  /**
   * What is told.
   *
   * @param doubt how much of the stated uncertainties is truly there: 1, or next to none for tests
   *     of the estimate alone
   */
  Told(
      SimulatedBurn burn,
      SimulatedBurn.Course course,
      Trace trace,
      RandomGenerator random,
      double doubt) {
    this.burn = burn;
    this.course = course;
    this.trace = trace;
    this.random = random;
    this.doubt = doubt;
  }

  private double off(double u) {
    return doubt * u * random.nextGaussian();
  }

  private Figure told(double truth, double u, Influence influence, Dimension dimension) {
    return Budget.of(BudgetLine.independent(influence, doubt * u))
        .around(truth + off(u), dimension);
  }

  /** A study of one run in a pot of its own. */
  static Study study(Lid lid) {
    return new TestStudy()
        .build("A", "plain")
        .run(
            "1",
            "A",
            row -> row.put(RunsSheet.LID, lid).put(RunsSheet.POT, new PotGiven.Named("billy")))
        .finish();
  }

  RunResult result(Study study, double boilTime) {
    return result(study, study.runs().get(0), boilTime);
  }

  RunResult result(Study study, Run run, double boilTime) {
    Figure water = told(burn.water(), WATER, Influence.WATER_MASS, Dimension.MASS);
    Figure boil =
        Double.isNaN(boilTime)
            ? NOT_GIVEN
            : told(boilTime, BOIL_TIME, Influence.BOIL_TIME, Dimension.DURATION);
    double pot = burn.pot() + off(POT_SHARE * burn.pot());
    return new RunResult(
        run,
        study.build(run.build()).orElseThrow(),
        new Inclusion(
            run.row().value(RunsSheet.EXCLUDE).map(Inclusion::asWritten),
            Optional.empty(),
            run.row().value(RunsSheet.EXCLUDE_BOIL).map(Inclusion::asWritten)),
        BoilState.told(Outcome.BOILED),
        new Conditions(
            told(burn.ambient(), AIR, Influence.AMBIENT, Dimension.TEMPERATURE),
            NOT_GIVEN,
            told(
                burn.boilingPoint(), BOILING_POINT, Influence.BOILING_POINT, Dimension.TEMPERATURE),
            water,
            told(burn.start(), START, Influence.WATER_START, Dimension.TEMPERATURE),
            NOT_GIVEN),
        new Timeline(List.of()),
        new FlameResult(NOT_GIVEN, NOT_GIVEN, NOT_GIVEN, NOT_GIVEN, NOT_GIVEN, NOT_GIVEN),
        new BoilResult(
            boil,
            Optional.empty(),
            NOT_GIVEN,
            NOT_GIVEN,
            NOT_GIVEN,
            NOT_GIVEN,
            NOT_GIVEN,
            NOT_GIVEN,
            NOT_GIVEN),
        new EnergyResult(
            NOT_GIVEN,
            NOT_GIVEN,
            NOT_GIVEN,
            boil.isKnown() ? Budget.NONE.around(boilTime, Dimension.DURATION) : NOT_GIVEN,
            NOT_GIVEN,
            NOT_GIVEN,
            Optional.empty()),
        FuelResult.unknown(Message.plain("it was not given")),
        new RunSketch(List.of(), 10, Optional.empty()),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        heat(pot));
  }

  private HeatRecord heat(double pot) {
    double boil = course.boilAt();
    BlockMeans heating =
        BlockMeans.of(trace, Math.min(30, 0.1 * boil), boil, 60, 3, 0)
            .below(burn.boilingPoint() - 1.5);
    double end = trace.secondsAt(trace.size() - 1);
    BlockMeans cooling =
        BlockMeans.of(trace, course.potOff() + 30, end, 100, 3, course.potOff()).untilJump();
    return new HeatRecord(
        Optional.of(new HeatRecord.PotHeat(pot, doubt * POT_SHARE * burn.pot(), Optional.empty())),
        Optional.of(new HeatRecord.Part(0, heating)),
        Optional.of(new HeatRecord.Part(course.potOff(), cooling))
            .filter(part -> CoolingFit.isEnough(part.blocks())),
        Message.plain("its pot was not logged as it cooled"),
        told(course.waterLeft(), WATER, Influence.WATER_MASS, Dimension.MASS),
        0);
  }
}
