package fairboil.analysis.effect;

import fairboil.ingest.sheet.Key;
import java.util.Arrays;
import java.util.Optional;

/** One build in a hole effect: its hole error, its mean response and its burns. Immutable. */
public final class BuildPoint {

  private final Key build;
  private final Optional<String> design;
  private final double holeError;
  private final double mean;
  private final double[] burns;

  /**
   * A build with its burns.
   *
   * @param build the build
   * @param design its design, if told
   * @param holeError RMS hole error, m
   * @param burns the response of each burn, at least one; copied
   */
  public BuildPoint(Key build, Optional<String> design, double holeError, double[] burns) {
    this.build = build;
    this.design = design;
    this.holeError = holeError;
    this.burns = burns.clone();
    this.mean = Arrays.stream(burns).average().orElseThrow();
  }

  /** The build. */
  public Key build() {
    return build;
  }

  /** Its design, if told. */
  public Optional<String> design() {
    return design;
  }

  /** RMS hole error, m. */
  public double holeError() {
    return holeError;
  }

  /** Mean response of its burns. */
  public double mean() {
    return mean;
  }

  /** The response of each burn; a copy. */
  public double[] burns() {
    return burns.clone();
  }
}
