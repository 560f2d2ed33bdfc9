package fairboil.demo;

import fairboil.demo.PlainStudy.PlainBuild;
import fairboil.demo.PlainStudy.PlainRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A study that can be worked out with pencil and paper, to lay a ruler against: the flame of each
 * burn is flat and without noise, so that its peak is the very number typed here; holes are off by
 * the same distance to and fro, so that the hole-position error is that distance; the air is at the
 * reference temperature, so that normalising changes nothing.
 */
final class RulerStudy {

  /** Hole-position error of each build, mm. */
  static final List<Double> RMS = List.of(0.5, 0.9, 1.4, 2.1, 2.6, 3.3);

  /** Peak of each burn of each build, °C. */
  static final List<List<Integer>> PEAKS =
      List.of(
          List.of(712, 705, 709),
          List.of(709, 718, 712),
          List.of(694, 685, 691),
          List.of(688, 696, 690),
          List.of(697, 688, 695),
          List.of(670, 678, 671));

  /**
   * The line through the means of the builds. R 4.2.2: {@code m <- sapply(peaks, mean)}, {@code f
   * <- lm(m ~ rms)}, {@code coef(summary(f))}, {@code confint(f)}, {@code f$df.residual}.
   */
  static final Line BUILD_MEANS =
      new Line(-11.95035460993, 3.196241318263, 4, -20.82454317305, -3.076166046808);

  /**
   * The line through all burns, as if each were a stove. R 4.2.2: {@code y <- unlist(peaks)},
   * {@code x <- rep(rms, each = 3)}, {@code g <- lm(y ~ x)}, then as above.
   */
  static final Line BURN_LEVEL =
      new Line(-11.95035460993, 1.840869499950, 16, -15.85282361805, -8.04788560181);

  /**
   * What R makes of the slope, K/mm.
   *
   * @param slope the estimate
   * @param standardError its standard error
   * @param degreesOfFreedom of its 95 % interval
   * @param low the lower end of the interval
   * @param high its upper end
   */
  record Line(double slope, double standardError, int degreesOfFreedom, double low, double high) {}

  private static final double AIR = 20;
  private static final PlainStudy.Ring RING = new PlainStudy.Ring(12, 300, 14);
  private static final Burn.Times TIMES = new Burn.Times(0, 30, 80, 900, 920, 1000);

  private RulerStudy() {}

  /** The files of the study. */
  static Map<String, String> files() {
    List<PlainBuild> builds = new ArrayList<>();
    List<PlainRun> runs = new ArrayList<>();
    for (int i = 0; i < RMS.size(); i++) {
      String build = "R" + (i + 1);
      builds.add(new PlainBuild(build, RMS.get(i), toAndFro(RMS.get(i))));
      for (int burn = 0; burn < PEAKS.get(i).size(); burn++) {
        runs.add(run(build, build + "-" + (burn + 1), PEAKS.get(i).get(burn)));
      }
    }
    return new PlainStudy("Ruler (invented)", 0, RING, builds, runs).files();
  }

  private static List<Spot> toAndFro(double rms) {
    return IntStream.range(0, RING.holes())
        .mapToObj(hole -> new Spot(hole % 2 == 0 ? rms : -rms, 0))
        .toList();
  }

  private static PlainRun run(String build, String name, int peak) {
    Burn.Pot pot = PlainStudy.pot(0.8, 15, 1);
    Burn.Fire fire = new Burn.Fire(650, 0, peak, 0, 0);
    Happened happened = Happened.in(new Burn(new Air(AIR, 101_325), pot, fire, TIMES));
    int size = TIMES.readings();
    Series flame = Series.of(size, second -> flame(second, peak));
    Readings readings =
        new Readings(0, flame, happened.water().celsius(), Series.of(size, second -> AIR));
    return new PlainRun(name, build, happened, readings);
  }

  private static double flame(int second, int peak) {
    if (second <= 0) {
      return AIR;
    }
    if (second < TIMES.potOn()) {
      return AIR + (peak - AIR) * second / TIMES.potOn();
    }
    return second <= TIMES.flameOut() ? peak : AIR + (peak - AIR) * 0.1;
  }
}
