package fairboil.analysis.plan;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A build of the next tests.
 *
 * @param name its name
 * @param design its design, if there is one
 * @param origin whether it is there already
 * @param holeError the RMS hole error to drill, assigned at random, m; empty where none is assigned
 */
public record PlannedBuild(
    String name, Optional<String> design, Origin origin, OptionalDouble holeError) {

  /** Whether a build is there already. */
  public enum Origin {
    /** A build of the study. */
    STUDY("of the study"),
    /** Still to be made. */
    NEW("to be made");

    private final String label;

    Origin(String label) {
      this.label = label;
    }

    /** The words that tables hold. */
    public String label() {
      return label;
    }
  }
}
