package fairboil.demo;

import fairboil.demo.PlainStudy.PlainBuild;
import fairboil.demo.PlainStudy.PlainRun;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A study of any size to time programs with: logs of 20 minutes, one reading a second. From the top
 * of the project, after {@code mvn -q test-compile}: {@code java -cp reports/target/test-classes
 * fairboil.demo.BenchStudy FOLDER RUNS}.
 */
public final class BenchStudy {

  private static final long SEED = 3;
  private static final double ALTITUDE = 250;
  private static final PlainStudy.Ring RING = new PlainStudy.Ring(16, 314, 15);
  private static final Probes PROBES = new Probes(0, 0, 0.06, 0.1);
  private static final Burn.Times TIMES = new Burn.Times(0, 30, 90, 1040, 1070, 1199);

  private BenchStudy() {}

  /**
   * Writes the study.
   *
   * @param args the folder, and how many runs
   */
  public static void main(String[] args) throws IOException {
    StudyFiles.write(Path.of(args[0]), files(Integer.parseInt(args[1])));
  }

  /**
   * The files of a study of so many runs: 4 a build, or more where that would be over 50 builds.
   */
  static Map<String, String> files(int runs) {
    List<PlainBuild> builds = new ArrayList<>();
    List<PlainRun> burns = new ArrayList<>();
    int count = Math.max(1, Math.min(50, runs / 4));
    for (int i = 0; i < count; i++) {
      builds.add(build("B" + Decimal.twoDigits(i + 1)));
    }
    for (int i = 0; i < runs; i++) {
      PlainBuild build = builds.get(i % count);
      burns.add(run(build, build.name() + "-" + (i / count + 1)));
    }
    return new TreeMap<>(new PlainStudy("Bench (invented)", ALTITUDE, RING, builds, burns).files());
  }

  private static PlainBuild build(String name) {
    Chance chance = Chance.of(SEED, name);
    double rms = chance.between(0.4, 4);
    return new PlainBuild(name, rms, Drilling.wall(RING.holes(), rms, chance));
  }

  private static PlainRun run(PlainBuild build, String name) {
    Chance chance = Chance.of(SEED, name);
    Air air = new Air(chance.between(-5, 28), Air.pressureAt(ALTITUDE, 101_325));
    Burn.Pot pot = PlainStudy.pot(chance.between(0.6, 1), chance.between(8, 16), 1.1);
    Burn.Fire fire =
        new Burn.Fire(
            chance.between(580, 680),
            2e-4,
            700 - 12 * build.rms() + chance.gauss(8),
            chance.between(14, 24),
            3);
    Happened happened = Happened.in(new Burn(air, pot, fire, TIMES));
    return new PlainRun(name, build.name(), happened, PROBES.read(happened, chance));
  }
}
