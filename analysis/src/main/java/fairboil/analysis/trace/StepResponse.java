package fairboil.analysis.trace;

import java.util.Optional;

/**
 * The answer of a probe to a step, such as being put into hot water or taken out of it: {@code T =
 * b + (a − b) exp(−(t − t₀)/τ)}.
 *
 * @param at when the step was, s
 * @param height from the old level to the new, K
 * @param timeConstant time to follow to 63 %, s
 * @param uncertainty its standard uncertainty, s
 */
public record StepResponse(double at, double height, double timeConstant, double uncertainty) {

  /**
   * The quickest clear answer to a step in a clean trace, if there is one: no reading can follow
   * faster than its probe, while a fire or a pot may follow slower.
   */
  public static Optional<StepResponse> quickest(Trace trace) {
    return StepFinder.find(trace);
  }
}
