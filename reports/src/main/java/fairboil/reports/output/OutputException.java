package fairboil.reports.output;

import java.io.IOException;

/** A report that could not be written. The message is one sentence for a person. */
public final class OutputException extends IOException {

  private static final long serialVersionUID = 1L;

  /** A report that could not be written, for the reason that the sentence gives. */
  public OutputException(String sentence) {
    super(sentence);
  }

  /** A report that could not be written, for the reason that the sentence gives. */
  public OutputException(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
