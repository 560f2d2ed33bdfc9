package fairboil.analysis.fault;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import java.util.Objects;

/**
 * A part that a fault of the program cost. The same study gives the same fault. Immutable.
 *
 * @param part what is lost, a clause that ends the sentence "the program failed at …"
 * @param place where its reader would look for it: its row in a sheet, else the file it is not in
 * @param trace where in the program it happened, of several lines
 */
public record Fault(Message part, Place place, String trace) {

  private static final Template FAILED =
      Template.of("this program failed at {clause}, so that is left out");
  private static final Template SEND =
      Template.of(
          "the rest was worked out without it; it is a fault of the program, not of your sheets:"
              + " please send its trace to those who look after the program");

  /** Checks that all parts are there. */
  public Fault {
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(trace, "trace");
  }

  /** What a reader should know. */
  public Finding finding() {
    return Finding.error(place, FAILED.with(Argument.clause(part)), SEND.with());
  }
}
