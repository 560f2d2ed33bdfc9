package fairboil.reports.chart;

/** No chart can be drawn here. The message is one sentence for a person. */
public final class ChartException extends Exception {

  private static final long serialVersionUID = 1L;

  /** Charts cannot be drawn, for the reason that the sentence gives, because of the cause. */
  public ChartException(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
