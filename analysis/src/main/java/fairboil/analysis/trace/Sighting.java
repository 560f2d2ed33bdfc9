package fairboil.analysis.trace;

/**
 * When a trace shows something to have happened, or a person saw it.
 *
 * @param seconds when, s
 * @param uncertainty its standard uncertainty, s, above 0
 */
public record Sighting(double seconds, double uncertainty) {

  /** Checks the uncertainty. */
  public Sighting {
    if (!(uncertainty > 0)) {
      throw new IllegalArgumentException("not an uncertainty of a sighting: " + uncertainty);
    }
  }
}
