package fairboil.analysis.plan;

/** A plan that cannot be made, and what to state so that it can: one sentence for people. */
public final class PlanException extends Exception {

  private static final long serialVersionUID = 1L;

  /** Says why, in a sentence. */
  public PlanException(String sentence) {
    super(sentence);
  }
}
