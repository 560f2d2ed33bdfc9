package fairboil.analysis.plan;

import fairboil.ingest.finding.Message;

/** A plan that cannot be made, and what to state so that it can. */
public final class PlanException extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient Message reason;

  /** Says why, a clause. */
  public PlanException(Message reason) {
    super(reason.toString());
    this.reason = reason;
  }

  /** Why, a clause for people. */
  public Message reason() {
    return reason;
  }
}
