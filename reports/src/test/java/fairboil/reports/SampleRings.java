package fairboil.reports;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.layout.HoleError;
import fairboil.analysis.layout.RingResult;
import fairboil.ingest.choice.Air;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Invented rings of holes, drilled more or less well. Nothing here was measured. */
final class SampleRings {

  private static final double WRAP = 0.330;
  private static final double RADIUS = 0.034;

  private SampleRings() {}

  static RingResult upper(Key build, double sigma, Random random) {
    return wall(build, "upper", Air.SECONDARY, 12, 0.014, sigma, random);
  }

  static RingResult lower(Key build, double sigma, Random random) {
    return wall(build, "lower", Air.INTAKE, 8, 0.010, sigma, random);
  }

  private static RingResult wall(
      Key build, String ring, Air air, int holes, double height, double sigma, Random random) {
    List<HoleError> errors = new ArrayList<>();
    for (int hole = 0; hole < holes; hole++) {
      errors.add(
          new HoleError(
              hole + 1,
              WRAP * hole / holes,
              height,
              sigma * random.nextGaussian(),
              0.4 * sigma + 0.8 * sigma * random.nextGaussian()));
    }
    return ring(build, ring, Surface.WALL, air, WRAP, centred(errors));
  }

  /** A centre hole and two circles. */
  static RingResult base(Key build, double sigma, Random random) {
    List<HoleError> errors = new ArrayList<>();
    errors.add(at(1, 0, 0, sigma, random));
    circle(errors, 6, 0.017, 0, sigma, random);
    circle(errors, 12, 0.034, Math.PI / 12, sigma, random);
    return ring(build, "base", Surface.BASE, Air.PRIMARY, RADIUS, errors);
  }

  private static void circle(
      List<HoleError> errors, int holes, double radius, double from, double sigma, Random random) {
    for (int hole = 0; hole < holes; hole++) {
      double angle = from + 2 * Math.PI * hole / holes;
      double x = radius * Math.cos(angle);
      errors.add(at(errors.size() + 1, x, radius * Math.sin(angle), sigma, random));
    }
  }

  private static HoleError at(int number, double x, double y, double sigma, Random random) {
    return new HoleError(
        number, x, y, sigma * random.nextGaussian(), sigma * random.nextGaussian());
  }

  /** As best fit leaves them: no mean error along the ring. */
  private static List<HoleError> centred(List<HoleError> errors) {
    double mean = errors.stream().mapToDouble(HoleError::alongError).average().orElse(0);
    return errors.stream()
        .map(
            e ->
                new HoleError(
                    e.number(),
                    e.intendedAlong(),
                    e.intendedHeight(),
                    e.alongError() - mean,
                    e.heightError()))
        .toList();
  }

  private static RingResult ring(
      Key build, String name, Surface surface, Air air, double extent, List<HoleError> errors) {
    double squares = errors.stream().mapToDouble(e -> e.deviation() * e.deviation()).sum();
    double largest = errors.stream().mapToDouble(HoleError::deviation).max().orElse(0);
    double offset = errors.stream().mapToDouble(HoleError::heightError).average().orElse(0);
    double area = errors.size() * Math.PI * 0.003 * 0.003;
    return new RingResult(
        build,
        name,
        surface,
        Optional.of(air),
        extent,
        errors.size(),
        errors,
        known(0.031, Dimension.ANGLE),
        known(Math.sqrt(squares / errors.size()), Dimension.LENGTH),
        known(0.0004, Dimension.LENGTH),
        known(largest, Dimension.LENGTH),
        known(1.3 * largest / 2, Dimension.LENGTH),
        known(offset, Dimension.LENGTH),
        known(1.03 * area, Dimension.AREA),
        known(area, Dimension.AREA));
  }

  private static Figure known(double value, Dimension dimension) {
    return Figure.known(Measured.of(value, Math.abs(value) / 50, dimension));
  }
}
