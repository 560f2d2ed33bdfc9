package fairboil.analysis.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * The linear sets of the NIST Statistical Reference Datasets, www.itl.nist.gov/div898/strd: data
 * and certified values as published there.
 */
class LinearFitStrdTest {

  @Test
  void norris() {
    LinearFit fit = LinearFit.of(Regressors.line("x", Strd.NORRIS_X), Strd.NORRIS_Y).orElseThrow();
    near(fit.estimate("intercept"), -0.262323073774029, 1e-12);
    near(fit.estimate("x"), 1.00211681802045, 1e-14);
    near(fit.standardError("intercept"), 0.232818234301152, 1e-13);
    near(fit.standardError("x"), 0.429796848199937E-03, 1e-13);
    near(fit.residualSd(), 0.884796396144373, 1e-13);
    near(fit.rSquared(), 0.999993745883712, 1e-14);
    assertThat(fit.degreesOfFreedom()).isEqualTo(34);
  }

  @Test
  void pontius() {
    double[] x = new double[40];
    Arrays.setAll(x, i -> 150000.0 * (i % 20 + 1));
    LinearFit fit = polynomial(x, Strd.PONTIUS_Y, 2);
    near(fit.estimate("intercept"), 0.673565789473684E-03, 1e-12);
    near(fit.estimate("x1"), 0.732059160401003E-06, 1e-14);
    near(fit.estimate("x2"), -0.316081871345029E-14, 1e-12);
    near(fit.standardError("intercept"), 0.107938612033077E-03, 1e-12);
    near(fit.standardError("x1"), 0.157817399981659E-09, 1e-12);
    near(fit.standardError("x2"), 0.486652849992036E-16, 1e-12);
    near(fit.residualSd(), 0.205177424076185E-03, 1e-12);
    near(fit.rSquared(), 0.999999900178537, 1e-14);
  }

  @Test
  void modelsThroughTheOrigin() {
    double[] x1 = new double[11];
    double[] y1 = new double[11];
    Arrays.setAll(x1, i -> 60 + i);
    Arrays.setAll(y1, i -> 130 + i);
    LinearFit noInt1 = LinearFit.of(Regressors.none(11).and("x", x1), y1).orElseThrow();
    near(noInt1.estimate("x"), 2.07438016528926, 1e-14);
    near(noInt1.standardError("x"), 0.165289256198347E-01, 1e-13);
    near(noInt1.residualSd(), 3.56753034006338, 1e-13);
    near(noInt1.rSquared(), 0.999365492298663, 1e-14);

    LinearFit noInt2 =
        LinearFit.of(Regressors.none(3).and("x", new double[] {4, 5, 6}), new double[] {3, 4, 4})
            .orElseThrow();
    near(noInt2.estimate("x"), 0.727272727272727, 1e-14);
    near(noInt2.standardError("x"), 0.420827318078432E-01, 1e-13);
    near(noInt2.residualSd(), 0.369274472937998, 1e-13);
    near(noInt2.rSquared(), 0.993348115299335, 1e-14);
  }

  @Test
  void longley() {
    Regressors x =
        Regressors.intercept(16)
            .and("deflator", Strd.LONGLEY_DEFLATOR)
            .and("gnp", Strd.LONGLEY_GNP)
            .and("unemployed", Strd.LONGLEY_UNEMPLOYED)
            .and("forces", Strd.LONGLEY_FORCES)
            .and("population", Strd.LONGLEY_POPULATION)
            .and("year", Strd.LONGLEY_YEAR);
    LinearFit fit = LinearFit.of(x, Strd.LONGLEY_EMPLOYED).orElseThrow();
    coefficients(
        fit,
        1e-13,
        -3482258.63459582,
        15.0618722713733,
        -0.358191792925910E-01,
        -2.02022980381683,
        -1.03322686717359,
        -0.511041056535807E-01,
        1829.15146461355);
    standardErrors(
        fit,
        1e-9,
        890420.383607373,
        84.9149257747669,
        0.334910077722432E-01,
        0.488399681651699,
        0.214274163161675,
        0.226073200069370,
        455.478499142212);
    near(fit.residualSd(), 304.854073561965, 1e-13);
    near(fit.rSquared(), 0.995479004577296, 1e-14);
  }

  @Test
  void wampler1And2AreExactPolynomials() {
    coefficients(polynomial(steps(), Strd.WAMPLER1_Y, 5), 1e-13, 1, 1, 1, 1, 1, 1);
    coefficients(
        polynomial(steps(), Strd.WAMPLER2_Y, 5), 1e-12, 1, 0.1, 0.01, 0.001, 0.0001, 0.00001);
    assertThat(polynomial(steps(), Strd.WAMPLER1_Y, 5).residualSd()).isLessThan(1e-8);
    near(polynomial(steps(), Strd.WAMPLER1_Y, 5).rSquared(), 1, 1e-15);
  }

  @Test
  void wampler3() {
    wamplerWithNoise(Strd.WAMPLER3_Y, 1, 0.999995559025820);
  }

  @Test
  void wampler4() {
    wamplerWithNoise(Strd.WAMPLER4_Y, 100, 0.957478440825662);
  }

  @Test
  void wampler5() {
    wamplerWithNoise(Strd.WAMPLER5_Y, 10000, 0.224668921574940E-02);
  }

  private static void wamplerWithNoise(double[] y, double times, double rSquared) {
    LinearFit fit = polynomial(steps(), y, 5);
    coefficients(fit, 1e-11, 1, 1, 1, 1, 1, 1);
    standardErrors(
        fit,
        1e-9,
        2152.32624678170 * times,
        2363.55173469681 * times,
        779.343524331583 * times,
        101.475507550350 * times,
        5.64566512170752 * times,
        0.112324854679312 * times);
    near(fit.residualSd(), 2360.14502379268 * times, 1e-12);
    near(fit.rSquared(), rSquared, 1e-11);
  }

  /**
   * R's lm refuses this polynomial of degree 10 at its usual tolerance. Seven digits are what the
   * rounding of the powers of x to double precision leaves.
   */
  @Test
  void filip() {
    LinearFit fit = polynomial(Strd.FILIP_X, Strd.FILIP_Y, 10);
    coefficients(
        fit,
        1e-7,
        -1467.48961422980,
        -2772.17959193342,
        -2316.37108160893,
        -1127.97394098372,
        -354.478233703349,
        -75.1242017393757,
        -10.8753180355343,
        -1.06221498588947,
        -0.670191154593408E-01,
        -0.246781078275479E-02,
        -0.402962525080404E-04);
    near(fit.standardError("intercept"), 298.084530995537, 1e-7);
    near(fit.standardError("x10"), 0.896632837373868E-05, 1e-7);
    near(fit.rSquared(), 0.996727416185620, 1e-9);
  }

  private static double[] steps() {
    double[] x = new double[21];
    Arrays.setAll(x, i -> i);
    return x;
  }

  private static LinearFit polynomial(double[] x, double[] y, int degree) {
    Regressors columns = Regressors.intercept(x.length);
    for (int power = 1; power <= degree; power++) {
      int exponent = power;
      columns =
          columns.and(
              "x" + power, Arrays.stream(x).map(value -> Math.pow(value, exponent)).toArray());
    }
    return LinearFit.of(columns, y).orElseThrow();
  }

  private static void coefficients(LinearFit fit, double tolerance, double... certified) {
    for (int j = 0; j < certified.length; j++) {
      near(fit.estimate(fit.regressors().names().get(j)), certified[j], tolerance);
    }
  }

  private static void standardErrors(LinearFit fit, double tolerance, double... certified) {
    for (int j = 0; j < certified.length; j++) {
      near(fit.standardError(fit.regressors().names().get(j)), certified[j], tolerance);
    }
  }

  private static void near(double actual, double certified, double relative) {
    assertThat(Math.abs(actual - certified) / Math.abs(certified))
        .as("%s for the certified %s", actual, certified)
        .isLessThanOrEqualTo(relative);
  }
}
