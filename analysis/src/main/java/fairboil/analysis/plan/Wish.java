package fairboil.analysis.plan;

/**
 * What a study is wanted to tell.
 *
 * @param kind what
 * @param size how large, above 0: in the unit of a difference of the measure; for a hole effect,
 *     for each metre of RMS hole error
 */
public record Wish(Kind kind, double size) {

  /** What can be wanted. */
  public enum Kind {
    /** The mean of a design known to so much on either side. */
    HALF_WIDTH("half width", 2),
    /** A difference between two designs found if it is so large. */
    DIFFERENCE("difference between designs", 2),
    /** Two designs that do not differ found to be no different within so much. */
    MARGIN("no different within", 2),
    /** A hole effect found if it is so large. */
    HOLE_EFFECT("hole effect", 3);

    private final String label;
    private final int fewest;

    Kind(String label, int fewest) {
      this.label = label;
      this.fewest = fewest;
    }

    /** The words that tables hold. */
    public String label() {
      return label;
    }

    /** The fewest builds, of each design or for a hole effect in all, with which it can be told. */
    public int fewestBuilds() {
      return fewest;
    }

    /** Whether builds are counted for each design. */
    public boolean isByDesign() {
      return this != HOLE_EFFECT;
    }
  }

  /** Checks the range. */
  public Wish {
    if (!(size > 0) || Double.isInfinite(size)) {
      throw new IllegalArgumentException("not a size: " + size);
    }
  }
}
