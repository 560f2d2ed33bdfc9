package fairboil.analysis.precision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.TestRun;
import fairboil.analysis.TestStudy;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.VarianceComponents;
import fairboil.analysis.precision.Precision.Layout;
import fairboil.analysis.precision.Repeatability.Level;
import fairboil.analysis.precision.Round.AtSite;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.RunsSheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrecisionTest {

  /** One run: its stove, its site, its value. */
  private record Burn(String stove, String site, double value) {}

  /** One stove, the values of each site. */
  private static List<Burn> round(double[][] sites) {
    List<Burn> burns = new ArrayList<>();
    for (int site = 0; site < sites.length; site++) {
      for (double value : sites[site]) {
        burns.add(new Burn("K1", "S" + (site + 1), value));
      }
    }
    return burns;
  }

  private static Repeatabilities.Outcome of(List<Burn> burns) {
    return of(burns, RunsSheet.SITE);
  }

  private static Repeatabilities.Outcome of(List<Burn> burns, Column<String> by) {
    TestStudy sheets = new TestStudy();
    Set<String> stoves = new LinkedHashSet<>();
    burns.forEach(burn -> stoves.add(burn.stove()));
    stoves.forEach(stove -> sheets.build(stove, "one"));
    for (int i = 0; i < burns.size(); i++) {
      Burn burn = burns.get(i);
      sheets.run("R" + i, burn.stove(), row -> row.put(by, burn.site()));
    }
    Study study = sheets.finish();
    List<RunResult> runs = new ArrayList<>();
    for (int i = 0; i < burns.size(); i++) {
      runs.add(TestRun.of(study, "R" + i).boilTime(burns.get(i).value()).result());
    }
    return Repeatabilities.of(runs, 0.95);
  }

  private static double sd(Repeatabilities.Outcome all, Level level) {
    return find(all, level).sd();
  }

  private static Repeatability find(Repeatabilities.Outcome all, Level level) {
    return all.scatter().stream()
        .filter(each -> each.level() == level && each.measure() == Measure.BOIL_TIME)
        .findFirst()
        .orElseThrow();
  }

  private static List<Level> levels(Repeatabilities.Outcome all) {
    return all.scatter().stream()
        .filter(each -> each.measure() == Measure.BOIL_TIME)
        .map(Repeatability::level)
        .toList();
  }

  private static Round round(Repeatabilities.Outcome all) {
    return all.precision().rounds().stream()
        .filter(each -> each.measure() == Measure.BOIL_TIME)
        .findFirst()
        .orElseThrow();
  }

  /** ISO 5725-2:1994, annex B.1, sulfur in coal, levels 1 to 4 (data cited from memory). */
  private static final double[][][] COAL = {
    {
      {.71, .71, .70, .71},
      {.69, .67, .68},
      {.66, .65, .69},
      {.67, .65, .66},
      {.70, .69, .66, .71, .69},
      {.73, .74, .73},
      {.71, .71, .69},
      {.70, .65, .68}
    },
    {
      {1.20, 1.18, 1.23, 1.21},
      {1.22, 1.21, 1.22},
      {1.28, 1.31, 1.30},
      {1.23, 1.18, 1.20},
      {1.31, 1.22, 1.22, 1.24},
      {1.39, 1.36, 1.37},
      {1.20, 1.26, 1.26},
      {1.24, 1.22, 1.30}
    },
    {
      {1.68, 1.70, 1.68, 1.69},
      {1.64, 1.64, 1.65},
      {1.61, 1.61, 1.62},
      {1.68, 1.66, 1.66},
      {1.64, 1.67, 1.60, 1.66, 1.68},
      {1.70, 1.73, 1.73},
      {1.69, 1.70, 1.68},
      {1.67, 1.68, 1.67}
    },
    {
      {3.26, 3.26, 3.20, 3.24},
      {3.20, 3.20, 3.20},
      {3.37, 3.36, 3.38},
      {3.16, 3.22, 3.23},
      {3.20, 3.19, 3.18, 3.27, 3.24},
      {3.27, 3.31, 3.29},
      {3.27, 3.24, 3.23},
      {3.25, 3.26, 3.26}
    }
  };

  /** The printed results: sr and sR to three decimals; and the same with R to five. */
  @ParameterizedTest
  @CsvSource({
    "1, 0.015, 0.026, 0.01512, 0.02160, 0.02636",
    "2, 0.029, 0.061, 0.02878, 0.05334, 0.06061",
    "3, 0.017, 0.035, 0.01708, 0.03028, 0.03477",
    "4, 0.026, 0.058, 0.02608, 0.05205, 0.05822"
  })
  void sulfurInCoal(int level, double sr, double sR, double fineSr, double sL, double fineSR) {
    Repeatabilities.Outcome all = of(round(COAL[level - 1]));
    assertThat(sd(all, Level.RUN_TO_RUN)).isCloseTo(sr, within(5e-4));
    assertThat(sd(all, Level.REPRODUCIBILITY)).isCloseTo(sR, within(5e-4));
    assertThat(sd(all, Level.RUN_TO_RUN)).isCloseTo(fineSr, within(5e-6));
    assertThat(sd(all, Level.BETWEEN_SITES)).isCloseTo(sL, within(5e-6));
    assertThat(sd(all, Level.REPRODUCIBILITY)).isCloseTo(fineSR, within(5e-6));
    assertThat(find(all, Level.REPRODUCIBILITY).limit().orElseThrow())
        .isCloseTo(2.8 * fineSR, within(2e-5));
    assertThat(all.precision().layout()).isEqualTo(Layout.SAME_STOVE);
  }

  /** ASTM E691, glucose in serum, materials A, D and E (data of the R package ILS). */
  private static final double[][][] GLUCOSE = {
    {
      {41.03, 41.45, 41.37},
      {41.17, 42.00, 41.15},
      {41.01, 40.68, 42.66},
      {39.37, 42.37, 42.63},
      {41.88, 41.19, 41.32},
      {43.28, 40.50, 42.28},
      {41.08, 41.27, 39.02},
      {43.36, 42.65, 41.72}
    },
    {
      {193.71, 193.59, 193.65},
      {190.88, 200.14, 194.30},
      {192.71, 193.28, 190.28},
      {195.85, 196.36, 199.43},
      {192.59, 191.44, 195.12},
      {195.34, 198.26, 198.13},
      {194.66, 191.99, 187.13},
      {197.56, 195.99, 200.82}
    },
    {
      {292.78, 294.09, 292.89},
      {292.27, 309.40, 295.08},
      {295.53, 290.14, 292.34},
      {295.19, 295.44, 296.83},
      {293.93, 292.48, 294.28},
      {297.74, 296.80, 290.33},
      {287.29, 293.76, 289.36},
      {298.46, 295.28, 296.12}
    }
  };

  /** sr and sR as printed, and the limits 2.8 sr and 2.8 sR. */
  @ParameterizedTest
  @CsvSource({
    "0, 1.0632, 1.0632, 2.98, 2.98",
    "1, 2.6251, 3.3657, 7.35, 9.42",
    "2, 3.9350, 4.1923, 11.02, 11.74"
  })
  void glucoseInSerum(int material, double sr, double sR, double r, double bigR) {
    Repeatabilities.Outcome all = of(round(GLUCOSE[material]));
    assertThat(sd(all, Level.RUN_TO_RUN)).isCloseTo(sr, within(6e-5));
    assertThat(sd(all, Level.REPRODUCIBILITY)).isCloseTo(sR, within(6e-5));
    assertThat(find(all, Level.RUN_TO_RUN).limit().orElseThrow()).isCloseTo(r, within(6e-3));
    assertThat(find(all, Level.REPRODUCIBILITY).limit().orElseThrow())
        .isCloseTo(bigR, within(6e-3));
  }

  /** ASTM E691, the same: h and k as printed for material A, and the site that E marks. */
  @Test
  void mandelsStatisticsOfGlucose() {
    List<AtSite> sites = round(of(round(GLUCOSE[0]))).sites();
    double[] h = {-.39, -.13, -.11, -.10, -.09, .83, -1.75, 1.75};
    double[] k = {.21, .46, 1.00, 1.70, .34, 1.32, 1.17, .77};
    for (int i = 0; i < 8; i++) {
      assertThat(sites.get(i).h().orElseThrow()).as("h of %d", i).isCloseTo(h[i], within(0.006));
      assertThat(sites.get(i).k().orElseThrow()).as("k of %d", i).isCloseTo(k[i], within(0.006));
    }
    AtSite second = round(of(round(GLUCOSE[2]))).sites().get(1);
    assertThat(second.k().orElseThrow()).isCloseTo(2.33, within(0.006));
    assertThat(second.kFlag()).isEqualTo(Flag.OUTLIER);
  }

  /** ISO 5725-2:1994, tables 4 to 7, and ASTM E691, table of critical h and k at 0.5 %. */
  @Test
  void criticalValues() {
    assertThat(OutlierTests.cochran(3, 3, 0.05)).isCloseTo(0.871, within(5e-4));
    assertThat(OutlierTests.cochran(8, 3, 0.01)).isCloseTo(0.615, within(6e-4));
    assertThat(OutlierTests.cochran(10, 2, 0.05)).isCloseTo(0.602, within(6e-4));
    assertThat(OutlierTests.cochran(2, 3, 0.01)).isCloseTo(0.995, within(5e-4));
    assertThat(OutlierTests.grubbs(3, 0.05)).isCloseTo(1.1543, within(5e-5));
    assertThat(OutlierTests.grubbs(8, 0.01)).isCloseTo(2.2744, within(1e-4));
    assertThat(OutlierTests.grubbs(20, 0.05)).isCloseTo(2.7082, within(1e-4));
    assertThat(OutlierTests.mandelH(8, 0.005)).isCloseTo(2.15, within(5e-3));
    assertThat(OutlierTests.mandelH(8, 0.05)).isCloseTo(1.75, within(5e-3));
    assertThat(OutlierTests.mandelK(8, 3, 0.005)).isCloseTo(2.06, within(5e-3));
    assertThat(OutlierTests.mandelK(5, 3, 0.01)).isCloseTo(1.85, within(5e-3));
  }

  /** Table 5 of ISO 5725-2, typed from memory, against 100,000 drawn rounds of each size. */
  @ParameterizedTest
  @ValueSource(ints = {5, 6, 8, 10, 15, 20})
  void criticalValuesOfPairs(int groups) {
    RandomGenerator random = new SplittableRandom(groups);
    OutlierTests.PairLimits limits = OutlierTests.grubbsPair(groups).orElseThrow();
    int draws = 100_000;
    int five = 0;
    int one = 0;
    for (int draw = 0; draw < draws; draw++) {
      double[] means = new double[groups];
      for (int i = 0; i < groups; i++) {
        means[i] = random.nextGaussian();
      }
      Arrays.sort(means);
      double left = squares(Arrays.copyOf(means, groups - 2)) / squares(means);
      five += left < limits.fivePercent() ? 1 : 0;
      one += left < limits.onePercent() ? 1 : 0;
    }
    // The levels are of both ends together; four standard errors of a share.
    assertThat(five / (double) draws).isCloseTo(0.025, within(0.002));
    assertThat(one / (double) draws).isCloseTo(0.005, within(0.0009));
  }

  private static double squares(double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    return Arrays.stream(values).map(x -> (x - mean) * (x - mean)).sum();
  }

  /** Two sites far out on one side hide each other from the test of one. */
  @Test
  void aPairFarOutIsMarkedAndKept() {
    double[][] sites = new double[8][];
    for (int i = 0; i < 8; i++) {
      double mean = i >= 6 ? 700 + i : 600 + i;
      sites[i] = new double[] {mean, mean + 3, mean - 4};
    }
    List<AtSite> found = round(of(round(sites))).sites();
    assertThat(found.subList(0, 6)).extracting(AtSite::grubbs).containsOnly(Flag.NONE);
    assertThat(found.subList(6, 8)).extracting(AtSite::grubbs).containsOnly(Flag.OUTLIER);
  }

  /** A site far out is marked and still counts. */
  @Test
  void aSiteFarOutIsMarkedAndKept() {
    double[][] sites = new double[8][];
    for (int i = 0; i < 8; i++) {
      double mean = i == 7 ? 900 : 600 + i;
      sites[i] = new double[] {mean, mean + 3, mean - 4};
    }
    Repeatabilities.Outcome all = of(round(sites));
    AtSite last = round(all).sites().get(7);
    assertThat(last.hFlag()).isEqualTo(Flag.OUTLIER);
    assertThat(last.grubbs()).isEqualTo(Flag.OUTLIER);
    assertThat(find(all, Level.REPRODUCIBILITY).runs()).isEqualTo(24);
    assertThat(sd(all, Level.REPRODUCIBILITY)).isGreaterThan(100);
  }

  /**
   * Three made-up groups with two stoves that went round, unequal runs. R 4: {@code a <- anova(lm(y
   * ~ stove + stove:site)); n <- table(stove, site); nb <- (sum(n) - sum(rowSums(n^2) /
   * rowSums(n))) / a[2, 1]; sr2 <- a[3, 3]; sL2 <- (a[2, 3] - sr2) / nb; sqrt(c(sr2, sL2, sL2 +
   * sr2))}.
   */
  @Test
  void threeGroupsWithTwoStovesThatWentRound() {
    List<Burn> burns =
        burns(
            "K1,S1: 612 618 605; K1,S2: 640 633; K1,S3: 622 629 617 625;"
                + "K2,S1: 588 595; K2,S2: 611 602 607; K2,S3: 597 604");
    Repeatabilities.Outcome all = of(burns);
    assertThat(sd(all, Level.RUN_TO_RUN)).isCloseTo(5.24960316, within(1e-7));
    assertThat(sd(all, Level.BETWEEN_SITES)).isCloseTo(9.386842214, within(1e-7));
    assertThat(sd(all, Level.REPRODUCIBILITY)).isCloseTo(10.75505184, within(1e-7));
    assertThat(find(all, Level.REPRODUCIBILITY).builds()).isEqualTo(2);
    assertThat(all.precision().names()).containsExactly("S1", "S2", "S3");
  }

  /**
   * Build crossed with site. R 4, lme4: {@code lmer(y ~ stove + (1|site) + (1|site:stove))}, whose
   * REML for equal numbers is {@code m <- anova(lm(y ~ stove * site)); sqrt((m[2, 3] - m[3, 3]) /
   * 6); sqrt((m[3, 3] - m[4, 3]) / 2)}.
   */
  @Test
  void buildCrossedWithSite() {
    Repeatabilities.Outcome all =
        of(
            burns(
                "K1,S1: 612 618; K1,S2: 640 633; K1,S3: 622 629;"
                    + "K2,S1: 588 595; K2,S2: 611 602; K2,S3: 597 604;"
                    + "K3,S1: 570 561; K3,S2: 600 593; K3,S3: 571 580"));
    assertThat(sd(all, Level.SITE_ALIKE)).isCloseTo(10.97092116, within(1e-7));
    assertThat(sd(all, Level.SITE_BY_STOVE)).isCloseTo(2.460803843, within(1e-7));
    assertThat(sd(all, Level.RUN_TO_RUN)).isCloseTo(5.395471352, within(1e-7));
    assertThat(levels(all)).contains(Level.BUILD_TO_BUILD);
  }

  /** Run in build in site. R 4, lme4: {@code lmer(y ~ 1 + (1|site) + (1|stove))}. */
  @Test
  void runInBuildInSite() {
    Repeatabilities.Outcome all =
        of(
            burns(
                "A1,S1: 600 604 611; A2,S1: 622 618 625; B1,S2: 640 651 644; B2,S2: 630 633 641;"
                    + "C1,S3: 612 603 608; C2,S3: 590 597 588"));
    assertThat(sd(all, Level.SITES_WITH_OWN_STOVES)).isCloseTo(19.07053185, within(1e-7));
    assertThat(sd(all, Level.BUILD_TO_BUILD)).isCloseTo(9.922850546, within(1e-7));
    assertThat(sd(all, Level.RUN_TO_RUN)).isCloseTo(4.988876516, within(1e-7));
    assertThat(all.precision().layout()).isEqualTo(Layout.SEVERAL_OWN_STOVES);
    assertThat(levels(all)).doesNotContain(Level.REPRODUCIBILITY);
  }

  /** Six towns, each with one stove of its own: site and stove cannot be told apart. */
  @Test
  void sixTownsWithOneOwnStoveEach() {
    List<Burn> burns = new ArrayList<>();
    for (int town = 0; town < 6; town++) {
      for (int run = 0; run < 3; run++) {
        burns.add(new Burn("K" + town, "T" + town, 600 + 20 * town + 4 * run));
      }
    }
    Repeatabilities.Outcome all = of(burns);
    assertThat(all.precision().layout()).isEqualTo(Layout.ONE_OWN_STOVE_EACH);
    assertThat(levels(all)).containsExactly(Level.RUN_TO_RUN, Level.SITE_AND_STOVE);
    assertThat(all.precision().rounds()).isEmpty();
  }

  @Test
  void testersWithinOneSiteServeTheSame() {
    List<Burn> burns = burns("K1,Ann: 612 618 605; K1,Bo: 640 633; K1,Cy: 622 629 617 625");
    Repeatabilities.Outcome sites = of(burns);
    Repeatabilities.Outcome testers = of(burns, RunsSheet.TESTER);
    assertThat(sd(testers, Level.INTERMEDIATE)).isEqualTo(sd(sites, Level.REPRODUCIBILITY));
    assertThat(testers.precision().repeated()).isEqualTo(Repeated.BY_TESTERS);
  }

  /** Intervals of reproducibility cover the truth: six sites of four runs. */
  @Test
  void intervalsOfReproducibilityCover() {
    RandomGenerator random = new SplittableRandom(11);
    for (double site : new double[] {0, 1, 3}) {
      double truth = Math.sqrt(1 + site * site);
      int covered = 0;
      int trials = 3000;
      for (int trial = 0; trial < trials; trial++) {
        List<double[]> sites = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
          double mean = site * random.nextGaussian();
          sites.add(random.doubles(4).map(u -> mean + random.nextGaussian()).toArray());
        }
        Interval interval = VarianceComponents.of(sites).orElseThrow().intervalTotal(0.95);
        covered += interval.contains(truth) ? 1 : 0;
      }
      // three standard errors of a share of 0.95 are 0.012; the method may be a little wide
      assertThat((double) covered / trials).as("site %s", site).isBetween(0.938, 0.985);
    }
  }

  private static List<Burn> burns(String text) {
    List<Burn> burns = new ArrayList<>();
    for (String cell : text.split(";", -1)) {
      String[] parts = cell.strip().split("[,:]", -1);
      for (String value : parts[2].strip().split(" ", -1)) {
        burns.add(new Burn(parts[0], parts[1], Double.parseDouble(value)));
      }
    }
    return burns;
  }
}
