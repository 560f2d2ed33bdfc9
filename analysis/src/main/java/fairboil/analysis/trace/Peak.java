package fairboil.analysis.trace;

import fairboil.ingest.finding.Message;

/** The highest held value of a trace, or why there is none. */
public sealed interface Peak {

  /**
   * The highest value of the noise-free trace averaged over the hold.
   *
   * @param celsius the estimate, °C: the highest average less the bias
   * @param at the middle of the hold, s
   * @param bias how much the highest average of the noisy trace was reckoned to read high, K
   * @param noise standard uncertainty from the scatter of the readings in the hold, K
   * @param biasUncertainty standard uncertainty of the bias, K
   */
  record Held(double celsius, double at, double bias, double noise, double biasUncertainty)
      implements Peak {}

  /**
   * No held value.
   *
   * @param reason why, a clause for people
   */
  record None(Message reason) implements Peak {}
}
