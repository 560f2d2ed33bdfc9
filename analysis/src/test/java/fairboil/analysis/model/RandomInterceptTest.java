package fairboil.analysis.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** REML against lme4 1.1-31, nlme 3.1-162 and lmerTest 3.1-3 on R 4.2.2. */
class RandomInterceptTest {

  /** Data set Dyestuff of lme4: six batches of five (Davies and Goldsmith, 1972). */
  private static final double[] DYESTUFF = {
    1545, 1440, 1440, 1520, 1580, 1540, 1555, 1490, 1560, 1495,
    1595, 1550, 1605, 1510, 1560, 1445, 1440, 1595, 1465, 1545,
    1595, 1630, 1515, 1635, 1625, 1520, 1455, 1450, 1480, 1445,
  };

  /** Data set Dyestuff2 of lme4 (Box and Tiao, 1973). */
  private static final double[] DYESTUFF2 = {
    7.298, 3.846, 2.434, 9.566, 7.99, 5.22, 6.556, 0.608, 11.788, -0.892,
    0.11, 10.386, 13.434, 5.51, 8.166, 2.212, 4.852, 7.092, 9.288, 4.98,
    0.282, 9.014, 4.458, 9.446, 7.198, 1.722, 4.782, 8.106, 0.758, 3.758,
  };

  /** Data set Rail of nlme: six rails of three. */
  private static final double[] RAIL = {
    55, 53, 54, 26, 37, 32, 78, 91, 85,
    92, 100, 96, 49, 51, 50, 80, 85, 83,
  };

  /** Data set sleepstudy of lme4 (Belenky et al., 2003): 18 subjects, days 0 to 9 each. */
  private static final double[] REACTION = {
    249.56, 258.7047, 250.8006, 321.4398, 356.8519, 414.6901, 382.2038, 290.1486, 430.5853,
        466.3535,
    222.7339, 205.2658, 202.9778, 204.707, 207.7161, 215.9618, 213.6303, 217.7272, 224.2957,
        237.3142,
    199.0539, 194.3322, 234.32, 232.8416, 229.3074, 220.4579, 235.4208, 255.7511, 261.0125,
        247.5153,
    321.5426, 300.4002, 283.8565, 285.133, 285.7973, 297.5855, 280.2396, 318.2613, 305.3495,
        354.0487,
    287.6079, 285, 301.8206, 320.1153, 316.2773, 293.3187, 290.075, 334.8177, 293.7469, 371.5811,
    234.8606, 242.8118, 272.9613, 309.7688, 317.4629, 309.9976, 454.1619, 346.8311, 330.3003,
        253.8644,
    283.8424, 289.555, 276.7693, 299.8097, 297.171, 338.1665, 332.0265, 348.8399, 333.36, 362.0428,
    265.4731, 276.2012, 243.3647, 254.6723, 279.0244, 284.1912, 305.5248, 331.5229, 335.7469,
        377.299,
    241.6083, 273.9472, 254.4907, 270.8021, 251.4519, 254.6362, 245.4523, 235.311, 235.7541,
        237.2466,
    312.3666, 313.8058, 291.6112, 346.1222, 365.7324, 391.8385, 404.2601, 416.6923, 455.8643,
        458.9167,
    236.1032, 230.3167, 238.9256, 254.922, 250.7103, 269.7744, 281.5648, 308.102, 336.2806,
        351.6451,
    256.2968, 243.4543, 256.2046, 255.5271, 268.9165, 329.7247, 379.4445, 362.9184, 394.4872,
        389.0527,
    250.5265, 300.0576, 269.8939, 280.5891, 271.8274, 304.6336, 287.7466, 266.5955, 321.5418,
        347.5655,
    221.6771, 298.1939, 326.8785, 346.8555, 348.7402, 352.8287, 354.4266, 360.4326, 375.6406,
        388.5417,
    271.9235, 268.4369, 257.2424, 277.6566, 314.8222, 317.2135, 298.1353, 348.1229, 340.28,
        366.5131,
    225.264, 234.5235, 238.9008, 240.473, 267.5373, 344.1937, 281.1481, 347.5855, 365.163, 372.2288,
    269.8804, 272.4428, 277.8989, 281.7895, 279.1705, 284.512, 259.2658, 304.6306, 350.7807,
        369.4692,
    269.4117, 273.474, 297.5968, 310.6316, 287.1726, 329.6076, 334.4818, 343.2199, 369.1417,
        364.1236,
  };

  @Test
  void dyestuff() {
    RandomIntercept fit = balanced(DYESTUFF, 5);
    assertThat(fit.estimate("intercept")).isCloseTo(1527.5, within(1e-8));
    near(fit.standardError("intercept"), 19.3834122, 1e-6);
    near(fit.varianceBetween(), 1764.05, 1e-6);
    near(fit.varianceWithin(), 2451.25, 1e-6);
    near(fit.remlCriterion(), 319.654277, 1e-8);
    assertThat(fit.degreesOfFreedom("intercept").orElseThrow()).isCloseTo(5, within(1e-4));
  }

  @Test
  void dyestuff2IsAtTheBoundary() {
    RandomIntercept fit = balanced(DYESTUFF2, 5);
    assertThat(fit.varianceBetween()).isZero();
    assertThat(fit.isAtBoundary()).isTrue();
    near(fit.varianceWithin(), 13.8063096, 1e-7);
    near(fit.standardError("intercept"), 0.678388031, 1e-7);
    near(fit.remlCriterion(), 161.828278, 1e-8);
    assertThat(fit.degreesOfFreedom("intercept")).isEmpty();
  }

  @Test
  void rail() {
    RandomIntercept fit = balanced(RAIL, 3);
    near(fit.standardError("intercept"), 10.1710373, 1e-6);
    near(fit.varianceBetween(), 615.3111, 1e-6);
    near(fit.varianceWithin(), 16.1666667, 1e-6);
    near(fit.remlCriterion(), 122.177001, 1e-8);
  }

  /** lmerTest::lmer(Reaction ~ Days + (1 | Subject), sleepstudy). */
  @Test
  void sleepstudy() {
    RandomIntercept fit = sleepstudy(IntStream.range(0, 180).toArray());
    near(fit.estimate("intercept"), 251.405105, 1e-8);
    near(fit.estimate("days"), 10.467286, 1e-7);
    near(fit.standardError("intercept"), 9.746716269, 1e-6);
    near(fit.standardError("days"), 0.804221429, 1e-6);
    near(fit.varianceBetween(), 1378.178514, 1e-5);
    near(fit.varianceWithin(), 960.456579, 1e-6);
    near(fit.remlCriterion(), 1786.46509, 1e-8);
    near(fit.degreesOfFreedom("intercept").orElseThrow(), 22.810199, 1e-5);
    near(fit.degreesOfFreedom("days").orElseThrow(), 161, 1e-5);
  }

  /** The same without days 5 to 9 of subjects 308 and 309 and the even days of subject 330. */
  @Test
  void unbalancedSleepstudy() {
    int[] rows =
        IntStream.range(0, 180)
            .filter(row -> !(row / 10 < 2 && row % 10 > 4))
            .filter(row -> !(row / 10 == 3 && row % 2 == 0))
            .toArray();
    assertThat(rows).hasSize(165);
    RandomIntercept fit = sleepstudy(rows);
    near(fit.estimate("intercept"), 250.0931050, 1e-7);
    near(fit.estimate("days"), 10.7276701, 1e-7);
    near(fit.standardError("intercept"), 8.831353862, 1e-6);
    near(fit.standardError("days"), 0.791272781, 1e-6);
    near(fit.varianceBetween(), 1104.414870, 1e-5);
    near(fit.varianceWithin(), 817.096664, 1e-6);
    near(fit.remlCriterion(), 1611.56864, 1e-8);
    near(fit.degreesOfFreedom("intercept").orElseThrow(), 23.1181391, 1e-5);
    near(fit.degreesOfFreedom("days").orElseThrow(), 147.5278522, 1e-5);
  }

  /**
   * The same with things that differ between subjects alone, as hole error and design do:
   * lmerTest's lmer(Reaction ~ err + long + Days + (1 | Subject)), subjects numbered from 1 in
   * order, err 7 times that number modulo 11, long 1 for even numbers.
   */
  @Test
  void unbalancedSleepstudyWithThingsOfSubjects() {
    int[] rows =
        IntStream.range(0, 180)
            .filter(row -> !(row / 10 < 2 && row % 10 > 4))
            .filter(row -> !(row / 10 == 3 && row % 2 == 0))
            .toArray();
    double[] days = Arrays.stream(rows).mapToDouble(row -> row % 10).toArray();
    double[] y = Arrays.stream(rows).mapToDouble(row -> REACTION[row]).toArray();
    int[] subjects = Arrays.stream(rows).map(row -> row / 10).toArray();
    double[] err = Arrays.stream(subjects).mapToDouble(id -> 7 * (id + 1) % 11).toArray();
    double[] even = Arrays.stream(subjects).mapToDouble(id -> id % 2).toArray();
    Regressors x = Regressors.line("err", err).and("long", even).and("days", days);
    RandomIntercept fit = RandomIntercept.fit(x, y, subjects).orElseThrow();
    near(fit.estimate("intercept"), 238.75863508, 1e-6);
    near(fit.estimate("err"), 0.05985282876, 1e-4);
    near(fit.estimate("long"), 22.12732053880, 1e-5);
    near(fit.estimate("days"), 10.72479981332, 1e-6);
    near(fit.standardError("err"), 2.6838819870, 1e-5);
    near(fit.standardError("long"), 16.3751175271, 1e-5);
    near(fit.standardError("days"), 0.7915829193, 1e-6);
    near(fit.varianceBetween(), 1108.7995817, 1e-5);
    near(fit.varianceWithin(), 817.7067242, 1e-5);
    near(fit.degreesOfFreedom("err").orElseThrow(), 14.46971738, 1e-5);
    near(fit.degreesOfFreedom("long").orElseThrow(), 14.67552235, 1e-5);
    near(fit.degreesOfFreedom("days").orElseThrow(), 147.31640274, 1e-5);
  }

  @Test
  void refusesWhatHasNoAnswer() {
    int[] alone = {0, 1, 2, 3};
    double[] y = {1, 2, 4, 3};
    assertThat(RandomIntercept.fit(Regressors.intercept(4), y, alone)).isEmpty();
    int[] pairs = {0, 0, 1, 1};
    double[] same = {2, 2, 5, 5};
    assertThat(RandomIntercept.fit(Regressors.intercept(4), same, pairs)).isEmpty();
    double[] equal = {2, 2, 2, 2};
    assertThat(RandomIntercept.fit(Regressors.intercept(4), equal, pairs)).isEmpty();
  }

  private static RandomIntercept balanced(double[] y, int size) {
    int[] groups = IntStream.range(0, y.length).map(i -> i / size).toArray();
    return RandomIntercept.fit(Regressors.intercept(y.length), y, groups).orElseThrow();
  }

  private static RandomIntercept sleepstudy(int[] rows) {
    double[] days = Arrays.stream(rows).mapToDouble(row -> row % 10).toArray();
    double[] y = Arrays.stream(rows).mapToDouble(row -> REACTION[row]).toArray();
    int[] subjects = Arrays.stream(rows).map(row -> row / 10).toArray();
    return RandomIntercept.fit(Regressors.line("days", days), y, subjects).orElseThrow();
  }

  private static void near(double actual, double expected, double relative) {
    assertThat(actual).isCloseTo(expected, within(relative * Math.abs(expected)));
  }
}
