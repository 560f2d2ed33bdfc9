package fairboil.analysis.trace;

/**
 * A straight line through readings by least squares, about their middle.
 *
 * @param count how many readings
 * @param middleSeconds mean of their times, s
 * @param middleCelsius mean of their values, °C
 * @param slope K/s; 0 where all times are equal
 * @param spread sum of squared deviations of the times, s²
 * @param scatter standard deviation of the residuals, K
 * @param memory correlation of each residual with the next, from 0 to 0.9
 */
record Line(
    int count,
    double middleSeconds,
    double middleCelsius,
    double slope,
    double spread,
    double scatter,
    double memory) {

  /** The line through the readings of a trace without missing ones, from an index to an end. */
  static Line through(Trace trace, int from, int end) {
    int count = Math.max(0, end - from);
    double seconds = 0;
    double celsius = 0;
    for (int i = from; i < end; i++) {
      seconds += trace.secondsAt(i);
      celsius += trace.celsiusAt(i);
    }
    double middleSeconds = count == 0 ? 0 : seconds / count;
    double middleCelsius = count == 0 ? 0 : celsius / count;
    double spread = 0;
    double product = 0;
    for (int i = from; i < end; i++) {
      double x = trace.secondsAt(i) - middleSeconds;
      spread += x * x;
      product += x * (trace.celsiusAt(i) - middleCelsius);
    }
    double slope = spread > 0 ? product / spread : 0;
    Line bare = new Line(count, middleSeconds, middleCelsius, slope, spread, 0, 0);
    return bare.withResiduals(trace, from, end);
  }

  private Line withResiduals(Trace trace, int from, int end) {
    Residuals residuals = new Residuals(2);
    for (int i = from; i < end; i++) {
      residuals.add(trace.celsiusAt(i) - at(trace.secondsAt(i)));
    }
    return new Line(
        count,
        middleSeconds,
        middleCelsius,
        slope,
        spread,
        residuals.scatter(),
        residuals.memory());
  }

  /** The line at a time, °C. */
  double at(double seconds) {
    return middleCelsius + slope * (seconds - middleSeconds);
  }

  /** When the line reaches a temperature, s. */
  double reaches(double celsius) {
    return middleSeconds + (celsius - middleCelsius) / slope;
  }

  /** Standard uncertainty of the line at a time, K, the memory of the residuals allowed for. */
  double uncertaintyAt(double seconds, double leastScatter) {
    double off = seconds - middleSeconds;
    double variance = 1.0 / count + (spread > 0 ? off * off / spread : 0);
    double inflation = (1 + memory) / (1 - memory);
    return Math.max(scatter, leastScatter) * Math.sqrt(variance * inflation);
  }

  /** Standard uncertainty of the slope, K/s, the memory of the residuals allowed for. */
  double uncertaintyOfSlope() {
    return spread > 0 ? scatter * Math.sqrt((1 + memory) / (1 - memory) / spread) : 0;
  }

  /** Standard uncertainty of the mean of the readings, K, their memory allowed for. */
  double uncertaintyOfMean(double leastScatter) {
    return Math.max(scatter, leastScatter)
        * Math.sqrt((1 + memory) / (1 - memory) / Math.max(1, count));
  }
}
