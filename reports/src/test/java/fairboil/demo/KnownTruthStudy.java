package fairboil.demo;

import fairboil.demo.PlainStudy.PlainBuild;
import fairboil.demo.PlainStudy.PlainRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A small study whose right answers are known: 8 builds of 4 burns. The flame is noisy by 3 °C, and
 * nothing else is amiss: what a program finds can be laid beside what truly happened.
 */
final class KnownTruthStudy {

  /** Standard deviation of the flame readings, K. */
  static final double FLAME_NOISE = 3;

  private static final double FLAME_MEMORY = 1;
  private static final double FLAME_PER_MM = -12;
  private static final double ALTITUDE = 300;
  private static final double[] RMS = {0.4, 0.7, 1.2, 1.6, 2.1, 2.7, 3.2, 4.0};
  private static final int BURNS = 4;
  private static final PlainStudy.Ring RING = new PlainStudy.Ring(16, 304, 12);
  private static final Probes PROBES = new Probes(0, 0, 0.05, 0.1);

  private final List<BuildTruth> builds = new ArrayList<>();
  private final List<RunTruth> runs = new ArrayList<>();
  private final List<PlainBuild> plainBuilds = new ArrayList<>();
  private final List<PlainRun> plainRuns = new ArrayList<>();

  /** The study that a seed makes. */
  KnownTruthStudy(long seed) {
    for (int i = 0; i < RMS.length; i++) {
      build("K" + (i + 1), RMS[i], seed);
    }
  }

  /**
   * What is true of a build.
   *
   * @param build its name
   * @param rms its hole-position error, mm
   */
  record BuildTruth(String build, double rms) {}

  /**
   * What is true of a run.
   *
   * @param run its name
   * @param build its build
   * @param ambient the air, °C
   * @param heldPeak highest mean of the noise-free flame over 10 s, °C
   * @param boilTime from pot on to the boil, s
   */
  record RunTruth(String run, String build, double ambient, double heldPeak, double boilTime) {

    /** The peak restated for an air of 20 °C, degree for degree. */
    double normalisedPeak() {
      return heldPeak + (20 - ambient);
    }
  }

  /** What is true of each build. */
  List<BuildTruth> builds() {
    return List.copyOf(builds);
  }

  /** What is true of each run. */
  List<RunTruth> runs() {
    return List.copyOf(runs);
  }

  /** The files of the study. */
  Map<String, String> files() {
    return new PlainStudy("Known truth (invented)", ALTITUDE, RING, plainBuilds, plainRuns).files();
  }

  private void build(String name, double rms, long seed) {
    Chance chance = Chance.of(seed, name);
    builds.add(new BuildTruth(name, rms));
    plainBuilds.add(new PlainBuild(name, rms, Drilling.wall(RING.holes(), rms, chance)));
    double flame = 690 + FLAME_PER_MM * (rms - 2) + chance.gauss(5);
    for (int burn = 1; burn <= BURNS; burn++) {
      run(name, name + "-" + burn, flame, chance);
    }
  }

  private void run(String build, String name, double flame, Chance chance) {
    Happened happened = Happened.in(burn(flame, chance));
    plainRuns.add(new PlainRun(name, build, happened, PROBES.read(happened, chance)));
    runs.add(
        new RunTruth(
            name,
            build,
            happened.burn().air().celsius(),
            happened.heldPeak(),
            happened.boilTime()));
  }

  private static Burn burn(double flame, Chance chance) {
    double sea = 101_325 + chance.gauss(800);
    double celsius = Decimal.rounded(chance.between(-6, 28), 1);
    Air air = new Air(celsius, Math.rint(Air.pressureAt(ALTITUDE, sea)));
    double water = Decimal.rounded(chance.between(0.55, 1.15), 3);
    double start = Decimal.rounded(chance.between(5, 18), 1);
    Burn.Fire fire =
        new Burn.Fire(
            chance.between(520, 720),
            chance.between(0, 3e-4),
            flame + chance.gauss(5),
            FLAME_NOISE,
            FLAME_MEMORY);
    int potOn = chance.whole(60, 100);
    Burn.Pot pot = PlainStudy.pot(water, start, chance.between(0.9, 1.4));
    Burn endless = new Burn(air, pot, fire, new Burn.Times(0, 30, potOn, 9000, 9000, 3000));
    int flameOut = (int) PotModel.of(endless).boilAt() + chance.whole(200, 400);
    return endless.at(endless.times().withEnd(flameOut, flameOut + 20, flameOut + 200));
  }
}
