package fairboil.ingest;

/** A study that cannot be read at all. The message is one sentence for a person. */
public final class StudyException extends Exception {

  private static final long serialVersionUID = 1L;

  /** A study that cannot be read, for the reason that the sentence gives. */
  public StudyException(String sentence) {
    super(sentence);
  }

  /** A study that cannot be read, for the reason that the sentence gives, because of the cause. */
  public StudyException(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
