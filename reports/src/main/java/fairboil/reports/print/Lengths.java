package fairboil.reports.print;

import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.words.Display;

/** Lengths as printed: in millimetres and in inches, because both rules are in use. */
final class Lengths {

  private static final Display METRIC = Display.in(DisplayUnits.METRIC);
  private static final Display US = Display.in(DisplayUnits.US);

  /** Shows lengths to 0.1 mm: finer than anybody marks or reads a hole. */
  private static final double TOLD_TO = 0.2e-3;

  private static final long PARTS_OF_AN_INCH = 32;

  private Lengths() {}

  /** {@code 19.6 mm (0.773 in)}. */
  static String both(double mm) {
    return METRIC.value(mm / 1e3, TOLD_TO, Dimension.LENGTH)
        + " ("
        + US.value(mm / 1e3, TOLD_TO, Dimension.LENGTH)
        + ")";
  }

  /** {@code 19.6}. */
  static String mm(double mm) {
    return METRIC.number(mm / 1e3, TOLD_TO, Dimension.LENGTH);
  }

  /** {@code 3 13/32}: to the nearest 1/32 in, as rules in inches are divided. */
  static String inches(double mm) {
    long parts = Math.round(Math.abs(mm) / 25.4 * PARTS_OF_AN_INCH);
    String sign = mm < 0 && parts > 0 ? "−" : "";
    long whole = parts / PARTS_OF_AN_INCH;
    long rest = parts % PARTS_OF_AN_INCH;
    if (rest == 0) {
      return sign + whole;
    }
    long common = Long.lowestOneBit(rest); // the whole is a power of two
    String fraction = rest / common + "/" + PARTS_OF_AN_INCH / common;
    return sign + (whole == 0 ? fraction : whole + " " + fraction);
  }

  /** {@code 22.5 °}. */
  static String angle(double radians) {
    return METRIC.number(radians, Math.toRadians(0.2), Dimension.ANGLE) + " °";
  }
}
