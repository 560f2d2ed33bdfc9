package fairboil.analysis.claim;

import fairboil.ingest.finding.Message;

/** Why a claim cannot be tested here. */
final class Refusal extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient Message reason;

  /** Says why, a clause. */
  Refusal(Message reason) {
    super(reason.toString());
    this.reason = reason;
  }

  Message reason() {
    return reason;
  }
}
