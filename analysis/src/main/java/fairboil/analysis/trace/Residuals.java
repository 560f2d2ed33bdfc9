package fairboil.analysis.trace;

/** Gathers the residuals of a fit, in the order of time. */
final class Residuals {

  private static final double MOST_MEMORY = 0.9;

  private final int parameters;
  private int count;
  private double squares;
  private double products;
  private double last;

  Residuals(int parameters) {
    this.parameters = parameters;
  }

  void add(double residual) {
    squares += residual * residual;
    products += residual * last;
    last = residual;
    count++;
  }

  /** Their standard deviation, the parameters of the fit allowed for; 0 for too few. */
  double scatter() {
    return count > parameters ? Math.sqrt(squares / (count - parameters)) : 0;
  }

  /** The correlation of each with the next, from 0 to 0.9. */
  double memory() {
    double correlation = squares > 0 ? products / squares : 0;
    return Math.max(0, Math.min(MOST_MEMORY, correlation));
  }
}
