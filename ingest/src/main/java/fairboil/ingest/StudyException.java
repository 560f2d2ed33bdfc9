package fairboil.ingest;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;

/** A study that cannot be read at all; it says why and what to do. */
public final class StudyException extends Exception {

  private static final long serialVersionUID = 1L;

  /** A study that cannot be read, for the reason given: a sentence without its full stop. */
  public StudyException(Message sentence) {
    super(sentence + ".");
  }

  /** The same, because of the cause. */
  public StudyException(Message sentence, Throwable cause) {
    super(sentence + ".", cause);
  }

  /** A study that cannot be read, because something in it cannot be. */
  public StudyException(Finding finding) {
    super(finding.toString());
  }

  /** The same, because of the cause. */
  public StudyException(Finding finding, Throwable cause) {
    super(finding.toString(), cause);
  }
}
