package fairboil.analysis.layout;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Measured;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.RingsSheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The figures of one ring, from the errors of its holes after best fit.
 *
 * @param plans the ring as intended: one plan, or on a base several circles
 * @param placed its holes, for each plan in turn
 * @param sigma standard uncertainty of one reading, m
 */
record RingFigures(List<IntendedRing> plans, List<List<Placed>> placed, double sigma) {

  private static final Template TOO_FEW = Template.of("too few of its holes were measured");
  private static final Template FEWER_THAN_THREE =
      Template.of("fewer than three of its holes were measured");
  private static final Template NO_HEIGHTS = Template.of("no heights to compare were given");
  private static final Template NO_DIAMETERS =
      Template.of("the diameter of {count} of its holes was not measured");
  private static final Template NONE_INTENDED = Template.of("no intended diameter was given");

  /**
   * What the fit took out.
   *
   * @param extent wrap or radius, m
   * @param rotation the rotation, rad
   * @param rotationUncertainty its standard uncertainty, rad
   * @param coordinates how many coordinates of each hole were judged
   * @param fitted how many numbers were fitted, the share of this ring where several are fitted
   *     together
   * @param offset whether a mean height error means anything
   */
  record FitTaken(
      double extent,
      double rotation,
      double rotationUncertainty,
      int coordinates,
      double fitted,
      Offset offset) {}

  /** Whether a mean height error means anything. */
  enum Offset {
    KNOWN,
    NOT_KNOWN
  }

  RingResult result(Key build, FitTaken fit) {
    IntendedRing first = plans.get(0);
    List<HoleError> errors =
        all().stream().map(Placed::error).sorted(Comparator.comparing(HoleError::number)).toList();
    boolean judged = fit.coordinates * errors.size() > fit.fitted + 1e-9;
    Figure tooFew = Figure.unknown(TOO_FEW.with());
    return new RingResult(
        build,
        first.name(),
        first.isOnBase() ? Surface.BASE : Surface.WALL,
        first.ring().row().value(RingsSheet.AIR),
        fit.extent,
        plans.stream().mapToInt(IntendedRing::holes).sum(),
        errors,
        Figure.known(Measured.of(fit.rotation, fit.rotationUncertainty, Dimension.ANGLE)),
        judged ? length(rms(errors), readingOfMean()) : tooFew,
        judged ? length(floor(fit), 0) : tooFew,
        judged ? length(largest(errors), reading()) : tooFew,
        spacing(),
        offset(errors, fit),
        openArea(),
        intendedArea());
  }

  private List<Placed> all() {
    return placed.stream().flatMap(List::stream).toList();
  }

  private static Figure length(double value, double uncertainty) {
    return Figure.known(Measured.of(value, uncertainty, Dimension.LENGTH));
  }

  private static double rms(List<HoleError> errors) {
    double squares = 0;
    for (HoleError error : errors) {
      squares += error.deviation() * error.deviation();
    }
    return Math.sqrt(squares / errors.size());
  }

  private static double largest(List<HoleError> errors) {
    return errors.stream().mapToDouble(HoleError::deviation).max().orElseThrow();
  }

  /** The RMS expected of perfect holes: c n coordinates of variance σ², less f that were fitted. */
  private double floor(FitTaken fit) {
    return reading() * Math.sqrt(fit.coordinates - fit.fitted / all().size());
  }

  /** Standard uncertainty of a coordinate of a hole, root mean square over holes. */
  private double reading() {
    return sigma
        * Math.sqrt(
            all().stream().mapToDouble(hole -> 1.0 / hole.spot().readings()).average().orElse(1));
  }

  /** Standard uncertainty of a mean over the holes. */
  double readingOfMean() {
    return reading() / Math.sqrt(all().size());
  }

  private Figure spacing() {
    List<Double> gaps = new ArrayList<>();
    for (List<Placed> circle : placed) {
      gaps.addAll(gapErrors(circle));
    }
    if (gaps.size() < 3) {
      return Figure.unknown(FEWER_THAN_THREE.with());
    }
    double mean = gaps.stream().mapToDouble(gap -> gap).average().orElseThrow();
    double squares = gaps.stream().mapToDouble(gap -> (gap - mean) * (gap - mean)).sum();
    // a gap holds the readings of two holes
    return length(Math.sqrt(squares / (gaps.size() - 1)), reading() * Math.sqrt(2.0 / gaps.size()));
  }

  /** Each gap to the next measured hole round a circle, less its intended size. */
  private static List<Double> gapErrors(List<Placed> circle) {
    List<Placed> round = circle.stream().sorted(Comparator.comparing(Placed::slot)).toList();
    List<Double> gaps = new ArrayList<>();
    for (int i = 0; i < round.size() && round.size() > 2; i++) {
      Placed next = round.get((i + 1) % round.size());
      gaps.add(next.error().alongError() - round.get(i).error().alongError());
    }
    return gaps;
  }

  private Figure offset(List<HoleError> errors, FitTaken fit) {
    if (fit.offset == Offset.NOT_KNOWN) {
      return Figure.unknown(NO_HEIGHTS.with());
    }
    double mean = errors.stream().mapToDouble(HoleError::heightError).average().orElseThrow();
    return length(mean, readingOfMean());
  }

  private Figure openArea() {
    int intended = plans.stream().mapToInt(IntendedRing::holes).sum();
    double[] diameters =
        all().stream()
            .map(hole -> hole.spot().diameter())
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .toArray();
    if (diameters.length < intended) {
      return Figure.unknown(NO_DIAMETERS.with(Argument.count(intended - diameters.length)));
    }
    double squares = Arrays.stream(diameters).map(d -> d * d).sum();
    return Figure.known(
        Measured.of(
            Math.PI / 4 * squares, Math.PI / 2 * reading() * Math.sqrt(squares), Dimension.AREA));
  }

  private Figure intendedArea() {
    double area = 0;
    for (IntendedRing plan : plans) {
      if (plan.diameter().isEmpty()) {
        return Figure.unknown(NONE_INTENDED.with());
      }
      double diameter = plan.diameter().getAsDouble();
      area += plan.holes() * Math.PI / 4 * diameter * diameter;
    }
    return Figure.known(Measured.exact(area, Dimension.AREA));
  }
}
