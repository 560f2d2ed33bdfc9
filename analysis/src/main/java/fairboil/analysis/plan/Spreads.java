package fairboil.analysis.plan;

/**
 * The scatter of a measure.
 *
 * @param burns from burn to burn of one stove
 * @param stoves from stove to stove of one design beyond that; about the line, for a hole effect
 */
public record Spreads(Spread burns, Spread stoves) {

  /**
   * The standard deviation of the mean of a stove, about the mean of all such stoves.
   *
   * @param runs how often each is burnt, at least 1
   */
  public double ofBuildMean(int runs, Basis basis) {
    return Math.hypot(stoves.at(basis), burns.at(basis) / Math.sqrt(runs));
  }
}
