package fairboil.analysis.claim;

/** Why a claim cannot be tested here; the message is a clause for people. */
final class Refusal extends Exception {

  private static final long serialVersionUID = 1L;

  Refusal(String clause) {
    super(clause);
  }
}
