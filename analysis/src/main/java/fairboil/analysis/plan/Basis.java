package fairboil.analysis.plan;

/** What scatter a plan reckons with. */
public enum Basis {
  /** As it was estimated: in half of all cases the truth is worse. */
  ESTIMATE("as estimated"),
  /** The upper 80 % limits: in four cases of five the truth is no worse. */
  UPPER_LIMIT("upper 80 % limit");

  private final String label;

  Basis(String label) {
    this.label = label;
  }

  /** The words that tables hold. */
  public String label() {
    return label;
  }
}
