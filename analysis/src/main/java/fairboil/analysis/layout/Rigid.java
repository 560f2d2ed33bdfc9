package fairboil.analysis.layout;

import java.util.List;

/**
 * A rigid motion of the plane: a turn, then a shift.
 *
 * <p>{@link #fit} is the least-squares (Procrustes) solution for points in the plane: the centroids
 * are brought together and the turn is {@code atan2(Σ p×q, Σ p·q)} (Schönemann, Psychometrika 31,
 * 1966, for two dimensions).
 *
 * @param rotation the turn, rad, anticlockwise
 * @param shiftX the shift after the turn, m
 * @param shiftY the shift after the turn, m
 */
record Rigid(double rotation, double shiftX, double shiftY) {

  /** A point of the plan and the point that was measured for it, m. */
  record Pair(double planX, double planY, double x, double y) {}

  /** The motion that takes the plan onto the measured points as well as can be; at least two. */
  static Rigid fit(List<Pair> pairs) {
    double planX = mean(pairs.stream().mapToDouble(Pair::planX).sum(), pairs);
    double planY = mean(pairs.stream().mapToDouble(Pair::planY).sum(), pairs);
    double x = mean(pairs.stream().mapToDouble(Pair::x).sum(), pairs);
    double y = mean(pairs.stream().mapToDouble(Pair::y).sum(), pairs);
    double cross = 0;
    double dot = 0;
    for (Pair pair : pairs) {
      double px = pair.planX() - planX;
      double py = pair.planY() - planY;
      double qx = pair.x() - x;
      double qy = pair.y() - y;
      cross += px * qy - py * qx;
      dot += px * qx + py * qy;
    }
    double rotation = cross == 0 && dot == 0 ? 0 : Math.atan2(cross, dot);
    double cos = Math.cos(rotation);
    double sin = Math.sin(rotation);
    return new Rigid(rotation, x - (cos * planX - sin * planY), y - (sin * planX + cos * planY));
  }

  private static double mean(double sum, List<Pair> pairs) {
    return sum / pairs.size();
  }

  /** The measured point, taken back by this motion, less its point of the plan: x then y. */
  double[] error(Pair pair) {
    double x = pair.x() - shiftX;
    double y = pair.y() - shiftY;
    double cos = Math.cos(rotation);
    double sin = Math.sin(rotation);
    return new double[] {cos * x + sin * y - pair.planX(), -sin * x + cos * y - pair.planY()};
  }

  double sumOfSquares(List<Pair> pairs) {
    double sum = 0;
    for (Pair pair : pairs) {
      double[] error = error(pair);
      sum += error[0] * error[0] + error[1] * error[1];
    }
    return sum;
  }
}
