package fairboil.analysis.layout;

import static fairboil.analysis.TestStudy.degrees;
import static fairboil.analysis.TestStudy.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.TestStudy;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.RingsSheet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Patterns on a base: a handbook bolt circle and worked values of a rigid best fit. */
class BaseTest {

  private static TestStudy circle(TestStudy study, String name, int count, double radius) {
    return study.ring(
        name,
        count,
        row -> row.put(RingsSheet.SURFACE, Surface.BASE).put(RingsSheet.CIRCLE, mm(radius)));
  }

  private static void hole(TestStudy study, String ring, int number, double x, double y) {
    study.hole("A", ring, number, row -> row.put(HolesSheet.X, mm(x)).put(HolesSheet.Y, mm(y)));
  }

  /**
   * Coordinates of a bolt circle of radius 50 with five holes as handbooks of machine shops table
   * them: x = R cos(360 k / n), y = R sin(360 k / n), to four decimals; the chord is 2 R sin(180 /
   * n) = 2 × 50 × 0.587785.
   */
  @Test
  void handbookBoltCircle() {
    TestStudy study = circle(new TestStudy().build("A", "one"), "base", 5, 50);
    double[][] table = {
      {50, 0}, {15.4508, 47.5528}, {-40.4508, 29.3893}, {-40.4508, -29.3893}, {15.4508, -47.5528}
    };
    for (int i = 0; i < 5; i++) {
      hole(study, "base", i + 1, table[i][0], table[i][1]);
    }
    assertThat(Math.hypot(table[1][0] - table[0][0], table[1][1] - table[0][1]))
        .isCloseTo(2 * 50 * 0.587785, within(2e-4));
    RingResult ring = HoleLayout.of(study.finish()).rings().get(0);
    // four decimals of a millimetre leave 0.00005 mm in x and in y
    assertThat(ring.rms().orNaN()).isLessThan(5e-8 * Math.sqrt(2));
    assertThat(ring.rotation().orNaN()).isCloseTo(0, within(1e-6));
    assertThat(ring.holes().get(1).intendedAlong() * 1e3).isCloseTo(15.4508, within(5e-5));
    assertThat(ring.holes().get(1).intendedHeight() * 1e3).isCloseTo(47.5528, within(5e-5));
    assertThat(ring.extent()).isEqualTo(0.05);
  }

  /**
   * Radius 30, six holes with known errors in x and y: rigid best fit (two-dimensional Procrustes)
   * by numpy 1.24: shift (0.03333333, 0.05), turn 0.131051934964°, sum of squares 0.65 before and
   * 0.5998763895 after, true positions after.
   */
  @Test
  void rigidFitAgainstWorkedValues() {
    double[][] errors = {
      {0.30, -0.20}, {-0.10, 0.40}, {0, 0.25}, {-0.35, 0.05}, {0.20, -0.30}, {0.15, 0.10}
    };
    double[] truePositions = {0.8311, 0.6486, 0.4716, 0.7790, 0.6669, 0.1187};
    TestStudy study = circle(new TestStudy().build("A", "one"), "base", 6, 30);
    for (int i = 0; i < 6; i++) {
      double angle = Math.toRadians(60 * i);
      hole(
          study,
          "base",
          i + 1,
          30 * Math.cos(angle) + errors[i][0],
          30 * Math.sin(angle) + errors[i][1]);
    }
    RingResult ring = HoleLayout.of(study.finish()).rings().get(0);
    assertThat(Math.toDegrees(ring.rotation().orNaN())).isCloseTo(0.131051934964, within(1e-10));
    assertThat(ring.rms().orNaN() * 1e3).isCloseTo(Math.sqrt(0.5998763895 / 6), within(1e-10));
    for (int i = 0; i < 6; i++) {
      assertThat(ring.holes().get(i).truePosition() * 1e3)
          .isCloseTo(truePositions[i], within(5e-5));
    }
    // three numbers fitted to six holes
    assertThat(ring.rmsFloor().orNaN() * 1e3).isCloseTo(0.3 * Math.sqrt(2 - 3.0 / 6), within(1e-9));
  }

  /** A circle of 4 turned against a circle of 8 shows as an error, which each alone would hide. */
  @Test
  void circlesOfOneBaseAreFittedTogether() {
    double turned = 3;
    TestStudy study = new TestStudy().build("A", "one");
    circle(study, "centre", 1, 0);
    circle(study, "inner", 4, 15);
    circle(study, "outer", 8, 30);
    hole(study, "centre", 1, 5, 7);
    for (int i = 0; i < 4; i++) {
      double angle = Math.toRadians(90 * i + turned);
      hole(study, "inner", i + 1, 5 + 15 * Math.cos(angle), 7 + 15 * Math.sin(angle));
    }
    for (int i = 0; i < 8; i++) {
      double angle = Math.toRadians(45 * i);
      hole(study, "outer", i + 1, 5 + 30 * Math.cos(angle), 7 + 30 * Math.sin(angle));
    }
    LayoutResult layout = HoleLayout.of(study.finish());
    // turn taken out: 3° × (4 × 15²) / (4 × 15² + 8 × 30²), for small angles
    double share = 4 * 225.0 / (4 * 225 + 8 * 900);
    RingResult inner = layout.ring(TestStudy.key("A"), "inner").orElseThrow();
    RingResult outer = layout.ring(TestStudy.key("A"), "outer").orElseThrow();
    assertThat(Math.toDegrees(inner.rotation().orNaN())).isCloseTo(turned * share, within(1e-3));
    assertThat(inner.rms().orNaN() * 1e3)
        .isCloseTo(2 * 15 * Math.sin(Math.toRadians(turned * (1 - share)) / 2), within(1e-3));
    assertThat(inner.holes().get(0).alongError()).isPositive();
    assertThat(outer.holes().get(0).alongError()).isNegative();
    RingResult centre = layout.ring(TestStudy.key("A"), "centre").orElseThrow();
    assertThat(centre.rms().orNaN() * 1e3).isCloseTo(0, within(1e-9));
    // the three fitted numbers are shared out without rest
    double fitted = 0;
    for (RingResult ring : layout.rings()) {
      double floor = ring.rmsFloor().orNaN() * 1e3 / 0.3;
      fitted += ring.holes().size() * (2 - floor * floor);
    }
    assertThat(fitted).isCloseTo(3, within(1e-9));
  }

  /** Measured from the other face, turned, and numbered backwards from another hole. */
  @Test
  void measuredFromTheOtherFace() {
    TestStudy study = new TestStudy().build("A", "one");
    study.ring(
        "base",
        5,
        row ->
            row.put(RingsSheet.SURFACE, Surface.BASE)
                .put(RingsSheet.CIRCLE, mm(30))
                .put(RingsSheet.START, degrees(20))
                .put(RingsSheet.DIVISIONS, 8)
                .put(RingsSheet.SKIPPED, List.of(2, 4, 5)));
    int[] divisions = {0, 2, 5, 6, 7};
    for (int i = 0; i < 5; i++) {
      double angle = Math.toRadians(-(20 + 45 * divisions[i]) + 77);
      double radius = 30 + (i == 2 ? 0.5 : 0);
      study.hole(
          "A",
          "base",
          Math.floorMod(1 - i, 5) + 1,
          row ->
              row.put(HolesSheet.ANGLE, degrees(Math.toDegrees(angle)))
                  .put(HolesSheet.RADIUS, mm(radius)));
    }
    RingResult ring = HoleLayout.of(study.finish()).rings().get(0);
    assertThat(ring.rms().orNaN() * 1e3).isLessThan(0.25).isGreaterThan(0.05);
  }

  @Test
  void severalRowsOfOneNameAreCirclesOfOneRing() {
    TestStudy study = new TestStudy().build("A", "one");
    circle(study, "base", 1, 0);
    circle(study, "base", 6, 20);
    hole(study, "base", 1, 0, 0);
    for (int i = 0; i < 6; i++) {
      double angle = Math.toRadians(60 * i);
      hole(study, "base", i + 2, 20 * Math.cos(angle), 20 * Math.sin(angle));
    }
    LayoutResult layout = HoleLayout.of(study.finish());
    assertThat(layout.findings()).isEmpty();
    assertThat(layout.rings())
        .singleElement()
        .satisfies(
            ring -> {
              assertThat(ring.holesIntended()).isEqualTo(7);
              assertThat(ring.holes()).hasSize(7);
              assertThat(ring.extent()).isEqualTo(0.02);
              assertThat(ring.rms().orNaN()).isLessThan(1e-12);
            });
  }

  @Test
  void oneHoleShowsNoError() {
    TestStudy study = circle(new TestStudy().build("A", "one"), "base", 1, 0);
    hole(study, "base", 1, 3, 4);
    LayoutResult layout = HoleLayout.of(study.finish());
    assertThat(layout.rings()).isEmpty();
    assertThat(layout.findings()).hasSize(1);
  }

  @Test
  void openAreaCountsHolesByTheirDiameter() {
    TestStudy study = new TestStudy().build("A", "one");
    study.ring(
        "base",
        3,
        row ->
            row.put(RingsSheet.SURFACE, Surface.BASE)
                .put(RingsSheet.CIRCLE, mm(30))
                .put(RingsSheet.DIAMETER, mm(6)));
    for (int i = 0; i < 3; i++) {
      double angle = Math.toRadians(120 * i);
      double diameter = 6 + i;
      study.hole(
          "A",
          "base",
          i + 1,
          row ->
              row.put(HolesSheet.X, mm(30 * Math.cos(angle)))
                  .put(HolesSheet.Y, mm(30 * Math.sin(angle)))
                  .put(HolesSheet.DIAMETER, mm(diameter)));
    }
    RingResult ring = HoleLayout.of(study.finish()).rings().get(0);
    assertThat(ring.openArea().orNaN() * 1e6).isCloseTo(Math.PI / 4 * (36 + 49 + 64), within(1e-9));
    assertThat(ring.openAreaIntended().orNaN() * 1e6).isCloseTo(Math.PI / 4 * 108, within(1e-9));
  }
}
