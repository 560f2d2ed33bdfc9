package fairboil.analysis.precision;

/** How far out a value is, in the words of ISO 5725-2. It marks; nothing is removed for it. */
public enum Flag {
  /** Not beyond what chance does once in twenty times. */
  NONE(""),
  /** Beyond what chance does once in twenty times. */
  STRAGGLER("straggler"),
  /** Beyond what chance does once in a hundred times. */
  OUTLIER("outlier");

  private final String label;

  Flag(String label) {
    this.label = label;
  }

  /** The word that tables hold; empty for none. */
  public String label() {
    return label;
  }

  static Flag of(double statistic, double fivePercent, double onePercent) {
    if (statistic > onePercent) {
      return OUTLIER;
    }
    return statistic > fivePercent ? STRAGGLER : NONE;
  }
}
