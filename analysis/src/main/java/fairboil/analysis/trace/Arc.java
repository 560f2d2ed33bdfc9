package fairboil.analysis.trace;

/**
 * A parabola through readings by least squares, as a line and a bow at right angles to it, so that
 * their uncertainties add.
 *
 * @param line the line
 * @param skew what makes the bow free of slope, s
 * @param bow second coefficient, K/s²
 * @param bowSpread sum of squares of the bow's shape, s⁴
 * @param scatter standard deviation of the residuals, K
 * @param memory correlation of each residual with the next, from 0 to 0.9
 */
record Arc(Line line, double skew, double bow, double bowSpread, double scatter, double memory) {

  /** The parabola through the readings of a trace without missing ones, from an index to an end. */
  static Arc through(Trace trace, int from, int end) {
    Line line = Line.through(trace, from, end);
    double cubes = 0;
    for (int i = from; i < end; i++) {
      double x = trace.secondsAt(i) - line.middleSeconds();
      cubes += x * x * x;
    }
    double skew = line.spread() > 0 ? cubes / line.spread() : 0;
    Arc flat = new Arc(line, skew, 0, 0, 0, 0);
    double spread = 0;
    double product = 0;
    for (int i = from; i < end; i++) {
      double shape = flat.shape(trace.secondsAt(i));
      spread += shape * shape;
      product += shape * trace.celsiusAt(i);
    }
    Arc bent = new Arc(line, skew, spread > 0 ? product / spread : 0, spread, 0, 0);
    return bent.withResiduals(trace, from, end);
  }

  private Arc withResiduals(Trace trace, int from, int end) {
    Residuals residuals = new Residuals(3);
    for (int i = from; i < end; i++) {
      residuals.add(trace.celsiusAt(i) - at(trace.secondsAt(i)));
    }
    return new Arc(line, skew, bow, bowSpread, residuals.scatter(), residuals.memory());
  }

  private double shape(double seconds) {
    double x = seconds - line.middleSeconds();
    return x * x - skew * x - line.spread() / Math.max(1, line.count());
  }

  /** The parabola at a time, °C. */
  double at(double seconds) {
    return line.at(seconds) + bow * shape(seconds);
  }

  /** Its slope at a time, K/s. */
  double slopeAt(double seconds) {
    return line.slope() + bow * (2 * (seconds - line.middleSeconds()) - skew);
  }

  /** When it reaches a temperature, by Newton's method from a time near by, s. */
  double reaches(double celsius, double near) {
    double seconds = near;
    for (int i = 0; i < 5; i++) {
      double slope = slopeAt(seconds);
      seconds += slope > 0 ? (celsius - at(seconds)) / slope : 0;
    }
    return seconds;
  }

  /** Standard uncertainty of the parabola at a time, K, the memory of the residuals allowed for. */
  double uncertaintyAt(double seconds, double leastScatter) {
    double off = seconds - line.middleSeconds();
    double shape = shape(seconds);
    double variance =
        1.0 / Math.max(1, line.count())
            + (line.spread() > 0 ? off * off / line.spread() : 0)
            + (bowSpread > 0 ? shape * shape / bowSpread : 0);
    double inflation = (1 + memory) / (1 - memory);
    return Math.max(scatter, leastScatter) * Math.sqrt(variance * inflation);
  }
}
