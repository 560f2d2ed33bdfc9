package fairboil.ingest.grid;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import java.io.IOException;

/** A file, or the rest of a file, that cannot be read; it says why and what to do. */
public final class UnreadableException extends IOException {

  private static final long serialVersionUID = 1L;

  private final transient Finding finding;

  /**
   * A file that cannot be read.
   *
   * @param place the file, or the line at which reading ended
   * @param problem what is wrong
   * @param remedy what to do
   */
  public UnreadableException(Place place, Message problem, Message remedy) {
    this(Finding.error(place, problem, remedy));
  }

  /** Words that are no templates yet. TODO: goes once those of logs are. */
  public UnreadableException(Place place, String problem, String remedy) {
    this(place, Message.plain(problem), Message.plain(remedy));
  }

  /** A file that cannot be read because of the finding. */
  public UnreadableException(Finding finding) {
    super(finding.toString());
    this.finding = finding;
  }

  /** What a reader of the study should know of it: an error. */
  public Finding finding() {
    return finding;
  }
}
